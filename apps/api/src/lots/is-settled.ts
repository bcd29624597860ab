import { clockStart, type ControlPoint } from '@larderbook/contracts';
import { isSameMiss, type RestrictedSubstance, type Verdict } from '@larderbook/haccp';
import type { DeviationBehind } from '../deviations/deviations-behind';
import type { JudgedPoint } from './judge-control-point';
import { asksForFormulation, judgedFor } from './judge-formulation';
import { cookSeen } from './cook-seen';
import { judgeReading } from './judge-reading';
import { judgedWhenClosed } from './judged-when-closed';
import { readingsThatCount, type LotRows } from './lot-rows';
import { rootsOf } from './reading-roots';

/**
 * Every deviation is closed, and each miss or doubt is covered by one closed in full knowledge of it. A point that goes
 * on, or was not begun, is never settled.
 */
export function isSettled(point: ControlPoint, { stands, judged }: JudgedPoint, rows: LotRows): boolean {
  if (stands === 'met') return true;
  if (stands === 'not-started' || goesOn(point, rows)) return false;
  const all = rows.deviations.filter(({ isOwn, controlPointId }) => isOwn && controlPointId === point.controlPointId);
  if (all.some(({ isOpen }) => isOpen)) return false;
  const own = all.filter(({ closedSeq }) => isOfThisMeat(point, closedSeq, rows));
  if (closedAfterAll(point, own, rows)) return true;
  if (point.takenAs === 'value' || point.takenAs === 'attestation') return everyReadingSettled(point, own, rows);
  const open = judged.filter(({ verdict }) => verdict.kind !== 'met');
  return (
    open.length > 0 &&
    open.every(({ limitId, verdict }) =>
      own.some((deviation) => deviation.limitId === limitId && isOfMiss(deviation, point, verdict, rows)),
    )
  );
}

/** A decision about an early miss does not cover where the chill ends. */
const goesOn = ({ controlPointId, takenAs }: ControlPoint, { stageEnds }: Pick<LotRows, 'stageEnds'>): boolean =>
  takenAs === 'curve' && !stageEnds.some((end) => end.controlPointId === controlPointId);

/**
 * A decision made before meat was put in was not about that meat. Single values, as of a cold room, may come before
 * some of it.
 */
function isOfThisMeat({ takenAs }: ControlPoint, closedSeq: bigint | null, { last: { putIn } }: LotRows): boolean {
  return closedSeq !== null && closedSeq > (takenAs === 'curve' ? putIn.last : putIn.first);
}

/**
 * Opened with this miss, or closed when it stood as it does now. A chill then ended before its last figure is another
 * miss.
 */
export function isOfMiss(
  { verdict, limitId, closedSeq }: Pick<DeviationBehind, 'verdict' | 'limitId' | 'closedSeq'>,
  point: ControlPoint,
  now: Verdict,
  rows: LotRows,
): boolean {
  if (closedSeq === null || point.takenAs !== 'curve') return isSameMiss(verdict, now);
  const decided = judgedWhenClosed(point, rows, closedSeq).find((one) => one.limitId === limitId)?.verdict;
  return decided !== undefined && isSameMiss(decided, now);
}

/** A person closed a deviation of this point after everything recorded at it. */
function closedAfterAll(point: ControlPoint, own: DeviationBehind[], rows: LotRows): boolean {
  const read = latestOf(point, rows);
  const weighed = point.takenAs === 'weighings' || asksForFormulation(point) ? rows.last.weighed : 0n;
  const lastHere = read > weighed ? read : weighed;
  return own.some(({ closedSeq }) => closedSeq !== null && closedSeq > lastHere);
}

/** Also counts its moment recorded at another point, which may show another miss. */
function latestOf(point: ControlPoint, { last, content }: LotRows): bigint {
  const { answer } = clockStart(point, content.controlPoints);
  const here = last.atPoint.get(point.controlPointId) ?? 0n;
  const answered = (answer && last.atPoint.get(answer.controlPointId)) ?? 0n;
  return here > answered ? here : answered;
}

/** A deviation about the substance was closed after all that went in. */
export const isDecided = (substance: RestrictedSubstance, { deviations, last }: LotRows): boolean =>
  deviations.some((one) => one.isOwn && one.substance === substance && one.closedSeq !== null && one.closedSeq > last.weighed);

function everyReadingSettled(point: ControlPoint, own: DeviationBehind[], rows: LotRows): boolean {
  const roots = rootsOf(rows.readings);
  const readings = readingsThatCount(rows.readings).filter(({ controlPointId }) => controlPointId === point.controlPointId);
  const misses = readings.flatMap((reading) =>
    judgedFor(judgeReading(point, reading, cookSeen(point, rows)), rows.wentIn)
      .filter(({ verdict }) => verdict.kind !== 'met')
      .map((one) => ({ ...one, rootId: roots.get(reading.id) })),
  );
  return (
    misses.length > 0 &&
    misses.every(({ rootId, limitId, verdict }) =>
      own.some(({ dedupeKey, verdict: known }) => isOfReading(dedupeKey, rootId, limitId) && isSameMiss(known, verdict)),
    )
  );
}

export const isOfReading = (dedupeKey: string, rootId: string | undefined, limitId: string): boolean => {
  const base = `reading:${rootId}:${limitId}`;
  return dedupeKey === base || dedupeKey.startsWith(`${base}:`);
};
