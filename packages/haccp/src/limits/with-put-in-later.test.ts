import { expect, test } from 'vitest';
import { cookedMeat65Log } from '../limit-sets/fsis-meat';
import { degrees } from '../quantity/degrees';
import { judgeDwell } from '../kinds/dwell/judge-dwell';
import { withPutInLater } from './with-put-in-later';

const minute = 60_000;
const cooked = (fahrenheit: number) => judgeDwell([{ at: 0, temperature: degrees(fahrenheit, '°F') }], cookedMeat65Log, { ended: true });

test.each([
  ['nothing that went in', [], 'met'],
  ['meat that was in before', [-60, 0], 'met'],
  ['meat two minutes later, as clocks of two devices differ', [-60, 2], 'met'],
  ['meat three minutes later', [-60, 3], 'undetermined'],
])('a cook of %s', (_case, minutes, kind) => {
  expect(
    withPutInLater(
      cooked(160),
      minutes.map((at) => at * minute),
      0,
    ).kind,
  ).toBe(kind);
});

test('says what to do, and has nothing to spare', () => {
  expect(withPutInLater(cooked(160), [minute * 10], 0)).toMatchObject({
    margin: undefined,
    spare: undefined,
    because: 'What was read is within the limit; meat went in after the last reading, and nothing was read of that.',
    next: 'Read it again with all of the meat in. Correct the time it went in if that is wrong, or open a deviation.',
  });
});

test('makes no miss milder', () => {
  expect(withPutInLater(cooked(120), [minute * 10], 0)).toEqual(cooked(120));
});
