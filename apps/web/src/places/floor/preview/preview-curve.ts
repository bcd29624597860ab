import type { ControlPointOnLot, Lot } from '@larderbook/contracts';
import { degrees, judgeCurve, type CurveContext, type CurveLimit, type CurveReading, type TemperatureUnit, type Verdict } from '@larderbook/haccp';

type Reading = ControlPointOnLot['readings'][number];

/** A reading on the keypad that is not recorded yet; `at` epoch ms. */
export type NewReading = { value: number; unit: TemperatureUnit; at: number; probe: string };

/** How a stage would be judged with one more reading, while it goes on: the same functions the server uses. */
export function previewReadingOf(point: ControlPointOnLot, lot: Lot, next: NewReading, amends?: string): Verdict[] {
  const kept = point.readings.filter(({ readingId }) => readingId !== amends);
  const added = { at: next.at, temperature: degrees(next.value, next.unit), probe: next.probe };
  const ended = point.endedAt !== undefined;
  return judge(point, [...curveOf(kept), added], { ...startOf(point, lot), ended, now: ended ? undefined : next.at });
}

/** How a stage would be judged if it were finished at this moment (epoch ms). */
export const previewEndOf = (point: ControlPointOnLot, lot: Lot): Verdict[] =>
  judge(point, curveOf(point.readings), { ...startOf(point, lot), ended: true });

function judge({ controlPoint }: ControlPointOnLot, readings: CurveReading[], context: CurveContext): Verdict[] {
  const inOrder = [...readings].sort((a, b) => a.at - b.at);
  return controlPoint.limits.flatMap(({ limit }) => (isOfCurve(limit) ? [judgeCurve(inOrder, limit, context)] : []));
}

/** A chill is timed from the end of the cook it follows. */
function startOf({ controlPoint }: ControlPointOnLot, lot: Lot): Pick<CurveContext, 'startAt'> {
  const before = lot.controlPoints.find((point) => point.controlPoint.controlPointId === controlPoint.follows);
  return before?.endedAt === undefined ? {} : { startAt: Date.parse(before.endedAt) };
}

/** The readings that count: in degrees, and corrected by no later one. */
const curveOf = (readings: Reading[]): CurveReading[] =>
  readings.flatMap(({ entered, made, probe, amendedBy }) =>
    amendedBy === undefined && 'unit' in entered && (entered.unit === '°F' || entered.unit === '°C')
      ? [{ at: Date.parse(made.at), temperature: degrees(entered.value, entered.unit), probe }]
      : [],
  );

const isOfCurve = (limit: ControlPointOnLot['controlPoint']['limits'][number]['limit']): limit is CurveLimit =>
  limit.kind === 'dwell' || limit.kind === 'cooling' || limit.kind === 'bandTime';
