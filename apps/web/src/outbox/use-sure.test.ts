import { expect, test } from 'vitest';
import { isSureOf } from './use-sure';

const [typed, refused] = [{ value: 370, unit: '°F' }, { code: 'implausible-value' as const }];

test.each([
  ['the same once more', refused, { value: 370, unit: '°F' }, true],
  ['another number', refused, { value: 730, unit: '°F' }, false],
  ['the same in another unit', refused, { value: 370, unit: '°C' }, false],
  ['what was refused for another reason', { code: 'not-found' as const }, { value: 370, unit: '°F' }, false],
  ['what was not refused', undefined, { value: 370, unit: '°F' }, false],
])('of what was entered, %s', (_case, answer, entered, sure) => {
  expect(isSureOf(answer, typed, entered)).toBe(sure);
});
