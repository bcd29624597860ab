import { asksForHumidity, clockStart, recordsMoment, type ControlPoint, type PlanContent } from '@larderbook/contracts';
import { kindOf, limitFault, supportLacking, type CriticalLimit } from '@larderbook/haccp';
import { told, type Name, type Told } from '../platform/told';

/** A plan with any fault cannot be adopted. */
export const planFaults = (content: PlanContent): Told[] => [
  ...content.steps.flatMap((step) => step.hazards.flatMap((hazard) => hazardFault(step, hazard, content))),
  ...content.controlPoints.flatMap((point) => pointFaults(point, content)),
];

type Step = PlanContent['steps'][number];
type Hazard = Step['hazards'][number];

/** A likely hazard needs a critical control point (9 CFR 417.2(c)): at its step, or named as its control. */
function hazardFault({ stepId, name }: Step, hazard: Hazard, { controlPoints }: PlanContent): Told[] {
  if (!hazard.likely) return [];
  const isControlled = controlPoints.some(
    (point) => point.kind === 'critical' && (point.stepId === stepId || hazard.control.toLowerCase().includes(point.name.toLowerCase())),
  );
  if (isControlled) return [];
  return [told('hazard-not-controlled', { step: name, hazard: hazard.what })];
}

function pointFaults(point: ControlPoint, content: PlanContent): Told[] {
  const isPlaced = content.steps.some(({ stepId }) => stepId === point.stepId);
  return [
    ...(isPlaced ? [] : [told('step-not-in-flow', { point: point.name })]),
    ...point.limits.flatMap(({ limit }) => limitFaults(point, limit)),
    ...followsFaults(point, content),
    ...surroundingsFaults(point),
    ...aloneFaults(point),
    ...unitsFaults(point),
  ];
}

function limitFaults({ name, takenAs }: ControlPoint, limit: CriticalLimit): Told[] {
  const fitting = kindOf(limit).takenAs;
  const fault = limitFault(limit);
  return [
    ...(fitting === takenAs ? [] : [told('recorded-otherwise', { point: name, fitting, recorded: takenAs })]),
    ...(fault ? [told('cannot-be-used', { name, said: fault })] : []),
    ...supportLacking(limit).map((lacking) => unsupported(name, lacking)),
  ];
}

/** A prediction alone clears nothing. One series holds either weights or temperatures. */
function aloneFaults({ name: point, limits }: ControlPoint): Told[] {
  const kinds = new Set(limits.map(({ limit }) => limit.kind));
  const isAlone = kinds.has('growth') && !kinds.has('cooling');
  const isMixed = kinds.has('weightLoss') && kinds.size > 1;
  return [...(isAlone ? [told('growth-alone', { point })] : []), ...(isMixed ? [told('loss-mixed', { point })] : [])];
}

/** One value has one unit: it would say nothing of the other limits. */
function unitsFaults({ name: point, takenAs, limits }: ControlPoint): Told[] {
  const units = new Set(limits.map(({ limit }) => kindOf(limit).unitsRead(limit).join()));
  return takenAs === 'value' && units.size > 1 ? [told('units-mixed', { point })] : [];
}

/** A probe named like its surroundings would go unjudged. */
function surroundingsFaults({ name: point, takenAs, probes, surroundings }: ControlPoint): Told[] {
  if (!surroundings) return [];
  const isProbe = probes.some((probe) => probe.toLowerCase() === surroundings.name.toLowerCase());
  return [
    ...(takenAs === 'curve' ? [] : [told('surroundings-without-series', { point })]),
    ...(isProbe ? [told('surroundings-is-a-probe', { point, probe: surroundings.name })] : []),
  ];
}

/** A chill counts from the end of the cook, degree-hours from their recorded start. */
function followsFaults(point: ControlPoint, { controlPoints }: PlanContent): Told[] {
  const { name, follows } = point;
  const kinds = new Set(point.limits.map(({ limit }) => limit.kind));
  if (!kinds.has('cooling') && !kinds.has('degreeHours') && !asksForHumidity(point) && follows === undefined) return [];
  const { stage, answer } = clockStart(point, controlPoints);
  const isCurve = stage !== undefined && stage !== point && stage.takenAs === 'curve';
  if (asksForHumidity(point)) {
    return isCurve && !answer ? [] : [told('humidity-of-which-cook', { point: name })];
  }
  if (kinds.has('degreeHours')) return startFaults(name, answer, stage, isCurve);
  if (isCurve || (answer && !stage && !kinds.has('cooling'))) return [];
  if (recordsMoment(point)) return [told('moment-follows-which', { point: name })];
  return answer && !stage
    ? [told('answer-follows-a-cook', { point: name, answer: answer.name })]
    : [told('clock-of-which-cook', { point: name })];
}

function startFaults(name: string, answer: ControlPoint | undefined, stage: ControlPoint | undefined, isCurve: boolean): Told[] {
  if (answer && stage) return [told('start-follows-nothing', { point: name, answer: answer.name })];
  if (answer || isCurve) return [];
  return [told('start-recorded-where', { point: name })];
}

/** What a published option asks is told as its set says it, in the reader's language. */
function unsupported(point: string, { code, figures }: ReturnType<typeof supportLacking>[number]): Told {
  const asked = figures?.asked;
  return { code, figures: { ...figures, point, ...(asked !== undefined && { asked: { code: asked as Name['code'] } }) } };
}
