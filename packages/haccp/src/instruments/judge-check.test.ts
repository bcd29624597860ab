import { expect, test } from 'vitest';
import { judgeCheck } from './judge-check';

const probe = { expected: 32, tolerance: 2, unit: '°F' };

test.each([
  ['reads true', 32, 'met', 'It reads true; ± 2 °F is allowed.', undefined],
  ['is off by exactly its tolerance', 34, 'met', 'It reads 2 °F too high; ± 2 °F is allowed.', undefined],
  ['is a thousandth beyond', 34.001, 'missed', 'It reads 2.001 °F too high; ± 2 °F is allowed.', '0.001 °F beyond'],
  ['reads too low', 29.5, 'missed', 'It reads 2.5 °F too low; ± 2 °F is allowed.', '0.5 °F beyond'],
])('a probe in ice water that %s', (_case, observed, kind, because, margin) => {
  expect(judgeCheck({ ...probe, observed })).toMatchObject({ kind, because });
  expect(judgeCheck({ ...probe, observed }).margin).toBe(margin);
});

test('a scale is judged exactly, where floating point would not be', () => {
  expect(judgeCheck({ expected: 100, observed: 100.3, tolerance: 0.3, unit: 'g' }).kind).toBe('met');
});

test('a value with more decimals than can be kept is never met', () => {
  expect(judgeCheck({ ...probe, observed: 32.0001 }).kind).toBe('undetermined');
});

test.each([
  ['pH', 7, 7.02, 'pH 7.02 at pH 7'],
  ['aw', 0.753, 0.752, 'aw 0.752 at aw 0.753'],
  ['°F', 32, 31.8, '31.8 °F at 32 °F'],
])('what was read in %s is said as everywhere else', (unit, expected, observed, measured) => {
  expect(judgeCheck({ expected, observed, tolerance: 0.5, unit }).measured).toBe(measured);
});
