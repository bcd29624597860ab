import type { ControlPoint, PlanContent } from '@larderbook/contracts';
import type { WeightLossLimit } from '@larderbook/haccp';
import { v7 } from 'uuid';

const lostEnough: WeightLossLimit = {
  kind: 'weightLoss',
  percent: 35,
  source: {
    citation: 'Thistlewick Larder, own validation of the dry sausage, folder 2 (invented)',
    edition: 'three lots, laboratory letters of last winter',
    confirmed: true,
  },
};

/** Drying is followed on two marked pieces; what they have lost says when to measure water activity. */
export function withMarkedPieces(plan: PlanContent): PlanContent {
  const stepId = plan.steps.find(({ name }) => name === 'Drying')?.stepId;
  if (!stepId) throw new Error('The plan to start from has no drying');
  const fermentation = plan.controlPoints.findIndex(({ name }) => name === 'Fermentation');
  return { ...plan, controlPoints: plan.controlPoints.toSpliced(fermentation + 1, 0, drying(stepId)) };
}

const drying = (stepId: string): ControlPoint => ({
  controlPointId: v7(),
  stepId,
  name: 'Drying',
  kind: 'critical',
  hazard: 'Pathogens that live on in a sausage that is not dry enough.',
  takenAs: 'curve',
  limits: [{ limitId: v7(), limit: lostEnough }],
  probes: ['piece 1', 'piece 2'],
  frequency: { everyMinutes: 7 * 24 * 60 },
  monitoring: {
    what: 'Weight of two marked pieces, one at the door and one at the back of the chamber.',
    how: 'Bench scale, each piece by its tag; the one that has lost least counts.',
    howOften: 'When they are hung, then at least once a week.',
    who: 'The sausage maker.',
  },
  correctiveAction: 'Dry on. A piece that stops losing weight is cut: with a dry rim the lot is held, the humidity raised.',
  verification: 'Scale checked with a test weight. Water activity is measured in every lot.',
});
