import { isOfKind, type ChillingBegan, type CurveContext } from '@larderbook/haccp';
import { recordsMoment } from './asked-for';
import type { ControlPoint } from './plan';

export type ClockStart = {
  /** The end of this stage starts the clock. */
  stage?: ControlPoint;
  /** This control point records a moment: the start itself, or when the chilling that follows a stage began. */
  answer?: ControlPoint;
};

/**
 * A chill follows its cook. Where the plan asks when chilling began, the chill follows the point that asks, which
 * follows the cook. Fermentation follows the point that asks when it begins, which follows nothing.
 */
export function clockStart({ follows }: ControlPoint, points: readonly ControlPoint[]): ClockStart {
  const before = points.find(({ controlPointId }) => controlPointId === follows);
  if (!before || !recordsMoment(before)) return { stage: before };
  return { answer: before, stage: points.find(({ controlPointId }) => controlPointId === before.follows) };
}

/** The clock of these series, or their chilling, starts with what is recorded here. */
export const startedBy = (controlPointId: string, points: readonly ControlPoint[]): ControlPoint[] =>
  points.filter((point) => {
    const { stage, answer } = clockStart(point, points);
    return point.takenAs === 'curve' && [stage, answer].some((before) => before?.controlPointId === controlPointId);
  });

/**
 * The earliest of several answers counts, so the clock never starts later than somebody said. @param ended when the
 * stage ended (epoch ms) @param answers the yes answers that count
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

/** Time cannot be counted where meat is judged by the air around it and nothing records when it went in. */
export const lacksFreezingStart = (point: ControlPoint, points: readonly ControlPoint[]): boolean => {
  const isByAir = point.limits.some(({ limit }) => isOfKind(limit, 'freezing') && limit.read.what === 'freezer');
  const { stage, answer } = clockStart(point, points);
  return isByAir && stage === undefined && answer === undefined;
};

/** A chill has to begin within a time of cooking, but no control point records when it began. */
export const lacksChillStart = (point: ControlPoint, points: readonly ControlPoint[]): boolean =>
  point.limits.some(({ limit }) => isOfKind(limit, 'cooling') && limit.startWithinSeconds !== undefined) &&
  clockStart(point, points).answer === undefined;
