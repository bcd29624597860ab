import fc from 'fast-check';
import { expect, test } from 'vitest';
import { above, boundOf } from './bound';
import { convertDegrees, onCommonScale, formatConverted } from './convert-degrees';
import { degrees } from './degrees';
import { formatPrinted } from './quantities';

test('a third decimal is refused, not rounded', () => {
  expect(() => degrees(71.111, '°C')).toThrow('71.111 is not a temperature with at most two decimals');
});

test('conversion is exact and loses nothing on the way back', () => {
  expect(convertDegrees(degrees(212, '°F'), '°C')).toEqual({ numerator: 10000, denominator: 1 });
  expect(convertDegrees(degrees(160, '°F'), '°C')).toEqual({ numerator: 64000, denominator: 9 });
  expect(convertDegrees(degrees(71.1, '°C'), '°F')).toEqual({ numerator: 15998, denominator: 1 });
  fc.assert(
    fc.property(fc.integer({ min: -4000, max: 30000 }), (hundredths) => {
      const there = convertDegrees({ hundredths, unit: '°C' }, '°F');
      const scaledBack = (there.numerator - 3200 * there.denominator) * 5;
      expect(scaledBack).toBe(onCommonScale({ hundredths, unit: '°C' }) * there.denominator);
    }),
  );
});

test('a converted figure is rounded once, for reading only', () => {
  expect(formatConverted(degrees(160, '°F'), '°C')).toBe('71.1 °C');
  expect(formatConverted(degrees(-40, '°F'), '°C')).toBe('-40 °C');
  expect(formatConverted(degrees(37, '°C'), '°F', 0)).toBe('99 °F');
});

test.each([
  ['on the printed °F', degrees(160, '°F'), 0],
  ['on the printed °C, though it converts to 159.98 °F', degrees(71.1, '°C'), 0],
  ['a hundredth under in °F', degrees(159.99, '°F'), -5],
  ['a hundredth over in °C', degrees(71.11, '°C'), 9],
])('a reading %s is compared with the figure of its own unit', (_case, reading, distance) => {
  expect(above(reading, boundOf({ '°F': 16000, '°C': 7110 }))).toBe(distance);
});

test('a figure printed in one unit only is converted exactly for a reading in the other', () => {
  const bound = boundOf({ '°F': 16000 });
  expect(above(degrees(71.11, '°C'), bound)).toBeLessThan(0);
  expect(above(degrees(71.12, '°C'), bound)).toBeGreaterThan(0);
  expect(formatPrinted({ '°F': 16000 }, '°C')).toBe('71.1 °C');
});

test('a temperature in its own unit stays as it is', () => {
  expect(convertDegrees(degrees(71.15, '°C'), '°C')).toEqual({ numerator: 7115, denominator: 1 });
  expect(formatConverted(degrees(71.1, '°C'), '°C')).toBe('71.1 °C');
});
