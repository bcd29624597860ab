import { isOfSurroundings, type ControlPoint } from '@larderbook/contracts';
import type { Telling } from './telling';

/** Which probe was read; of what the product lies in it is said that no limit is judged by it. */
export function probeOnPaper(point: ControlPoint, probe: string | undefined, say: Telling['say']): string | undefined {
  if (probe && isOfSurroundings(point, { probe })) return say('probe-not-judged', { probe });
  return probe || undefined;
}
