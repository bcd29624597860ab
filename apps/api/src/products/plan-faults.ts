import { asksForHumidity, clockStart, recordsMoment, type ControlPoint, type PlanContent } from '@larderbook/contracts';
import { limitFault, supportLacking, type CriticalLimit } from '@larderbook/haccp';

type TakenAs = ControlPoint['takenAs'];

/** How each kind of limit is recorded: a range as one value, a cook or a chill as a series of readings. */
const takenAsOf: Record<CriticalLimit['kind'], TakenAs> = {
  range: 'value',
  concentration: 'weighings',
  dwell: 'curve',
  cooling: 'curve',
  bandTime: 'curve',
  lethality: 'curve',
  growth: 'curve',
  degreeHours: 'curve',
  weightLoss: 'curve',
  freezing: 'curve',
  figure: 'value',
  attestation: 'attestation',
};
const sayTaken: Record<TakenAs, string> = {
  value: 'one value',
  curve: 'a series of readings',
  weighings: 'weighings',
  attestation: 'a yes or no',
};

/** What keeps a plan from being adopted, in sentences; empty when nothing does. */
export const planFaults = (content: PlanContent): string[] => [
  ...content.steps.flatMap((step) => step.hazards.flatMap((hazard) => hazardFault(step, hazard, content))),
  ...content.controlPoints.flatMap((point) => pointFaults(point, content)),
];

type Step = PlanContent['steps'][number];
type Hazard = Step['hazards'][number];

/** A likely hazard needs a critical control point (9 CFR 417.2(c)): at its own step, or named as its control. */
function hazardFault({ stepId, name }: Step, hazard: Hazard, { controlPoints }: PlanContent): string[] {
  if (!hazard.likely) return [];
  const isControlled = controlPoints.some(
    (point) => point.kind === 'critical' && (point.stepId === stepId || hazard.control.toLowerCase().includes(point.name.toLowerCase())),
  );
  if (isControlled) return [];
  const fault = `${name}: “${hazard.what}” is likely, but no critical control point controls it.`;
  return [`${fault} Add one at this step, or name the one that does under its control.`];
}

function pointFaults(point: ControlPoint, content: PlanContent): string[] {
  const isPlaced = content.steps.some(({ stepId }) => stepId === point.stepId);
  return [
    ...(isPlaced ? [] : [`${point.name}: its step is not in the flow diagram.`]),
    ...point.limits.flatMap(({ limit }) => limitFaults(point, limit)),
    ...followsFaults(point, content),
    ...surroundingsFaults(point),
    ...aloneFaults(point),
  ];
}

function limitFaults({ name, takenAs }: ControlPoint, limit: CriticalLimit): string[] {
  const fitting = takenAsOf[limit.kind];
  const fault = limitFault(limit);
  return [
    ...(fitting === takenAs ? [] : [`${name}: its limit is judged from ${sayTaken[fitting]}, but it is recorded as ${sayTaken[takenAs]}.`]),
    ...(fault ? [`${name}: ${fault}`] : []),
    ...supportLacking(limit).map((lacking) => `${name}: ${lacking}`),
  ];
}

/** What is predicted clears nothing; and one series is of weights or of temperatures. */
function aloneFaults({ name, limits }: ControlPoint): string[] {
  const kinds = new Set(limits.map(({ limit }) => limit.kind));
  const isAlone = kinds.has('growth') && !kinds.has('cooling');
  const isMixed = kinds.has('weightLoss') && kinds.size > 1;
  return [
    ...(isAlone ? [`${name}: predicted growth is a screening and clears nothing. Put it beside a cooling limit.`] : []),
    ...(isMixed ? [`${name}: give the loss of weight a control point of its own; here temperatures are read.`] : []),
  ];
}

/** What is read around the product is no probe in it, or a limit would go unjudged. */
function surroundingsFaults({ name, takenAs, probes, surroundings }: ControlPoint): string[] {
  if (!surroundings) return [];
  const isProbe = probes.some((probe) => probe.toLowerCase() === surroundings.name.toLowerCase());
  return [
    ...(takenAs === 'curve' ? [] : [`${name}: what the product lies in is read only with a series of readings.`]),
    ...(isProbe ? [`${name}: “${surroundings.name}” is one of its probes. Give what it lies in another name.`] : []),
  ];
}

/** A chill is counted from the end of the cook before it, degree-hours from where their start is recorded. */
function followsFaults(point: ControlPoint, { controlPoints }: PlanContent): string[] {
  const { name, follows } = point;
  const kinds = new Set(point.limits.map(({ limit }) => limit.kind));
  if (!kinds.has('cooling') && !kinds.has('degreeHours') && !asksForHumidity(point) && follows === undefined) return [];
  const { stage, answer } = clockStart(point, controlPoints);
  const isCurve = stage !== undefined && stage !== point && stage.takenAs === 'curve';
  if (asksForHumidity(point)) {
    return isCurve && !answer ? [] : [`${name}: name the cooking control point that humidity is kept in.`];
  }
  if (kinds.has('degreeHours')) return startFaults(name, answer, stage, isCurve);
  if (isCurve || (answer && !stage && !kinds.has('cooling'))) return [];
  if (recordsMoment(point)) return [`${name}: name the cook that it follows, or nothing where it starts a fermentation.`];
  return answer && !stage
    ? [`${name}: “${answer.name}” has to follow the cook whose end starts the clock.`]
    : [`${name}: name the cooking control point whose end starts its clock.`];
}

function startFaults(name: string, answer: ControlPoint | undefined, stage: ControlPoint | undefined, isCurve: boolean): string[] {
  if (answer && stage) return [`${name}: “${answer.name}” records when fermentation begins, so it may follow nothing itself.`];
  if (answer || isCurve) return [];
  return [`${name}: name the control point that records when fermentation begins; without it nothing is met.`];
}
