import { expect, test } from 'vitest';
import { seriesOf, type ReadValue } from '../limits/series-of';
import type { CurveReading } from '../thermal/instant';
import { doubtsIn } from './doubts-in';

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
type Told = Partial<ReadValue>;
const read = (minutes: number, value: number, unit: string, told: Told = {}): ReadValue => ({
  at: minutes * MINUTE,
  value,
  unit,
  id: `${minutes}`,
  arrivedAt: minutes * MINUTE,
  ...told,
});
const doubts = (reads: ReadValue[], now?: number) =>
  doubtsIn(seriesOf(reads), { ended: false, now }).map(({ kind, readingIds }) => [kind, readingIds]);

test('a core that moves faster than the piece can is in doubt, with the readings that moved, until somebody speaks', () => {
  const chill = (word?: 'not of the core') => [
    read(0, 140, '°F'),
    read(30, 100, '°F'),
    read(60, 78, '°F'),
    read(61, 37, '°F', { word }),
    read(120, 50, '°F'),
  ];
  expect(doubts(chill())).toEqual([['falls faster than the piece can', ['61']]]);
  expect(doubts(chill('not of the core'))).toEqual([]);
});

test('what is only worth saying is no doubt', () => {
  expect(doubts([read(0, 140, '°F'), read(16, 139, '°F')])).toEqual([]);
});

test.each(['g', 'pH'])('of readings in %s the clock is looked at, each piece by itself, in the order in which they came', (unit) => {
  const late = (told: Told = {}) => [read(0, 5, unit), read(300, 4, unit), read(200, 4.5, unit, { arrivedAt: 301 * MINUTE, ...told })];
  expect(doubts(late())).toEqual([['out of order', ['200']]]);
  expect(doubts(late({ word: 'time is right' }))).toEqual([]);
  expect(doubts(late({ word: 'not of the core' }))).toEqual([]);
  expect(doubts(late({ probe: 'piece 2' }))).toEqual([]);
  expect(doubts(late({ at: NaN }))).toEqual([]);
});

test('a weight of the future is in doubt when it came then, and when it is yet to come', () => {
  expect(doubts([read(300, 5, 'kg', { arrivedAt: 0 })])).toEqual([['in the future', ['300']]]);
  const yetToCome = [read(300, 5, 'kg', { arrivedAt: undefined })];
  expect(doubts(yetToCome, HOUR)).toEqual([['in the future', ['300']]]);
  expect(doubts(yetToCome)).toEqual([]);
});

test('more than may be judged is left to the judge', () => {
  const temperatures = { length: 10_000_000 } as CurveReading[];
  expect(doubtsIn({ temperatures, acid: [], weights: [] }, { ended: true })).toEqual([]);
});
