import { recordsMoment, type ControlPoint, type PlanContent } from '@larderbook/contracts';
import { newId } from '../../../outbox/new-id';
import type { Hazard, Step } from '../document/plan-words';
import { intoTheChiller } from './into-the-chiller';
import type { Say, WordsOf } from '@larderbook/messages';

/** Control points stand in the order of their steps. */

export const emptyPlan = (process: PlanContent['process']): PlanContent => ({
  title: '',
  process,
  intendedUse: '',
  steps: [emptyStep()],
  controlPoints: [],
  notes: '',
});
export const emptyStep = (): Step => ({ stepId: newId(), name: '', hazards: [] });
export const emptyHazard = (): Hazard => ({ kind: 'biological', what: '', likely: false, because: '', control: '' });
export const emptyPoint = (stepId: string): ControlPoint => ({
  controlPointId: newId(),
  stepId,
  name: '',
  kind: 'critical',
  hazard: '',
  takenAs: 'value',
  limits: [],
  probes: [],
  monitoring: { what: '', how: '', howOften: '', who: '' },
  correctiveAction: '',
  verification: '',
});

export function addStep(content: PlanContent, step: Step, after?: string): PlanContent {
  const at = content.steps.findIndex(({ stepId }) => stepId === after);
  return { ...content, steps: content.steps.toSpliced(at < 0 ? content.steps.length : at + 1, 0, step) };
}

type StepChange = Partial<Omit<Step, 'stepId'>>;
export const changeStep = (content: PlanContent, stepId: string, change: StepChange): PlanContent => ({
  ...content,
  steps: content.steps.map((step) => (step.stepId === stepId ? { ...step, ...change } : step)),
});

export function moveStep(content: PlanContent, stepId: string, by: -1 | 1): PlanContent {
  const from = content.steps.findIndex((step) => step.stepId === stepId);
  const [step, other] = [content.steps[from], content.steps[from + by]];
  if (!step || !other) return content;
  return arranged({ ...content, steps: content.steps.with(from, other).with(from + by, step) });
}

/** A step with control points stays: they are moved or removed first. */
export const mayRemoveStep = ({ controlPoints }: PlanContent, stepId: string): boolean =>
  !controlPoints.some((point) => point.stepId === stepId);

export const removeStep = (content: PlanContent, stepId: string): PlanContent =>
  mayRemoveStep(content, stepId) ? { ...content, steps: content.steps.filter((step) => step.stepId !== stepId) } : content;

export function putPoint(content: PlanContent, point: ControlPoint): PlanContent {
  const at = content.controlPoints.findIndex(({ controlPointId }) => controlPointId === point.controlPointId);
  const controlPoints = at < 0 ? [...content.controlPoints, point] : content.controlPoints.with(at, point);
  return arranged({ ...content, controlPoints });
}

/** A chill counted from a removed cook loses its clock; one counted from a removed moment follows the cook. */
export function removePoint(content: PlanContent, controlPointId: string): PlanContent {
  const gone = content.controlPoints.find((point) => point.controlPointId === controlPointId);
  const follows = gone && recordsMoment(gone) ? gone.follows : undefined;
  return {
    ...content,
    controlPoints: content.controlPoints
      .filter((point) => point !== gone)
      .map((point) => (point.follows === controlPointId ? { ...point, follows } : point)),
  };
}

/** Puts a control point before a chill that asks when chilling began, and counts the chill from it. */
export function addChillStart(content: PlanContent, chill: ControlPoint, say: Say<WordsOf<'plan-points'>>): PlanContent {
  const start = { ...intoTheChiller(chill, say), controlPointId: newId() };
  const at = content.controlPoints.indexOf(chill);
  const controlPoints = content.controlPoints.toSpliced(at, 1, start, { ...chill, follows: start.controlPointId });
  return { ...content, controlPoints };
}

function arranged(content: PlanContent): PlanContent {
  const place = ({ stepId }: ControlPoint) => content.steps.findIndex((step) => step.stepId === stepId);
  return { ...content, controlPoints: content.controlPoints.toSorted((a, b) => place(a) - place(b)) };
}
