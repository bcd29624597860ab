import { expect, test } from 'vitest';
import { readSeries } from './read-series';

const columns = [{ key: 'minutes' }, { key: 'value' }];

test('times as h:mm or minutes, values apart by whatever a person or a logger puts between', () => {
  expect(readSeries('0 135\n0:30\t110.5\n\n90; 78\n2:15, −1', columns).rows).toEqual([
    { minutes: 0, value: 135 },
    { minutes: 30, value: 110.5 },
    { minutes: 90, value: 78 },
    { minutes: 135, value: -1 },
  ]);
});

test.each(['0', '0 135 7', '0 warm', '0:75 80', '12e3 4', '0 '])('“%s” is not a line of two numbers, and the line is named', (line) => {
  expect(readSeries(`0 135\n${line}`, columns)).toEqual({
    rows: [],
    fault: expect.objectContaining({ figures: expect.objectContaining({ line: 2 }) }),
  });
});

test('where it lasts for days a bare number is asked about: hours taken for minutes would count hardly any heat', () => {
  const days = [{ key: 'minutes', asClock: true as const }, { key: 'value' }, { key: 'pH' }];
  expect(readSeries('0 78 5.8\n12 79 5.5', days)).toEqual({
    rows: [],
    fault: { code: 'line-needs-clock', figures: { line: 2, text: '12 79 5.5', count: 0 } },
  });
  expect(readSeries('0 78 5.8\n12:00 79 5.5\n480:00 79 5.2', days).rows.map(({ minutes }) => minutes)).toEqual([0, 720, 28_800]);
});
