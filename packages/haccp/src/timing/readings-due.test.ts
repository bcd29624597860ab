import { expect, test } from 'vitest';
import { readingsDue, type Frequency } from './readings-due';

const minute = 60_000;
const due = (frequency: Frequency, ...minutes: number[]) =>
  readingsDue(
    frequency,
    minutes.map((at) => at * minute),
  );

test.each<[string, Frequency, number[], number, number]>([
  ['every half hour, as asked', { everyMinutes: 30 }, [0, 30, 60, 90], 0, 30],
  ['a quarter of an interval late is let pass', { everyMinutes: 30 }, [0, 37.5, 67.5], 0, 37.5],
  ['later than that, one is missing', { everyMinutes: 30 }, [0, 37.6, 67.5], 1, 37.6],
  ['an hour without one is one missing', { everyMinutes: 30 }, [0, 60], 1, 60],
  ['two hours without one are three missing', { everyMinutes: 30 }, [0, 120, 150], 3, 120],
  ['many at one moment do not make up for none later', { everyMinutes: 30 }, [0, 1, 2, 3, 4, 120], 3, 116],
  ['in whatever order they came', { everyMinutes: 30 }, [90, 0, 60, 30], 0, 30],
  ['one alone has no time between', { everyMinutes: 30 }, [0], 0, 0],
  ['none at all', { everyMinutes: 30 }, [], 0, 0],
  ['three in a lot, as asked', { timesInALot: 3 }, [0, 1, 2], 0, 1],
  ['two where three are asked', { timesInALot: 3 }, [0, 5], 1, 5],
  ['more than are asked', { timesInALot: 1 }, [0, 5, 9], 0, 5],
  ['none where one is asked', { timesInALot: 1 }, [], 1, 0],
])('%s', (_case, frequency, minutes, missing, longest) => {
  expect(due(frequency, ...minutes)).toEqual({ missing, longest: longest * minute });
});
