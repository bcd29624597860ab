import { expect, test } from 'vitest';
import { degreeHoursFahrenheit } from '../kinds/degree-hours/fermentation-limit';
import * as sets from '../limit-sets/index';
import { sayLimit } from './say-limit';

test.each([
  ['cold holding', sets.coldHolding, '≤ 41 °F (5 °C)'],
  ['hot holding', sets.hotHolding, '≥ 135 °F (57 °C)'],
  ['cooling', sets.coolingUncured, '130 → 80 °F within 1 h 30 min, then 80 → 40 °F within 5 h'],
  ['cooling in a shop', sets.coolingFoodCode, '135 → 70 °F within 2 h, and 135 → 41 °F within 6 h in all'],
  ['cooling with a start', sets.coolingFromCooking, 'begun within 1 h 30 min of cooking, then 120 → 55 °F within 6 h'],
  ['come-up', sets.comeUpWithinSixHours, '50 → 130 °F within 6 h in all'],
  ['one row', sets.reheatedFoodCode, '165 °F for 15 s'],
  ['a table without a row', { ...sets.cookedMeat65Log, rows: [] }, 'no row'],
  ['a table', sets.cookedMeat65Log, 'one row of the table held, 130 °F for 1 h 52 min … 160 °F, no holding time'],
  ['nitrite', sets.nitriteComminuted, '≤ ¼ oz per 100 lb (156 ppm)'],
  ['nitrite with a minimum', sets.nitriteComminutedRefrigerated, '≥ 120 ppm and ≤ ¼ oz per 100 lb (156 ppm)'],
])('%s is said in one line', (_case, limit, line) => {
  expect(sayLimit(limit)).toBe(line);
});

test('nitrite counted as its ion is said so, at least and at most', () => {
  const counted = { countedAs: 'NO₂', printed: '80 mg/kg as NO₂ ion' } as const;
  const limit = { ...sets.nitriteComminutedRefrigerated, ...counted, min: 2000, max: 8000 };
  expect(sayLimit(limit)).toBe('≥ 20 ppm as NO₂ and ≤ 80 mg/kg as NO₂ ion');
});

test('a loss of weight and degree-hours of one class are said in one line', () => {
  const { source } = sets.coldHolding;
  expect(sayLimit({ kind: 'weightLoss', percent: 33.5, source })).toBe('≥ 33.5 % of the start weight lost');
  const last = degreeHoursFahrenheit.classes.slice(-1);
  expect(sayLimit({ kind: 'degreeHours', ...degreeHoursFahrenheit, classes: last })).toBe('≤ 900 °F·h, counted over 60 °F until pH 5.3');
});

test('curves are said in the unit of the readings', () => {
  expect(sayLimit(sets.coolingUncured, '°C')).toBe('54.4 → 26.7 °C within 1 h 30 min, then 26.7 → 4.4 °C within 5 h');
});

test('a limit without a bound says so, and one of its own signs keeps them', () => {
  const { source } = sets.coldHolding;
  expect(sayLimit({ kind: 'range', measured: 'pH', source })).toBe('pH no bound set');
  expect(sayLimit({ ...sets.nitriteComminuted, max: undefined, maxThousandths: undefined })).toMatch(/≤|no bound set/);
  expect(sayLimit({ ...sets.coldHolding, max: { '°C': 500 } }, '°F')).toBe('≤ 5 °C');
});

test('numbers without a unit are named', () => {
  const { source } = sets.coldHolding;
  expect(sayLimit({ kind: 'range', measured: 'pH', max: 5300, source })).toBe('pH ≤ 5.3');
  expect(sayLimit({ kind: 'range', measured: 'percent', min: 10_000, max: 12_500, source })).toBe('≥ 10 % and ≤ 12.5 %');
});
