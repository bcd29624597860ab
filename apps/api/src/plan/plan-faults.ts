import type { ControlPoint, PlanContent } from '@larderbook/contracts';
import { limitFault, type CriticalLimit } from '@larderbook/haccp';

type TakenAs = ControlPoint['takenAs'];

/** How each kind of limit is recorded: a range as one value, a cook or a chill as a series of readings. */
const takenAsOf: Record<CriticalLimit['kind'], TakenAs> = {
  range: 'value',
  concentration: 'weighings',
  dwell: 'curve',
  cooling: 'curve',
  bandTime: 'curve',
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
    (point) =>
      point.kind === 'critical' &&
      (point.stepId === stepId || hazard.control.toLowerCase().includes(point.name.toLowerCase())),
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
  ];
}

function limitFaults({ name, takenAs }: ControlPoint, limit: CriticalLimit): string[] {
  const fitting = takenAsOf[limit.kind];
  const fault = limitFault(limit);
  return [
    ...(fitting === takenAs
      ? []
      : [`${name}: its limit is judged from ${sayTaken[fitting]}, but it is recorded as ${sayTaken[takenAs]}.`]),
    ...(fault ? [`${name}: ${fault}`] : []),
  ];
}

/** A chill is counted from the end of the cook before it. */
function followsFaults(point: ControlPoint, { controlPoints }: PlanContent): string[] {
  const isChill = point.limits.some(({ limit }) => limit.kind === 'cooling');
  if (!isChill && point.follows === undefined) return [];
  const cook = controlPoints.find(({ controlPointId }) => controlPointId === point.follows);
  if (cook && cook !== point && cook.takenAs === 'curve') return [];
  return [`${point.name}: name the cooking control point whose end starts its clock.`];
}
