import type { PointExplained } from '@larderbook/contracts';
import type { Tell } from '@larderbook/haccp';
import type { State } from '../../../ui/status';

/** How a control point stands, in a word and a sentence. */
export function sayStands({ stands, limits }: PointExplained, tell: Tell): { state: State; word: string; because?: string } {
  if (stands === 'not-started') return { state: 'undetermined', word: 'Nothing recorded' };
  const kind = stands === 'running' ? 'undetermined' : stands;
  const governing = limits.find(({ verdict }) => verdict.kind === kind) ?? limits[0];
  const isStillCooling = kind === 'missed' && limits.some(({ verdict }) => verdict.kind === kind && verdict.still);
  const words = { met: 'Met', missed: 'Missed', undetermined: 'Undetermined', running: 'Running' };
  const word = isStillCooling ? 'Missed, still cooling' : words[stands];
  return { state: stands, word, because: governing && tell(governing.verdict, governing.limit).because };
}
