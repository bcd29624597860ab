import { expect, test } from 'vitest';
import { aWeighing, weight } from '../test-lots/a-lot';
import { inEnglish } from '../../../ui/in-english.test-data';
import { scaleFor } from './scale-for';

const say = inEnglish('lot-forms');

const pound = 453.59237;
const aTarget = (pounds: number, weighedGrams = 0) => {
  const { item } = aWeighing('10:00');
  return { itemId: item.itemId, targetGrams: pounds * pound, weighedGrams };
};
const none = { weighings: [] };

test('target, pad and usual stand in one unit, and usual begins near the target', () => {
  const [first, second] = scaleFor(none, aTarget(1.06), 'US', say).units;
  expect(first).toMatchObject({ unit: 'lb', least: 0.848, most: 1.27 });
  expect(second).toMatchObject({ unit: 'g', least: 385, most: 577 });
  expect(scaleFor(none, aTarget(0.2), 'US', say).units[0]).toMatchObject({ unit: 'g', least: 72.6, most: 109 });
  expect(scaleFor(none, aTarget(22), 'metric', say).units[0]).toMatchObject({ unit: 'kg', least: 7.98, most: 12 });
});

test('an ingredient that was weighed in one unit is asked for in it again', () => {
  const inOunces = { weighings: [aWeighing('10:00', { weight: weight(8, 'oz') })] };
  const { units } = scaleFor(inOunces, aTarget(1.06, weight(8, 'oz').grams), 'US', say);
  expect(units[0]).toMatchObject({ unit: 'oz', least: 7.17, most: 10.8 });
  const corrected = scaleFor(inOunces, aTarget(1.06, weight(8, 'oz').grams), 'US', say, aWeighing('10:00').weighingId);
  expect(corrected.units[0]).toMatchObject({ unit: 'oz', least: 13.6, most: 20.4 });
});

test('when it is all in, a little more is usual; without a target, anything is', () => {
  expect(scaleFor(none, aTarget(1.06, 1.06 * pound), 'US', say).units.find(({ unit }) => unit === 'g')).toMatchObject({
    least: 0,
    most: 96.2,
  });
  expect(scaleFor(none, { ...aTarget(1), targetGrams: undefined }, 'US', say).units[0]).toMatchObject({ least: 0 });
});

test('1.06 g beside a target of 1.06 lb asks; the target itself does not', () => {
  const { ask } = scaleFor(none, aTarget(1.06), 'US', say);
  expect(ask({ value: 1.06, unit: 'g' })).toEqual({
    because: '1.06 lb is to be weighed.',
    meant: [{ value: 1.06, unit: 'lb' }],
  });
  expect(ask({ value: 1.06, unit: 'lb' })).toBeUndefined();
});
