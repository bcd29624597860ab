import type { ControlPointOnLot, Lot } from '@larderbook/contracts';
import {
  isSeriesLimit,
  judgeSeries,
  seriesOf,
  type CurveContext,
  type ReadValue,
  type SeriesLimit,
  type Verdict,
} from '@larderbook/haccp';

type Reading = ControlPointOnLot['readings'][number];

/** A reading on the keypad that is not recorded yet; `at` epoch ms. */
export type NewReading = ReadValue & { probe: string };

/** How a stage would be judged with one more reading, while it goes on: the same functions the server uses. */
export function previewReadingOf(point: ControlPointOnLot, lot: Lot, next: NewReading, amends?: string): Verdict[] {
  const reads = inOrder([...readsOf(point.readings.filter(({ readingId }) => readingId !== amends)), next]);
  const ended = point.endedAt !== undefined;
  const context = { ...startOf(point, lot, reads), ended, now: ended ? undefined : next.at };
  return judgeSeries(seriesOf(reads), seriesLimits(point), context);
}

/** How a stage would be judged if it were finished now. */
export function previewEndOf(point: ControlPointOnLot, lot: Lot): Verdict[] {
  const reads = inOrder(readsOf(point.readings));
  return judgeSeries(seriesOf(reads), seriesLimits(point), { ...startOf(point, lot, reads), ended: true });
}

/** A chill is timed from the end of the cook it follows; its first reading is taken as the product goes in. */
function startOf(
  { controlPoint }: ControlPointOnLot,
  lot: Lot,
  reads: ReadValue[],
): Pick<CurveContext, 'startAt' | 'chillingBegan'> {
  const before = lot.controlPoints.find((point) => point.controlPoint.controlPointId === controlPoint.follows);
  return before?.endedAt === undefined ? {} : { startAt: Date.parse(before.endedAt), chillingBegan: reads[0]?.at };
}

/** The readings that count: numbers, and corrected by no later one. */
const readsOf = (readings: Reading[]): ReadValue[] =>
  readings.flatMap(({ entered, made, probe, amendedBy }) =>
    amendedBy === undefined && 'unit' in entered ? [{ ...entered, at: Date.parse(made.at), probe }] : [],
  );

const inOrder = (reads: ReadValue[]): ReadValue[] => reads.sort((a, b) => a.at - b.at);
const seriesLimits = ({ controlPoint }: ControlPointOnLot): SeriesLimit[] =>
  controlPoint.limits.map(({ limit }) => limit).filter(isSeriesLimit);
