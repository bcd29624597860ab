import { isOfSurroundings, type ControlPoint } from '@larderbook/contracts';
import type { Telling } from './telling';

/** The paper says that no limit is judged by the surroundings. */
export function probeOnPaper(point: ControlPoint, probe: string | undefined, say: Telling['say']): string | undefined {
  if (probe && isOfSurroundings(point, { probe })) return say('probe-not-judged', { probe });
  return probe || undefined;
}
