import { isOfSurroundings, type ControlPoint } from '@larderbook/contracts';
import type { Telling } from './telling';

/** No limit is judged by a probe of the surroundings, and the paper says so. */
export function probeOnPaper(point: ControlPoint, probe: string | undefined, say: Telling['say']): string | undefined {
  if (probe && isOfSurroundings(point, { probe })) return say('probe-not-judged', { probe });
  return probe || undefined;
}
