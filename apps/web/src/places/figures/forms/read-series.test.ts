import { expect, test } from 'vitest';
import { readSeries } from './read-series';

const columns = ['minutes', 'value'];

test('times as h:mm or minutes, values apart by whatever a person or a logger puts between', () => {
  expect(readSeries('0 135\n0:30\t110.5\n\n90; 78\n2:15, −1', columns).rows).toEqual([
    { minutes: 0, value: 135 },
    { minutes: 30, value: 110.5 },
    { minutes: 90, value: 78 },
    { minutes: 135, value: -1 },
  ]);
});

test.each(['0', '0 135 7', '0 warm', '0:75 80', '12e3 4', '0 '])('“%s” is not a line of two numbers, and the line is named', (line) => {
  expect(readSeries(`0 135\n${line}`, columns)).toEqual({ rows: [], error: expect.stringContaining('Line 2') });
});
