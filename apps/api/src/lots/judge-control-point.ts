import { isOfSurroundings, ofProduct, type ControlPoint, type ControlPointOnLot, type Judged } from '@larderbook/contracts';
import {
  allowingFor,
  isSeriesLimit,
  judgeSeries,
  NOT_JUDGED_SO,
  withPutInLater,
  withSilent,
  worstVerdict,
  type ChillingBegan,
  type CookSeen,
  type CriticalLimit,
  type CurveContext,
  type InstrumentErrors,
  type Piece,
  type Series,
  type SeriesLimit,
  type Surroundings,
  type Verdict,
} from '@larderbook/haccp';
import { judgedFor } from './judge-formulation';
import { judgeReading, seriesAt, type Taken } from './judge-reading';
import { isWeighed, judgeWeighings } from './judge-weighings';
import { surroundingsAt } from './surroundings-at';
import type { WentIn } from './what-went-in';

/** `now` only tells whether a running stage is overdue. */
export type PointRecords = {
  /** Oldest first. Those of the surroundings are judged by no limit. */
  readings: readonly Taken[];
  surroundings?: readonly Taken[];
  endedAt?: Date;
  /** End of the stage before, or the moment recorded there. */
  startAt?: Date;
  /** Only of a chill whose plan asks when chilling began. */
  chillingBegan?: ChillingBegan;
  /** For weighings, and for limits that ask something of the formula. */
  wentIn?: WentIn;
  now?: Date;
  cook?: CookSeen;
  errors?: InstrumentErrors;
  piece?: Piece;
  liesIn?: Surroundings;
};
type Stands = ControlPointOnLot['stands'];
export type JudgedPoint = {
  stands: Stands;
  /** A curve has one verdict; of single readings the governing one counts. */
  judged: Judged[];
};

const nothing: JudgedPoint = { stands: 'not-started', judged: [] };

/** Only the records count here; deviations tell whether a miss is settled. */
export function judgeControlPoint(point: ControlPoint, taken: PointRecords): JudgedPoint {
  const readings = ofProduct(point, taken.readings);
  const around = taken.surroundings ?? taken.readings.filter((reading) => isOfSurroundings(point, reading));
  const records = { ...taken, readings, errors: point.errors, piece: point.piece ?? taken.piece, liesIn: surroundingsAt(point, around) };
  switch (point.takenAs) {
    case 'weighings':
      return judgeWeighed(point, records);
    case 'curve':
      return judgeOverTime(point, records);
    case 'value':
    case 'attestation':
      return judgeSingly(point, records);
  }
}

function judgeWeighed(point: ControlPoint, { wentIn }: PointRecords): JudgedPoint {
  if (!wentIn) return nothing;
  const judged = judgeWeighings(point, wentIn);
  return { stands: isWeighed(point, wentIn) ? worstOf(judged) : 'not-started', judged };
}

/** A later good reading does not undo an earlier miss. */
function judgeSingly(point: ControlPoint, { readings, wentIn, cook }: PointRecords): JudgedPoint {
  if (readings.length === 0) return nothing;
  const all = readings.flatMap((taken) => judgeReading(point, taken, cook));
  const readAs = point.limits.map(({ limitId, limit }) => {
    const verdicts = all.filter((one) => one.limitId === limitId).map(({ verdict }) => verdict);
    return { limitId, limit, verdict: worstVerdict(verdicts) };
  });
  const judged = judgedFor(readAs, wentIn);
  return { stands: worstOf(judged), judged };
}

/** While the series goes on, doubt only means that it runs. */
function judgeOverTime(point: ControlPoint, records: PointRecords): JudgedPoint {
  const { readings, endedAt } = records;
  if (readings.length === 0 && !endedAt) return nothing;
  const context = contextOf(records);
  const silent = point.probes.filter((probe) => !readings.some((taken) => taken.probe === probe && isOfCore(taken)));
  const putIn = records.wentIn?.inputs.map(({ takenAt }) => takenAt.getTime()) ?? [];
  const lastRead = lastReadOf(records);
  const limits = point.limits.map(({ limit }) => limit);
  const verdicts = judgeOver(seriesAt(readings), limits.filter(isSeriesLimit), context);
  const readAs = point.limits.map(({ limitId, limit }) => {
    const verdict = verdicts.get(limit) ?? NOT_JUDGED_SO;
    return { limitId, limit, verdict: withPutInLater(withSilent(verdict, silent), putIn, lastRead) };
  });
  const judged = judgedFor(readAs, records.wentIn);
  const stands = worstOf(judged);
  return { stands: stands === 'undetermined' && !endedAt ? 'running' : stands, judged };
}

function judgeOver(series: Series, limits: SeriesLimit[], context: CurveContext): Map<CriticalLimit, Verdict> {
  const verdicts = judgeSeries(series, limits, context);
  return new Map(limits.map((limit, index) => [limit, verdicts[index] as Verdict]));
}

/** A reading on the bench after cooking does not show that chilling began; only an answer does. */
export const contextOf = ({ endedAt, startAt, chillingBegan, now, errors, piece, liesIn }: PointRecords): CurveContext => ({
  ended: endedAt !== undefined,
  now: now?.getTime(),
  startAt: startAt?.getTime(),
  chillingBegan,
  ...allowingFor(errors),
  piece,
  surroundings: liesIn,
});

/** Readings after the end of the stage do not count. */
function lastReadOf({ readings, endedAt }: PointRecords): number {
  const read = readings.filter(isOfCore).map(({ takenAt }) => takenAt.getTime());
  return Math.min(Math.max(...read), endedAt?.getTime() ?? Infinity);
}

const isOfCore = ({ word }: Taken): boolean => word !== 'not of the core';

const worstOf = (judged: readonly Judged[]): 'met' | 'missed' | 'undetermined' =>
  judged.length > 0 ? worstVerdict(judged.map(({ verdict }) => verdict)).kind : 'undetermined';
