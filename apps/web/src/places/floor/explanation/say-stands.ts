import type { PointExplained } from '@larderbook/contracts';
import type { State } from '../../../ui/status';

/** How a control point stands, in a word and a sentence. */
export function sayStands({ stands, limits }: PointExplained): { state: State; word: string; because?: string } {
  if (stands === 'not-started') return { state: 'undetermined', word: 'Nothing recorded' };
  const kind = stands === 'running' ? 'undetermined' : stands;
  const governing = limits.find(({ verdict }) => verdict.kind === kind) ?? limits[0];
  const words = { met: 'Met', missed: 'Missed', undetermined: 'Undetermined', running: 'Running' };
  return { state: stands, word: words[stands], because: governing?.verdict.because };
}
