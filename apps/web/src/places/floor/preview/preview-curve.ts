import type { ControlPointOnLot, Lot } from '@larderbook/contracts';
import {
  degrees,
  judgeCurve,
  judgeRange,
  type CriticalLimit,
  type CurveContext,
  type CurveLimit,
  type CurveReading,
  type TemperatureUnit,
  type Verdict,
} from '@larderbook/haccp';

type Reading = ControlPointOnLot['readings'][number];

/** A reading on the keypad that is not recorded yet; `at` epoch ms. */
export type NewReading = { value: number; unit: TemperatureUnit; at: number; probe: string };

/** How a stage would be judged with one more reading, while it goes on: the same functions the server uses. */
export function previewReadingOf(point: ControlPointOnLot, lot: Lot, next: NewReading, amends?: string): Verdict[] {
  const temperature = degrees(next.value, next.unit);
  const series = inOrder([
    ...curveOf(point.readings.filter(({ readingId }) => readingId !== amends)),
    { at: next.at, temperature, probe: next.probe },
  ]);
  const ended = point.endedAt !== undefined;
  const context = { ...startOf(point, lot, series), ended, now: ended ? undefined : next.at };
  return limitsOf(point).flatMap((limit) => {
    if (limit.kind === 'range') return [judgeRange(temperature, limit)];
    return isOfCurve(limit) ? [judgeCurve(series, limit, context)] : [];
  });
}

/** How a stage would be judged if it were finished now. */
export function previewEndOf(point: ControlPointOnLot, lot: Lot): Verdict[] {
  const series = inOrder(curveOf(point.readings));
  const context = { ...startOf(point, lot, series), ended: true };
  return limitsOf(point).flatMap((limit) => (isOfCurve(limit) ? [judgeCurve(series, limit, context)] : []));
}

/** A chill is timed from the end of the cook it follows; its first reading is taken as the product goes in. */
function startOf(
  { controlPoint }: ControlPointOnLot,
  lot: Lot,
  series: CurveReading[],
): Pick<CurveContext, 'startAt' | 'chillingBegan'> {
  const before = lot.controlPoints.find((point) => point.controlPoint.controlPointId === controlPoint.follows);
  return before?.endedAt === undefined ? {} : { startAt: Date.parse(before.endedAt), chillingBegan: series[0]?.at };
}

/** The readings that count: in degrees, and corrected by no later one. */
const curveOf = (readings: Reading[]): CurveReading[] =>
  readings.flatMap(({ entered, made, probe, amendedBy }) =>
    amendedBy === undefined && 'unit' in entered && (entered.unit === '°F' || entered.unit === '°C')
      ? [{ at: Date.parse(made.at), temperature: degrees(entered.value, entered.unit), probe }]
      : [],
  );

const inOrder = (readings: CurveReading[]): CurveReading[] => readings.sort((a, b) => a.at - b.at);
const limitsOf = ({ controlPoint }: ControlPointOnLot): CriticalLimit[] =>
  controlPoint.limits.map(({ limit }) => limit);
const isOfCurve = (limit: CriticalLimit): limit is CurveLimit =>
  limit.kind === 'dwell' || limit.kind === 'cooling' || limit.kind === 'bandTime';
