import fc from 'fast-check';
import { expect, test } from 'vitest';
import { plainPart } from '../limits/plain-part.test-data';
import { massOf, formatMass } from '../quantity/weigh';
import { faultsOf } from './formula';
import { meatForPackages, sumMeatBlock } from './meat-block';
import { scaleFormula } from './scale-formula';

const kg = (value: number) => massOf({ value, unit: 'kg' });
const sausage = [
  { name: 'Salt', percent: 1.8 },
  { name: 'Curing salt 6.25 %', percent: 0.25 },
  { name: 'Ice', percent: 12.5 },
  { name: 'Pepper', percent: 0.0625 },
];

test('every line is scaled to the trimmed meat, exactly', () => {
  const targets = scaleFormula(sausage, kg(23.456));
  expect(targets.map(({ name, target }) => `${name} ${formatMass(target, 'g', 6)}`)).toEqual([
    'Salt 422.208 g',
    'Curing salt 6.25 % 58.64 g',
    'Ice 2932 g',
    'Pepper 14.66 g',
  ]);
});

test('a line keeps what else it carries', () => {
  expect(scaleFormula([{ name: 'Salt', percent: 2, itemId: 'a' }], kg(1))).toEqual([
    { name: 'Salt', percent: 2, itemId: 'a', target: massOf({ value: 20, unit: 'g' }) },
  ]);
});

test('a line scaled before is scaled anew for other meat', () => {
  const before = scaleFormula([{ name: 'Salt', percent: 2 }], kg(1));
  expect(scaleFormula(before, kg(2)).map(({ target }) => formatMass(target, 'g'))).toEqual(['40 g']);
});

test('no meat, or a line that cannot be used, is refused by name', () => {
  expect(() => scaleFormula(sausage, 0n)).toThrow('The meat block has no weight');
  expect(() => scaleFormula([{ name: 'Salt', percent: 0 }], kg(1))).toThrow('Salt has 0 %');
});

test.each([
  ['a sound formula', sausage, []],
  ['no name', [{ name: ' ', percent: 1 }], ['ingredient-no-name']],
  [
    'listed twice',
    [
      { name: 'Salt', percent: 1 },
      { name: 'salt ', percent: 2 },
    ],
    ['ingredient-listed-twice salt 2 %'],
  ],
  ['nothing', [{ name: 'Salt', percent: 0 }], ['ingredient-not-above-zero Salt 0 %']],
  ['below nothing', [{ name: 'Salt', percent: -1 }], ['ingredient-not-above-zero Salt -1 %']],
  ['no number', [{ name: 'Salt', percent: NaN }], ['ingredient-no-percentage Salt NaN %']],
  ['five decimals', [{ name: 'Salt', percent: 0.00001 }], ['ingredient-too-fine Salt 0.00001 %']],
  ['a slipped decimal point', [{ name: 'Salt', percent: 1001 }], ['ingredient-too-much Salt 1001 %']],
])('%s', (_case, lines, faults) => {
  expect(faultsOf(lines).map(({ because }) => plainPart(because))).toEqual(faults);
});

test('the meat block is the meat alone', () => {
  const lot = [
    { mass: kg(40), isMeat: true },
    { mass: kg(5), isMeat: true },
    { mass: kg(6), isMeat: false },
  ];
  expect(sumMeatBlock(lot)).toBe(kg(45));
  expect(sumMeatBlock([])).toBe(0n);
});

test('meat for the packages wanted: 120 packages of 250 g at 92 % take 32.609 kg', () => {
  expect(formatMass(meatForPackages(120, massOf({ value: 250, unit: 'g' }), 92), 'kg', 3, 'up')).toBe('32.609 kg');
  expect(meatForPackages(10, kg(1), 125)).toBe(kg(8));
});

test.each([
  ['no packages', 0, kg(1), 90],
  ['half a package', 1.5, kg(1), 90],
  ['no weight', 10, 0n, 90],
  ['no yield', 10, kg(1), 0],
])('%s cannot be planned', (_case, count, netWeight, yieldPercent) => {
  expect(() => meatForPackages(count, netWeight, yieldPercent)).toThrow(RangeError);
});

test('the meat worked back always gives the packages, and a femtogram less does not', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 5000 }),
      fc.integer({ min: 1, max: 50_000 }),
      fc.integer({ min: 1, max: 2_000_000 }),
      (count, grams, parts) => {
        const net = massOf({ value: grams, unit: 'g' });
        const meat = meatForPackages(count, net, parts / 10_000);
        const made = (mass: bigint) => mass * BigInt(parts) >= BigInt(count) * net * 1_000_000n;
        expect(made(meat)).toBe(true);
        expect(made(meat - 1n)).toBe(false);
      },
    ),
  );
});
