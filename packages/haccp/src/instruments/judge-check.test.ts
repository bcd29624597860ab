import { expect, test } from 'vitest';
import { judgeCheck } from './judge-check';

// Tolerances are the establishment's own; ± 2 °F is FDA Food Code 4-203.11, ± 1 g and ± 0.05 pH are common practice, no source.
test.each([
  ['a thermometer that reads true', { expected: 32, observed: 32, tolerance: 2, unit: '°F' }, 'met', 'It reads true; ± 2 °F is allowed.'],
  ['exactly as far off as is allowed', { expected: 32, observed: 34, tolerance: 2, unit: '°F' }, 'met', 'It reads 2 °F too high; ± 2 °F is allowed.'],
  ['a thousandth further', { expected: 32, observed: 29.999, tolerance: 2, unit: '°F' }, 'missed', 'It reads 2.001 °F too low; ± 2 °F is allowed.'],
  ['tenths that do not add up in floating point', { expected: 0.3, observed: 0.1 + 0.2, tolerance: 0.1, unit: '°C' }, 'undetermined', 'The values cannot be compared.'],
  ['a scale', { expected: 500, observed: 501, tolerance: 1, unit: 'g' }, 'met', 'It reads 1 g too high; ± 1 g is allowed.'],
  ['a pH meter in its buffer', { expected: 4.01, observed: 4.07, tolerance: 0.05, unit: 'pH' }, 'missed', 'It reads 0.06 pH too high; ± 0.05 pH is allowed.'],
  ['nothing on the display', { expected: 32, observed: NaN, tolerance: 2, unit: '°F' }, 'undetermined', 'The values cannot be compared.'],
])('%s', (_case, check, kind, because) => {
  expect(judgeCheck(check)).toMatchObject({ kind, because });
});

test('a miss says by how much, and what to do about everything measured since', () => {
  expect(judgeCheck({ expected: 32, observed: 35, tolerance: 2, unit: '°F' })).toMatchObject({
    measured: '35 °F at 32 °F',
    limit: '± 2 °F',
    margin: '1 °F beyond',
    next: expect.stringContaining('look again at everything measured with it'),
  });
});
