import { expect, test } from 'vitest';
import { judgeCheck } from './judge-check';
import { plainly, type Plainly } from '../limits/plainly.test-data';

const probe = { expected: 32, tolerance: 2, unit: '°F' } as const;

test.each([
  ['reads true', 32, 'met', 'check-true', '0 °F', undefined],
  ['is off by exactly its tolerance', 34, 'met', 'check-high', '2 °F', undefined],
  ['is a thousandth beyond', 34.001, 'missed', 'check-high', '2.001 °F', '0.001 °F'],
  ['reads too low', 29.5, 'missed', 'check-low', '2.5 °F', '0.5 °F'],
])('a probe in ice water that %s', (_case, observed, kind, finding, off, beyond) => {
  const judged = plainly(judgeCheck({ ...probe, observed }));
  expect(judged).toMatchObject({ kind, finding, off, allowed: '2 °F' });
  expect((judged as Plainly).beyond).toBe(beyond);
});

test('a scale is judged exactly, where floating point would not be', () => {
  expect(judgeCheck({ expected: 100, observed: 100.3, tolerance: 0.3, unit: 'g' }).kind).toBe('met');
});

test('a value with more decimals than can be kept is never met', () => {
  expect(judgeCheck({ ...probe, observed: 32.0001 }).kind).toBe('undetermined');
});

test('what a pH meter reads is a pH, and what it is off by a plain number', () => {
  expect(plainly(judgeCheck({ expected: 7, observed: 7.02, tolerance: 0.5, unit: 'pH' }))).toMatchObject({
    ...{ shown: '7.02 pH', expected: '7 pH', off: '0.02 ratio', allowed: '0.5 ratio' },
  });
});
