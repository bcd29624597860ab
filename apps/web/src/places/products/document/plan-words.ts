import type { ControlPoint, PlanContent } from '@larderbook/contracts';

export type Step = PlanContent['steps'][number];
export type Hazard = Step['hazards'][number];
export type TakenAs = ControlPoint['takenAs'];

export const hazardKindWords: Record<Hazard['kind'], string> = {
  biological: 'Biological',
  chemical: 'Chemical',
  physical: 'Physical',
};

export const pointKindWords: Record<ControlPoint['kind'], string> = {
  critical: 'Critical control point',
  prerequisite: 'Prerequisite',
};

export const takenAsWords: Record<TakenAs, string> = {
  value: 'one value',
  curve: 'a series of readings',
  weighings: 'the weighings of the lot',
  attestation: 'a yes or no, with what was seen',
};

/** "Air of the blast chiller, set to 34 °F by the shop’s own habit" */
export const saySurroundings = ({ surroundings: around }: ControlPoint): string => {
  if (!around) return '';
  const { setPoint } = around;
  return setPoint ? `${around.name}, set to ${setPoint.value} ${setPoint.unit} by the shop’s own habit` : around.name;
};

export const likelyWords = (likely: boolean): string => (likely ? 'Likely' : 'Not likely');

/** The control points that hang at a step. */
export const pointsAt = ({ controlPoints }: PlanContent, stepId: string): ControlPoint[] =>
  controlPoints.filter((point) => point.stepId === stepId);

export const stepName = ({ steps }: PlanContent, stepId: string): string => steps.find((step) => step.stepId === stepId)?.name ?? 'no step';
