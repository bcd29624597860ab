import { expect, test } from 'vitest';
import { methodsFor, shouldRead, usualShown } from './check-method';

test('a thermometer is checked at the ice point first, a scale with a test weight', () => {
  expect(methodsFor({ kind: 'thermometer' })[0]).toBe('ice point');
  expect(methodsFor({ kind: 'scale' })[0]).toBe('test weight');
  expect(methodsFor({ kind: 'pH meter' })).toEqual(['reference instrument']);
});

test('ice water reads 32 °F or 0 °C at any height', () => {
  expect(shouldRead('ice point', '°F')).toBe(32);
  expect(shouldRead('ice point', '°C')).toBe(0);
});

test('boiling water reads less the higher the shop stands, and nothing is said of no height or an impossible one', () => {
  expect(shouldRead('boiling point', '°F', 0)).toBe(212);
  expect(shouldRead('boiling point', '°C', 1600)).toBeLessThan(95);
  expect(shouldRead('boiling point', '°F')).toBeUndefined();
  expect(shouldRead('boiling point', '°F', 20_000)).toBeUndefined();
});

test('a weight and a standard are read off what is in hand', () => {
  expect(shouldRead('test weight', 'g')).toBeUndefined();
  expect(shouldRead('reference instrument', '°F')).toBeUndefined();
});

test('what would be odd to read is asked about: 132 for 32 °F, or a scale that shows a tenth too much', () => {
  expect(usualShown({ unit: '°F', tolerance: 2 }, 32)).toEqual({ unit: '°F', least: 22, most: 42, decimals: 1 });
  expect(usualShown({ unit: 'g', tolerance: 0.2 }, 200)).toEqual({ unit: 'g', least: 180, most: 220, decimals: 2 });
});
