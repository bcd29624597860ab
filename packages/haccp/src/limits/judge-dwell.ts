import { millisecondsOf } from '../quantity/duration';
import { prepareCurve, type CurveReading } from '../thermal/curve';
import { measureHolds, type Holds } from '../thermal/holds';
import type { CurveContext } from './curve-context';
import { rowsOf, type Row } from './dwell-rows';
import type { DwellLimit } from './limit';
import { nothingUsableIn } from './nothing-usable';
import { sayDwellGap, sayDwellMet, sayDwellMissed, sayDwellRunning, sayHottest } from './say-dwell';
import { sayLimit } from './say-limit';
import type { Verdict } from './verdict';

/**
 * Met when any printed row is satisfied: the core stayed at or above its temperature, without a break, for its time.
 * Only stretches whose readings are all at or above the row count; what lies between is taken to be the colder of the two.
 */
export function judgeDwell(readings: readonly CurveReading[], limit: DwellLimit, context: CurveContext): Verdict {
  const curve = prepareCurve(readings);
  const last = curve.colder[curve.colder.length - 1];
  if (!last) return nothingUsableIn(curve, limit);

  const { unit } = last.temperature;
  const verdict = decide(curve.colder, last, limit, context);
  const shared = { limit: sayLimit(limit, unit), source: limit.source };
  return { ...shared, ...verdict, notes: [...curve.notes, ...(verdict.notes ?? [])] };
}

function decide(readings: readonly CurveReading[], last: CurveReading, limit: DwellLimit, { ended, now }: CurveContext) {
  const rows = rowsOf(limit);
  if (!rows) return contradictory(readings);

  const bounds = rows.map(({ bound }) => bound);
  const holds = measureHolds(readings, bounds, millisecondsOf(limit.longestGapSeconds));
  const dwell = { limit, rows, readings, holds, unit: last.temperature.unit };
  const met = hottestSatisfied(rows, holds);
  if (met !== undefined) return sayDwellMet(dwell, met);

  const bridged = hottestSatisfied(rows, measureHolds(readings, bounds, Infinity));
  if (bridged !== undefined) return sayDwellGap(dwell, bridged);
  return ended ? sayDwellMissed(dwell) : sayDwellRunning(dwell, last, now);
}

function hottestSatisfied(rows: readonly Row[], { longest }: Holds): number | undefined {
  const index = rows.findLastIndex(({ needed }, row) => (longest[row] ?? -1) >= needed);
  return index === -1 ? undefined : index;
}

const contradictory = (readings: readonly CurveReading[]) => ({
  kind: 'undetermined' as const,
  measured: sayHottest(readings),
  because: 'The table of the limit is empty or its rows contradict each other.',
  notes: [],
});
