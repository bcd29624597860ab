import { millisecondsOf } from '../quantity/duration';
import { prepareCurve, type CurveReading } from '../thermal/curve';
import { measureHolds, type Holds } from '../thermal/holds';
import type { CurveContext } from './curve-context';
import { rowsOf, type Row } from './dwell-rows';
import type { DwellLimit } from './limit';
import { limitFault } from './limit-fault';
import { nothingUsableIn } from './nothing-usable';
import { sayDwellGap, sayDwellMet, sayDwellMissed, sayDwellRunning } from './say-dwell';
import { sayLimit } from './say-limit';
import { unusableLimit } from './unusable-limit';
import type { Verdict } from './verdict';

/**
 * Met when any printed row is satisfied: the core stayed at or above its temperature, without a break, for its time.
 * Only stretches whose readings are all at or above the row count; what lies between two readings is taken to be the
 * colder of the two.
 */
export function judgeDwell(readings: readonly CurveReading[], limit: DwellLimit, context: CurveContext): Verdict {
  const curve = prepareCurve(readings);
  const last = curve.colder[curve.colder.length - 1];
  if (!last) return nothingUsableIn(curve, limit);

  const shared = { limit: sayLimit(limit, last.temperature.unit), source: limit.source };
  const rows = rowsOf(limit);
  if (!rows) return { ...shared, ...unusableLimit(limitFault(limit) ?? ''), notes: curve.notes };

  const { notes = [], ...verdict } = decide(curve.colder, last, limit, rows, context);
  return { ...shared, ...verdict, notes: [...curve.notes, ...notes] };
}

function decide(
  readings: readonly CurveReading[],
  last: CurveReading,
  limit: DwellLimit,
  rows: Row[],
  { ended, now }: CurveContext,
) {
  const bounds = rows.map(({ bound }) => bound);
  const holds = measureHolds(readings, bounds, millisecondsOf(limit.longestGapSeconds));
  const dwell = { limit, rows, readings, holds, unit: last.temperature.unit };
  const met = hottestSatisfied(rows, holds);
  if (met !== undefined) return sayDwellMet(dwell, met);
  if (!ended) return sayDwellRunning(dwell, last, now);

  const acrossGaps = hottestSatisfied(rows, measureHolds(readings, bounds, Infinity));
  return acrossGaps === undefined ? sayDwellMissed(dwell) : sayDwellGap(dwell, acrossGaps);
}

function hottestSatisfied(rows: readonly Row[], { longest }: Holds): number | undefined {
  const index = rows.findLastIndex(({ needed }, row) => (longest[row] ?? -1) >= needed);
  return index === -1 ? undefined : index;
}
