import { boundOf, type Bound } from '../quantity/bound';
import { millisecondsOf } from '../quantity/duration';
import type { DwellLimit, DwellRow } from '../kinds/dwell/dwell-limit';
import { atOrAbove } from '../thermal/crossing';
import { prepareCurve, type CurveReading } from '../thermal/curve';

/** Milliseconds in all, by straight lines. */
export function timeAtOrAbove(readings: readonly CurveReading[], bound: Bound): number {
  const { colder } = prepareCurve(readings);
  let time = 0;
  colder.forEach((reading, index) => {
    const before = colder[index - 1];
    if (before) time += atOrAbove(before, reading, bound);
  });
  return time;
}

/**
 * By straight lines (FSIS-GD-2021-14, pp. 67-68, for a missed end point). For a process authority: breaks and the sag
 * between readings are not counted, so it never meets a limit by itself.
 */
export const rowsReachedInAll = (readings: readonly CurveReading[], { rows }: DwellLimit): DwellRow[] =>
  rows.filter(({ at, seconds }) => seconds > 0 && timeAtOrAbove(readings, boundOf(at)) >= millisecondsOf(seconds));
