import { expect, test } from 'vitest';
import { aReading } from '../test-lots/a-lot';
import { aControlPoint, aPoint, coldRoom, dwell } from '../test-lots/a-point';
import { nextProbe } from './next-probe';
import { unitsFor } from './units-for';

const room = aControlPoint({ name: 'Cold room', takenAs: 'value', limits: [coldRoom] });

test('the shop’s own unit comes first, the other is one tap away', () => {
  expect(unitsFor(room, '°C').map(({ unit }) => unit)).toEqual(['°C', '°F']);
  expect(unitsFor(room, '°F').map(({ unit }) => unit)).toEqual(['°F', '°C']);
});

test('what is usual is what the plan says, in the figures of each unit', () => {
  const plausible = { '°F': [2800, 5000] as [number, number], '°C': [-200, 1000] as [number, number] };
  expect(unitsFor({ ...room, plausible }, '°F')).toMatchObject([
    { unit: '°F', least: 28, most: 50 },
    { unit: '°C', least: -2, most: 10 },
  ]);
});

test('a pH is a pH', () => {
  const point = aControlPoint({
    name: 'Ripe',
    takenAs: 'value',
    limits: [{ kind: 'range', measured: 'pH', max: 5300, source: dwell.source }],
  });
  expect(unitsFor(point, '°F')).toMatchObject([{ unit: 'pH', decimals: 2 }]);
});

const cook = { name: 'Cook', takenAs: 'curve' as const, limits: [dwell], probes: ['1', '2', '3'] };

test('with several probes it is the turn of the one not read for the longest time', () => {
  expect(nextProbe(aPoint(cook))).toBe('1');
  expect(
    nextProbe(
      aPoint(cook, {
        readings: [
          aReading('10:00', 90, { probe: '1' }),
          aReading('10:01', 91, { probe: '2' }),
          aReading('09:30', 80, { probe: '3' }),
        ],
      }),
    ),
  ).toBe('3');
  expect(nextProbe(aPoint({ ...cook, probes: [] }))).toBe('');
});

test('a probe that was just read is not next again, though the sheet does not show its reading yet', () => {
  const readings = [aReading('10:00', 90, { probe: '1' }), aReading('10:01', 91, { probe: '2' })];
  expect(nextProbe(aPoint({ ...cook, probes: ['1', '2'] }, { readings }), '1')).toBe('2');
});
