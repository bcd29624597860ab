import type { ControlPoint, PlanContent } from '@larderbook/contracts';
import { coolingCured, coolingFromCooking, withPublishedConditions, type CriticalLimit } from '@larderbook/haccp';
import { expect, test } from 'vitest';
import { planWarnings } from './plan-warnings';

const chilledBy = (limit: CriticalLimit): PlanContent => {
  const point: Pick<ControlPoint, 'name' | 'limits'> = { name: 'Chilling', limits: [{ limitId: 'limit', limit }] };
  return { process: 'roast', controlPoints: [point] } as PlanContent;
};
const aboutConditions = (limit: CriticalLimit) =>
  planWarnings(chilledBy(limit), undefined).filter((said) => said.includes('asks for more'));

test('a figure that stands without what its source asks of the formula is said', () => {
  expect(aboutConditions(coolingCured)).toEqual([
    'Chilling: the source of its figure asks for more than the plan does: at least 100 ppm ingoing sodium nitrite on ' +
      'the meat block. Choose the published limit again, or name your own support.',
  ]);
  expect(aboutConditions(withPublishedConditions(coolingCured))).toEqual([]);
});

test('a chill that has to begin in time, in a plan that does not ask when it began, is said', () => {
  expect(planWarnings(chilledBy(coolingFromCooking), undefined)).toEqual([
    'Chilling: its limit asks how soon chilling begins after cooking, but no control point records when it began. Add one ' +
      'that asks for the moment and follows the cook, and let the clock of Chilling start with it.',
  ]);
});
