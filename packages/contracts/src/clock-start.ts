import { isOfKind, type ChillingBegan, type CurveContext } from '@larderbook/haccp';
import { recordsMoment } from './asked-for';
import type { ControlPoint } from './plan';

export type ClockStart = {
  /** The end of this stage starts the clock. */
  stage?: ControlPoint;
  /** Records the start itself, or when the chilling that follows a stage began. */
  answer?: ControlPoint;
};

/**
 * A chill follows its cook, or the point that asks when chilling began, which follows the cook. Fermentation follows
 * the point that asks when it begins, which follows nothing.
 */
export function clockStart({ follows }: ControlPoint, points: readonly ControlPoint[]): ClockStart {
  const before = points.find(({ controlPointId }) => controlPointId === follows);
  if (!before || !recordsMoment(before)) return { stage: before };
  return { answer: before, stage: points.find(({ controlPointId }) => controlPointId === before.follows) };
}

export const startedBy = (controlPointId: string, points: readonly ControlPoint[]): ControlPoint[] =>
  points.filter((point) => {
    const { stage, answer } = clockStart(point, points);
    return point.takenAs === 'curve' && [stage, answer].some((before) => before?.controlPointId === controlPointId);
  });

/**
 * The earliest answer counts, so the clock never starts later than somebody said.
 * @param ended when the stage ended (epoch ms)
 * @param answers the yes answers that count
 */
export function startsAt(
  { stage, answer }: ClockStart,
  ended: number | undefined,
  answers: ChillingBegan['answers'],
): Pick<CurveContext, 'startAt' | 'chillingBegan'> {
  if (!answer) return { startAt: ended };
  if (stage) return { startAt: ended, chillingBegan: { askedAt: answer.name, answers } };
  return { startAt: answers.length > 0 ? Math.min(...answers.map(({ at }) => at)) : undefined };
}

/** Time cannot be counted where nothing records when meat went into the freezer. */
export const lacksFreezingStart = (point: ControlPoint, points: readonly ControlPoint[]): boolean => {
  const isByAir = point.limits.some(({ limit }) => isOfKind(limit, 'freezing') && limit.read.what === 'freezer');
  const { stage, answer } = clockStart(point, points);
  return isByAir && stage === undefined && answer === undefined;
};

/** A chill must begin in time, but no control point records when it began. */
export const lacksChillStart = (point: ControlPoint, points: readonly ControlPoint[]): boolean =>
  point.limits.some(({ limit }) => isOfKind(limit, 'cooling') && limit.startWithinSeconds !== undefined) &&
  clockStart(point, points).answer === undefined;
