import {
  clockStart,
  isOfSurroundings,
  ofProduct,
  startsAt,
  wordOf,
  type ControlPoint,
  type ControlPointOnLot,
  type Lot,
} from '@larderbook/contracts';
import {
  allowingFor,
  degrees,
  dependsOnFormulation,
  inDoubt,
  isSeriesLimit,
  isSetAside,
  judgeSeries,
  seriesOf,
  withSilent,
  type ChillingBegan,
  type Conditioned,
  type CurveContext,
  type ReadValue,
  type SeriesLimit,
  type Surroundings,
  type Verdict,
} from '@larderbook/haccp';
import type { VerdictOn } from './verdict-on';

type Reading = ControlPointOnLot['readings'][number];

/** `at` is epoch ms. */
export type NewReading = ReadValue & { probe: string };

/** Uses the functions the server uses; readings of the surroundings are not judged. */
export function previewReadingOf(point: ControlPointOnLot, lot: Lot, next: NewReading, amends?: string): VerdictOn[] {
  if (isOfSurroundings(point.controlPoint, next)) return [];
  const all = readsWith(point, next, amends);
  const reads = ofProduct(point.controlPoint, all);
  const ended = point.endedAt !== undefined;
  const known = knownOf(point, lot, all);
  const moments = [...reads, ...(known.chillingBegan?.answers ?? [])].map(({ at }) => at);
  // A correction is of an earlier moment: now is not before what was read or answered since.
  const now = ended ? undefined : Math.max(...moments);
  return judged(point, reads, { ...known, ended, now });
}

export function previewEndOf(point: ControlPointOnLot, lot: Lot): VerdictOn[] {
  const all = readsWith(point);
  return judged(point, ofProduct(point.controlPoint, all), { ...knownOf(point, lot, all), ended: true });
}

export function previewAsItStands(point: ControlPointOnLot, lot: Lot): VerdictOn[] {
  const all = readsWith(point);
  const reads = ofProduct(point.controlPoint, all);
  const ended = point.endedAt !== undefined;
  return judged(point, reads, { ...knownOf(point, lot, all), ended, now: ended ? undefined : Date.now() });
}

/**
 * The device does not know all that went in: what may depend on it is not shown as met before the server has judged. A
 * probe or piece without a reading is doubt, as on the server.
 */
function judged(point: ControlPointOnLot, reads: ReadValue[], context: CurveContext): VerdictOn[] {
  const limits = seriesLimits(point);
  const silent = point.controlPoint.probes.filter((probe) => !reads.some((read) => read.probe === probe && !isSetAside(read)));
  const verdicts = judgeSeries(seriesOf(reads), limits, context);
  return limits.map((limit, index) => {
    const verdict = withSilent(verdicts[index] as Verdict, silent);
    const depends = dependsOnFormulation(limit) && verdict.kind === 'met';
    return { ...(depends ? inDoubt(verdict, 'once-sent') : verdict), on: limit };
  });
}

const knownOf = (point: ControlPointOnLot, lot: Lot, all: NewReading[]): Omit<CurveContext, 'ended'> => ({
  ...startOf(point, lot),
  piece: point.controlPoint.piece ?? lot.usualPiece,
  surroundings: surroundingsOf(point.controlPoint, all),
});

export function surroundingsOf(controlPoint: ControlPointOnLot['controlPoint'], reads: NewReading[]): Surroundings | undefined {
  const { surroundings } = controlPoint;
  if (!surroundings) return undefined;
  const { setPoint } = surroundings;
  return {
    setPoint: setPoint && degrees(setPoint.value, setPoint.unit),
    readings: seriesOf(reads.filter((read) => isOfSurroundings(controlPoint, read))).temperatures,
  };
}

/** Timed from the end of the stage before, or from the moment recorded there. */
export function startOf({ controlPoint }: ControlPointOnLot, lot: Lot): Omit<CurveContext, 'ended' | 'now'> {
  const clock = clockStart(
    controlPoint,
    lot.controlPoints.map((point) => point.controlPoint),
  );
  const onLot = (before: ControlPoint | undefined) =>
    lot.controlPoints.find((point) => point.controlPoint.controlPointId === before?.controlPointId);
  const endedAt = onLot(clock.stage)?.endedAt;
  const starts = startsAt(clock, endedAt === undefined ? undefined : Date.parse(endedAt), answersAt(onLot(clock.answer)));
  return Object.assign(starts, allowingFor(controlPoint.errors));
}

const answersAt = (point: ControlPointOnLot | undefined): ChillingBegan['answers'] =>
  (point?.readings ?? [])
    .filter(({ entered, amendedBy }) => amendedBy === undefined && 'answer' in entered && entered.answer)
    .map(({ made }) => ({ at: Date.parse(made.at), arrivedAt: made.recordedAt ? Date.parse(made.recordedAt) : undefined }));

/** The readings that count, by time: with `next`, without the one it corrects. */
export const readsWith = (point: ControlPointOnLot, next?: NewReading, amends?: string): NewReading[] =>
  [...readsOf(point.readings.filter(({ readingId }) => readingId !== amends)), ...(next ? [next] : [])].sort((a, b) => a.at - b.at);

const readsOf = (readings: Reading[]): NewReading[] =>
  readings.flatMap((reading) => {
    const { entered, made, probe, amendedBy } = reading;
    if (amendedBy !== undefined || !('unit' in entered)) return [];
    return [{ ...entered, at: Date.parse(made.at), probe, arrivedAt: arrivalOf(reading, readings), word: wordOf(reading) }];
  });

/** A correction arrived with the first of its chain; what only this device has, has not arrived. */
function arrivalOf({ amends, made }: Reading, readings: readonly Reading[]): number | undefined {
  const before = readings.find(({ readingId }) => readingId === amends);
  if (before) return arrivalOf(before, readings);
  return made.recordedAt ? Date.parse(made.recordedAt) : undefined;
}

const seriesLimits = ({ controlPoint }: ControlPointOnLot): (SeriesLimit & Conditioned)[] =>
  controlPoint.limits.map(({ limit }) => limit).filter(isSeriesLimit);
