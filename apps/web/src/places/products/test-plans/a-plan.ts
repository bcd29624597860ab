import type { ControlPoint, PlanContent } from '@larderbook/contracts';
import { cookedMeat65Log, coolingUncured } from '@larderbook/haccp';

const id = (last: string) => `01990000-0000-7000-8000-0000000000${last}`;
export const stepIds = { trimming: id('01'), cooking: id('02'), chilling: id('03') };
export const pointIds = { cooking: id('11'), chilling: id('12') };

export const aPoint = (own: Partial<ControlPoint> = {}): ControlPoint => ({
  controlPointId: pointIds.cooking,
  stepId: stepIds.cooking,
  name: 'Cooking',
  kind: 'critical',
  hazard: 'Survival of Salmonella',
  takenAs: 'curve',
  limits: [{ limitId: id('21'), limit: cookedMeat65Log }],
  probes: ['core 1'],
  monitoring: {
    what: 'Core temperature',
    how: 'Probe in the thickest piece',
    howOften: 'Every half hour',
    who: 'The cook',
  },
  correctiveAction: 'Keep on cooking.',
  verification: 'Ice water',
  ...own,
});

const survival = {
  kind: 'biological' as const,
  what: 'Survival of Salmonella',
  likely: true,
  because: 'The core is the last to get hot.',
  control: 'Cooking',
};

export const aPlan = (own: Partial<PlanContent> = {}): PlanContent => ({
  title: 'Roast',
  process: 'roast',
  intendedUse: 'Ready to eat, kept cold.',
  notes: '',
  steps: [
    { stepId: stepIds.trimming, name: 'Trimming', hazards: [] },
    { stepId: stepIds.cooking, name: 'Cooking', hazards: [survival] },
    { stepId: stepIds.chilling, name: 'Chilling', hazards: [] },
  ],
  controlPoints: [
    aPoint(),
    aPoint({
      controlPointId: pointIds.chilling,
      stepId: stepIds.chilling,
      name: 'Chilling',
      follows: pointIds.cooking,
      limits: [{ limitId: id('22'), limit: coolingUncured }],
    }),
  ],
  ...own,
});
