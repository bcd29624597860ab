import { expect, test } from 'vitest';
import type { EnteredMass, MassUnit } from '../quantity/mass';
import { massOf } from '../quantity/weigh';
import { weightMeant } from './weight-beside';

const weight = (value: number, unit: MassUnit): EnteredMass => ({ value, unit });

test.each([
  ['1.06 g beside 1.06 lb', weight(1.06, 'g'), weight(1.06, 'lb'), 'lb'],
  ['g beside kg', weight(2.4, 'g'), weight(2.4, 'kg'), 'kg'],
  ['kg beside g', weight(480, 'kg'), weight(480.8, 'g'), 'g'],
  ['oz beside lb', weight(1.06, 'oz'), weight(1.06, 'lb'), 'lb'],
  ['lb beside oz', weight(6, 'lb'), weight(6.1, 'oz'), 'oz'],
  ['kg beside lb', weight(10, 'kg'), weight(10, 'lb'), 'lb'],
  ['lb beside kg', weight(10, 'lb'), weight(10, 'kg'), 'kg'],
  ['g beside oz', weight(2.1, 'g'), weight(2.1, 'oz'), 'oz'],
  ['oz beside g', weight(60, 'oz'), weight(60, 'g'), 'g'],
  ['a few percent off', weight(1.1, 'g'), weight(1.06, 'lb'), 'lb'],
])('%s was meant in the other unit', (_case, entered, target, unit) => {
  expect(weightMeant(entered, [massOf(target)])).toEqual({ value: entered.value, unit });
});

test.each([
  ['the target itself', weight(480.8, 'g'), [weight(1.06, 'lb')]],
  ['a part of it', weight(200, 'g'), [weight(1.06, 'lb')]],
  ['twice as much, by mistake', weight(960, 'g'), [weight(1.06, 'lb')]],
  ['six percent off in the other unit', weight(1.13, 'g'), [weight(1.06, 'lb')]],
  ['near what is still to be weighed, though another unit fits all of it', weight(10, 'lb'), [weight(10, 'lb'), weight(10, 'kg')]],
  ['nothing to be weighed', weight(1, 'g'), []],
  ['more than enough already', weight(1, 'g'), [weight(0, 'g')]],
])('%s is nothing to ask about', (_case, entered, targets) => {
  expect(weightMeant(entered, targets.map(massOf))).toBeUndefined();
});
