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
  const doubted = withPutInLater(cooked(160), [minute * 10], 0);
  expect(doubted).toMatchObject({ kind: 'undetermined', finding: 'put-in-later', butFor: { finding: 'dwell-at-once' } });
  expect(doubted).not.toHaveProperty('spare');
});

test('makes no miss milder', () => {
  expect(withPutInLater(cooked(120), [minute * 10], 0)).toEqual(cooked(120));
});
