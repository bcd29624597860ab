import { isOfKind, type ChillingBegan, type CurveContext } from '@larderbook/haccp';
import { recordsMoment } from './asked-for';
import type { ControlPoint } from './plan';

/** What the clock of a control point starts with. */
export type ClockStart = {
  /** The stage whose end starts it. */
  stage?: ControlPoint;
  /** The control point that is answered with a moment: the start itself or, of a chill behind a stage, when chilling began. */
  answer?: ControlPoint;
};

/**
 * A chill follows its cook; where its plan asks when chilling began, it follows the control point that asks, and that
 * one follows the cook. Fermentation follows the control point that asks when it begins, which follows nothing.
 */
export function clockStart({ follows }: ControlPoint, points: readonly ControlPoint[]): ClockStart {
  const before = points.find(({ controlPointId }) => controlPointId === follows);
  if (!before || !recordsMoment(before)) return { stage: before };
  return { answer: before, stage: points.find(({ controlPointId }) => controlPointId === before.follows) };
}

/** The series whose clock starts, or whose chilling begins, with what is recorded at a control point. */
export const startedBy = (controlPointId: string, points: readonly ControlPoint[]): ControlPoint[] =>
  points.filter((point) => {
    const { stage, answer } = clockStart(point, points);
    return point.takenAs === 'curve' && [stage, answer].some((before) => before?.controlPointId === controlPointId);
  });

/**
 * When the clock starts, and when chilling began, by what is recorded there. Of several answers that start a clock the
 * earliest counts: it never starts later than somebody said.
 * @param ended when the stage ended (epoch ms) @param answers the yes answers that count
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

/** Is meat judged by the air around it, without anything that records when it went in? Then its time cannot be counted. */
export const lacksFreezingStart = (point: ControlPoint, points: readonly ControlPoint[]): boolean => {
  const isByAir = point.limits.some(({ limit }) => isOfKind(limit, 'freezing') && limit.read.what === 'freezer');
  const { stage, answer } = clockStart(point, points);
  return isByAir && stage === undefined && answer === undefined;
};

/** Is a chill to begin within a time of cooking, without a control point that records when it began? */
export const lacksChillStart = (point: ControlPoint, points: readonly ControlPoint[]): boolean =>
  point.limits.some(({ limit }) => isOfKind(limit, 'cooling') && limit.startWithinSeconds !== undefined) &&
  clockStart(point, points).answer === undefined;
