import { expect, test } from 'vitest';
import { flagTimes, type EntryTimes, type TimeFlag } from './flag-times';

const at = (time: string): number => Date.parse(`2025-03-04T${time}Z`);

test.each<[string, Partial<EntryTimes>, TimeFlag[]]>([
  ['taken and recorded in one breath', {}, []],
  ['two minutes ahead of the server is a clock, not a mistake', { takenAt: at('10:02:00') }, []],
  ['more than two minutes ahead is in the future', { takenAt: at('10:02:00.001') }, ['in-the-future']],
  ['a quarter of an hour later is still prompt', { takenAt: at('09:45:00') }, []],
  ['later than a quarter of an hour is late', { takenAt: at('09:44:59.999') }, ['recorded-late']],
  ['at the moment the lot began', { lotStartedAt: at('10:00:00') }, []],
  ['a moment before the lot began', { lotStartedAt: at('10:00:00.001') }, ['before-the-lot']],
  ['at the same moment as the entry before it', { lastTakenAt: at('10:00:00') }, []],
  ['a minute before the entry that came before it, as an offline queue may send it', { lastTakenAt: at('10:01:00') }, []],
  ['more than a minute before the entry that came before it', { lastTakenAt: at('10:01:00.001') }, ['out-of-order']],
  [
    'everything at once, from a tablet found in a drawer',
    { takenAt: at('08:00:00'), lotStartedAt: at('09:00:00'), lastTakenAt: at('09:30:00') },
    ['before-the-lot', 'out-of-order', 'recorded-late'],
  ],
])('%s', (_case, times, flags) => {
  expect(flagTimes({ takenAt: at('10:00:00'), recordedAt: at('10:00:00'), ...times })).toEqual(flags);
});
