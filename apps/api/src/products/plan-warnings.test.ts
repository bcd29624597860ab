import type { ControlPoint, PlanContent } from '@larderbook/contracts';
import {
  coolingCured,
  coolingFoodCode,
  coolingFromCooking,
  frozenByCentre,
  withPublishedConditions,
  type CriticalLimit,
} from '@larderbook/haccp';
import { expect, test } from 'vitest';
import { englishLimits, inEnglish } from '../platform/in-english.test-data';
import { planWarnings as warningsOf } from './plan-warnings';

const planWarnings = (content: Parameters<typeof warningsOf>[0], product: Parameters<typeof warningsOf>[1]) =>
  warningsOf(content, product, englishLimits).map(inEnglish);

const chilledBy = (limit: CriticalLimit): PlanContent => {
  const point: Pick<ControlPoint, 'controlPointId' | 'name' | 'limits'> = {
    controlPointId: 'chilling',
    name: 'Chilling',
    limits: [{ limitId: 'limit', limit }],
  };
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

test('freezing by the air of a freezer, in a plan that does not record when the meat went in, is said', () => {
  const byAir: CriticalLimit = { ...frozenByCentre, read: { what: 'freezer', thickness: { value: 6, unit: 'in' } } };
  expect(planWarnings(chilledBy(byAir), undefined)).toEqual([
    'Chilling: the time is counted by the air of the freezer, but nothing records when the meat went in, and without that ' +
      'nothing is met. Add a control point that asks for the moment, and let the clock of Chilling start with it.',
  ]);
  expect(planWarnings(chilledBy(frozenByCentre), undefined)).toEqual([]);
});

test('what is stirred is said to be judged without a bound on its speed', () => {
  const of = (piece: ControlPoint['piece']) => {
    const { process, controlPoints } = chilledBy(coolingFoodCode);
    return planWarnings({ process, controlPoints: controlPoints.map((point) => ({ ...point, piece })) } as PlanContent, undefined);
  };
  expect(of({ shape: 'stirred' })).toEqual([
    'Chilling: what is read is stirred or pumped and has no core, so no reading is doubted for how fast it rises or falls. ' +
      'Say so only of what flows, such as a sauce without pieces; a probe left in the air would not be noticed by its speed.',
  ]);
  expect(of({ shape: 'slab', smallest: { value: 2, unit: 'in' } })).toEqual([]);
  expect(of(undefined)).toEqual([]);
});
