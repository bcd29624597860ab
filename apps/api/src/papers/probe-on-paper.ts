import { isOfSurroundings, type ControlPoint } from '@larderbook/contracts';

/** Which probe was read; of what the product lies in it is said that no limit is judged by it. */
export function probeOnPaper(point: ControlPoint, probe = ''): string | undefined {
  if (isOfSurroundings(point, { probe })) return `${probe} (not judged)`;
  return probe || undefined;
}
