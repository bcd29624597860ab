import { raised, type Bound } from '../../quantity/bound';
import { millisecondsOf } from '../../quantity/duration';
import { atOrAbove } from '../../thermal/crossing';
import { prepareCurve, type CurveReading } from '../../thermal/curve';
import { addToHolds, beginHolds, copyOfHolds, holdsOf, levelOf, type Holds, type HoldsSoFar } from '../../thermal/holds';
import { instantWith, type Instant } from '../../thermal/instant';
import { errorOf, type CurveContext } from '../../limits/curve-context';
import { rowsOf, type Row } from './dwell-rows';
import { dwellAcrossGap, dwellMet, dwellMissed, dwellRunning } from './dwell-findings';
import type { DwellLimit } from './dwell-limit';
import { limitFault } from '../../limits/limit-fault';
import type { LimitFault } from '../../limits/limit-fault-code';
import { nothingUsableIn } from '../../limits/nothing-usable';
import { UNUSABLE_ERROR, unusableSeries } from '../../limits/unusable-series';
import { unusableLimit } from '../../limits/unusable-limit';
import type { Judgement, Remark, Verdict } from '../../limits/verdict';

/** Grows with the rows of its table, never with its readings. */
export type DwellSoFar = {
  readonly limit: DwellLimit;
  readonly rows: readonly Row[];
  readonly bounds: readonly Bound[];
  /** Taken off every reading, on the common scale. */
  readonly error: number;
  level: number;
  holds: HoldsSoFar;
  /** As if nothing happened in the gaps; begun with the first gap. */
  acrossGaps?: HoldsSoFar;
  longestGap: number;
  hottest?: Instant;
  last?: Instant;
  /** Straight-line time (ms): `above[n]` of segments wholly above n rows, `passing` of those that pass a row. */
  above: number[];
  passing: number[];
};

export function beginDwell(limit: DwellLimit, error: number): DwellSoFar {
  const rows = rowsOf(limit) ?? [];
  const bounds = rows.map(({ bound }) => raised(bound, error));
  return {
    limit,
    rows,
    bounds,
    error,
    level: 0,
    holds: beginHolds(bounds, millisecondsOf(limit.longestGapSeconds)),
    acrossGaps: undefined,
    longestGap: 0,
    hottest: undefined,
    last: undefined,
    above: [0, ...rows.map(() => 0)],
    passing: rows.map(() => 0),
  };
}

export function addToDwell(dwell: DwellSoFar, own: Instant): void {
  const { last, hottest, holds } = dwell;
  const level = levelOf(own.cold, own.colder.temperature.unit, dwell.bounds, dwell.level);
  if (last) {
    const span = own.at - last.at;
    if (span > dwell.longestGap) dwell.longestGap = span;
    if (!dwell.acrossGaps && !(span <= holds.longestGap)) dwell.acrossGaps = copyOfHolds(holds, Infinity);
    addStraight(dwell, last.colder, own.colder, level);
  }
  addToHolds(holds, own.at, level);
  if (dwell.acrossGaps) addToHolds(dwell.acrossGaps, own.at, level);
  if (!hottest || own.cold > hottest.cold) dwell.hottest = own;
  dwell.level = level;
  dwell.last = own;
}

function addStraight(dwell: DwellSoFar, before: CurveReading, after: CurveReading, level: number): void {
  const low = Math.min(dwell.level, level);
  const high = Math.max(dwell.level, level);
  dwell.above[low] = (dwell.above[low] as number) + (after.at - before.at);
  for (let row = low; row < high; row += 1) {
    dwell.passing[row] = (dwell.passing[row] as number) + atOrAbove(before, after, dwell.bounds[row] as Bound);
  }
}

/** Without a break. Only readings at or above the row count; between two the colder is assumed. */
export function judgeDwellSoFar(dwell: DwellSoFar, curveNotes: readonly Remark[], context: CurveContext): Verdict {
  const { limit } = dwell;
  if (!dwell.last) return nothingUsableIn(curveNotes);
  if (dwell.rows.length === 0) return { ...unusableLimit(limitFault(limit) as LimitFault), notes: [...curveNotes] };
  const judgement = decide(dwell, dwell.last.colder, context);
  return Object.assign({}, judgement, { notes: [...curveNotes, ...(judgement.notes ?? [])] });
}

export function judgeDwell(readings: readonly CurveReading[], limit: DwellLimit, context: CurveContext): Verdict {
  const error = errorOf(context);
  if (error === undefined) return unusableSeries(UNUSABLE_ERROR);
  const curve = prepareCurve(readings);
  const dwell = beginDwell(limit, error);
  for (const reading of curve.colder) addToDwell(dwell, instantWith(reading));
  return judgeDwellSoFar(dwell, curve.notes, context);
}

export const copyOfDwell = (dwell: DwellSoFar): DwellSoFar => ({
  limit: dwell.limit,
  rows: dwell.rows,
  bounds: dwell.bounds,
  error: dwell.error,
  level: dwell.level,
  holds: copyOfHolds(dwell.holds),
  acrossGaps: dwell.acrossGaps && copyOfHolds(dwell.acrossGaps),
  longestGap: dwell.longestGap,
  hottest: dwell.hottest,
  last: dwell.last,
  above: [...dwell.above],
  passing: [...dwell.passing],
});

function decide(soFar: DwellSoFar, last: CurveReading, { ended, now }: CurveContext): Judgement {
  const { rows } = soFar;
  const holds = holdsOf(soFar.holds);
  const { unit } = last.temperature;
  const hottest = (soFar.hottest as Instant).colder;
  const { limit, longestGap, error } = soFar;
  const dwell = { limit, rows, hottest, longestGap, holds, straight: straightOf(soFar), error, unit };
  const met = hottestSatisfied(rows, holds);
  if (met !== undefined) return dwellMet(dwell, met);
  if (!ended) return dwellRunning(dwell, last, now);

  const acrossGaps = soFar.acrossGaps && hottestSatisfied(rows, holdsOf(soFar.acrossGaps));
  return acrossGaps === undefined ? dwellMissed(dwell) : dwellAcrossGap(dwell, acrossGaps);
}

/** Milliseconds; a segment wholly above a row is above all colder ones too. */
function straightOf({ above, passing }: DwellSoFar): number[] {
  let whole = 0;
  return passing
    .map((partly, row) => [partly, above[row + 1] as number] as const)
    .toReversed()
    .map(([partly, own]) => partly + (whole += own))
    .toReversed();
}

function hottestSatisfied(rows: readonly Row[], { longest }: Holds): number | undefined {
  const index = rows.findLastIndex(({ needed }, row) => (longest[row] as number) >= needed);
  return index === -1 ? undefined : index;
}
