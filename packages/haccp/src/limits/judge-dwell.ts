import type { Bound } from '../quantity/bound';
import { onCommonScale } from '../quantity/convert-degrees';
import { millisecondsOf } from '../quantity/duration';
import { atOrAbove } from '../thermal/crossing';
import { prepareCurve, type CurveReading } from '../thermal/curve';
import { addToHolds, beginHolds, copyOfHolds, holdsOf, levelOf, type Holds, type HoldsSoFar } from '../thermal/holds';
import type { Instant } from '../thermal/instant';
import { errorOf, type CurveContext } from './curve-context';
import { rowsOf, type Row } from './dwell-rows';
import type { DwellLimit } from './limit';
import { limitFault } from './limit-fault';
import { nothingUsableIn } from './nothing-usable';
import { sayDwellGap, sayDwellMet, sayDwellMissed, sayDwellRunning } from './say-dwell';
import { sayLimit } from './say-limit';
import { unusableError } from './unusable-series';
import { unusableLimit } from './unusable-limit';
import type { Verdict } from './verdict';

/** A hold up to the last reading added. It grows with the rows of its table, never with its readings. */
export type DwellSoFar = {
  readonly limit: DwellLimit;
  readonly rows: readonly Row[];
  readonly bounds: readonly Bound[];
  /** Taken off every reading, on the common scale. */
  readonly error: number;
  level: number;
  holds: HoldsSoFar;
  acrossGaps: HoldsSoFar;
  longestGap: number;
  hottest?: CurveReading;
  last?: CurveReading;
  /** Straight-line time at or above each row: of segments wholly above so many rows, and of those that pass the row. */
  above: number[];
  passing: number[];
};

export function beginDwell(limit: DwellLimit, error: number): DwellSoFar {
  const rows = rowsOf(limit) ?? [];
  const bounds = rows.map(({ bound }) => bound);
  return {
    limit,
    rows,
    bounds,
    error,
    level: 0,
    holds: beginHolds(bounds, millisecondsOf(limit.longestGapSeconds)),
    acrossGaps: beginHolds(bounds, Infinity),
    longestGap: 0,
    above: [0, ...rows.map(() => 0)],
    passing: rows.map(() => 0),
  };
}

/** Adds one reading, later than all before. */
export function addToDwell(dwell: DwellSoFar, { colder }: Instant): void {
  const { last, hottest } = dwell;
  const level = levelOf(colder.temperature, dwell.bounds, dwell.level, dwell.error);
  if (last) addStraight(dwell, last, colder, level);
  addToHolds(dwell.holds, colder.at, level);
  addToHolds(dwell.acrossGaps, colder.at, level);
  if (!hottest || onCommonScale(colder.temperature) > onCommonScale(hottest.temperature)) dwell.hottest = colder;
  dwell.level = level;
  dwell.last = colder;
}

function addStraight(dwell: DwellSoFar, before: CurveReading, after: CurveReading, level: number): void {
  const span = after.at - before.at;
  dwell.longestGap = Math.max(dwell.longestGap, span);
  const low = Math.min(dwell.level, level);
  const high = Math.max(dwell.level, level);
  dwell.above[low] = (dwell.above[low] ?? 0) + span;
  for (let row = low; row < high; row += 1) {
    const part = atOrAbove(before, after, dwell.bounds[row] as Bound, dwell.error);
    dwell.passing[row] = (dwell.passing[row] ?? 0) + part;
  }
}

/**
 * Met when any printed row is satisfied: the core stayed at or above its temperature, without a break, for its time.
 * Only stretches whose readings are all at or above the row count; what lies between two readings is taken to be the
 * colder of the two.
 */
export function judgeDwellSoFar(dwell: DwellSoFar, curveNotes: readonly string[], context: CurveContext): Verdict {
  const { limit, last } = dwell;
  if (!last) return nothingUsableIn(curveNotes, limit);
  const shared = { limit: sayLimit(limit, last.temperature.unit), source: limit.source };
  if (dwell.rows.length === 0) return { ...shared, ...unusableLimit(limitFault(limit) ?? ''), notes: [...curveNotes] };

  const { notes = [], ...verdict } = decide(dwell, last, context);
  return { ...shared, ...verdict, notes: [...curveNotes, ...notes] };
}

/** A whole series of one probe. */
export function judgeDwell(readings: readonly CurveReading[], limit: DwellLimit, context: CurveContext): Verdict {
  const error = errorOf(context);
  if (error === undefined) return unusableError(limit);
  const { colder, warmer, notes } = prepareCurve(readings);
  const dwell = beginDwell(limit, error);
  colder.forEach((reading, index) => addToDwell(dwell, { colder: reading, warmer: warmer[index] ?? reading }));
  return judgeDwellSoFar(dwell, notes, context);
}

export const copyOfDwell = (dwell: DwellSoFar): DwellSoFar => ({
  ...dwell,
  holds: copyOfHolds(dwell.holds),
  acrossGaps: copyOfHolds(dwell.acrossGaps),
  above: [...dwell.above],
  passing: [...dwell.passing],
});

function decide(soFar: DwellSoFar, last: CurveReading, { ended, now }: CurveContext) {
  const { rows, hottest = last } = soFar;
  const holds = holdsOf(soFar.holds);
  const dwell = { ...soFar, hottest, holds, straight: straightOf(soFar), unit: last.temperature.unit };
  const met = hottestSatisfied(rows, holds);
  if (met !== undefined) return sayDwellMet(dwell, met);
  if (!ended) return sayDwellRunning(dwell, last, now);

  const acrossGaps = hottestSatisfied(rows, holdsOf(soFar.acrossGaps));
  return acrossGaps === undefined ? sayDwellMissed(dwell) : sayDwellGap(dwell, acrossGaps);
}

/** Milliseconds at or above each row by straight lines: a segment wholly above a row is above all colder ones too. */
function straightOf({ above, passing }: DwellSoFar): number[] {
  let whole = 0;
  return passing
    .map((partly, row) => [partly, above[row + 1] ?? 0] as const)
    .toReversed()
    .map(([partly, own]) => partly + (whole += own))
    .toReversed();
}

function hottestSatisfied(rows: readonly Row[], { longest }: Holds): number | undefined {
  const index = rows.findLastIndex(({ needed }, row) => (longest[row] ?? -1) >= needed);
  return index === -1 ? undefined : index;
}
