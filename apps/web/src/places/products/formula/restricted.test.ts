import { nitriteComminutedRefrigerated } from '@larderbook/haccp';
import type { PlanContent } from '@larderbook/contracts';
import { expect, test } from 'vitest';
import { aPlan, aPoint } from '../test-plans/a-plan';
import { limitFor, restrictedIn, type Carrier } from './restricted';
import { tell } from '../../../ui/tell-here.test-data';

const salt: Carrier = { itemName: 'Salt', percent: 1.8 };
const cure = (percent: number): Carrier => ({
  itemName: 'Curing salt 6.25 %',
  percent,
  substance: 'sodium nitrite',
  fractionPercent: 6.25,
});
const judged = (line: Carrier, lines = [line], plan?: PlanContent) => {
  const found = restrictedIn(line, lines, plan);
  return found && { ppm: tell(found.alone).measured, kind: found.verdict.kind, measured: tell(found.verdict).measured };
};

test('salt holds no restricted substance', () => {
  expect(restrictedIn(salt, [salt], undefined)).toBeUndefined();
});

// 9 CFR 424.21(c): ¼ oz per 100 lb of chopped meat is 156.25 ppm.
test.each([
  ['the trade’s standard dose, 2.5 g of 6.25 % curing salt per kg, is exactly the most allowed', 0.25, '156.25 ppm', 'met'],
  ['2.51 g per kg is too much', 0.251, '156.88 ppm', 'missed'],
  ['an unfinished percentage is not judged', NaN, 'nothing usable', 'undetermined'],
])('%s', (_case, percent, ppm, kind) => {
  expect(judged(cure(percent))).toMatchObject({ ppm, kind });
});

test('two ingredients with nitrite are judged together, each with its own share', () => {
  const second = { ...cure(0.15), itemName: 'Seasoning with cure' };
  expect(judged(second, [cure(0.15), salt, second])).toEqual({
    ppm: '93.75 ppm',
    measured: '187.5 ppm',
    kind: 'missed',
  });
});

test('the limit of the plan counts before the published one', () => {
  const plan = aPlan({ controlPoints: [aPoint({ limits: [{ limitId: 'a', limit: nitriteComminutedRefrigerated }] })] });
  expect(limitFor('sodium nitrite', plan)).toEqual({ limit: nitriteComminutedRefrigerated, isPlanned: true });
  expect(limitFor('phosphate', plan).isPlanned).toBe(false);
  expect(judged(cure(0.1), [cure(0.1)], plan)?.kind).toBe('undetermined');
});
