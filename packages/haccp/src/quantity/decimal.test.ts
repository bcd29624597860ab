import fc from 'fast-check';
import { expect, test } from 'vitest';
import { decimalText, hasAtMostDecimals, scaled, scaledBig } from './decimal';
import { formatPercent } from './percent';

test.each([
  ['a whole number', 160, 2, 16000],
  ['a tenth', 151.5, 2, 15150],
  ['a number floating point would miss', 1.005, 3, 1005],
  ['another', 4.35, 2, 435],
  ['a number below zero', -17.78, 2, -1778],
  ['zero', 0, 2, 0],
  ['minus zero', -0, 2, 0],
  ['a very large number', 1e21, 2, undefined],
  ['a very small number', 1e-7, 2, undefined],
  ['one decimal too many', 151.555, 2, undefined],
  ['nothing', NaN, 2, undefined],
  ['infinity', Infinity, 2, undefined],
])('%s becomes an exact count', (_case, value, decimals, count) => {
  expect(scaled(value, decimals)).toBe(count);
});

test('every number of the keypad survives the way there and back', () => {
  fc.assert(
    fc.property(fc.integer({ min: -9_999_999, max: 9_999_999 }), fc.integer({ min: 0, max: 4 }), (count, decimals) => {
      expect(scaled(Number(decimalText(count, decimals)), decimals)).toBe(count);
    }),
  );
});

test('the number of decimals is told without rounding', () => {
  expect(hasAtMostDecimals(6.25, 4)).toBe(true);
  expect(hasAtMostDecimals(6.25001, 4)).toBe(false);
  expect(hasAtMostDecimals(0.1 + 0.2, 2)).toBe(false);
});

test('any number at all is counted exactly as its text has it, or not at all', () => {
  fc.assert(
    fc.property(fc.double({ min: -1e9, max: 1e9, noNaN: true }), fc.integer({ min: 0, max: 6 }), (value, decimals) => {
      const count = scaled(value, decimals);
      expect(count !== undefined).toBe(hasAtMostDecimals(value, decimals));
      if (count !== undefined) expect(Number(decimalText(count, decimals))).toBe(value + 0);
    }),
  );
});

test('large counts and many decimals are read from the text of the number', () => {
  expect(scaled(9e15, 0)).toBe(9_000_000_000_000_000);
  expect(scaled(1e-7, 7)).toBe(1);
  expect(scaled(0, 7)).toBe(0);
  expect(scaledBig(1e21, 2)).toBe(100_000_000_000_000_000_000_000n);
  expect(scaledBig(1e-7, 2)).toBeUndefined();
});

test('a percentage is said with its decimals, and what is none as it stands', () => {
  expect(formatPercent(6.25)).toBe('6.25 %');
  expect(formatPercent(1.23456)).toBe('1.23456 %');
  expect(formatPercent(NaN)).toBe('NaN %');
});
