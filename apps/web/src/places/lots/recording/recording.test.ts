import { expect, test } from 'vitest';
import { aReading } from '../test-lots/a-lot';
import { aControlPoint, aPoint, coldRoom, dwell } from '../test-lots/a-point';
import { lastUnit } from './last-unit';
import { nextProbe } from './next-probe';
import { unitsFor } from './units-for';
import { usualWeights } from './usual-weights';

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
        readings: [aReading('10:00', 90, { probe: '1' }), aReading('10:01', 91, { probe: '2' }), aReading('09:30', 80, { probe: '3' })],
      }),
    ),
  ).toBe('3');
  expect(nextProbe(aPoint({ ...cook, probes: [] }))).toBe('');
});

test('a probe that was just read is not next again, though the sheet does not show its reading yet', () => {
  const readings = [aReading('10:00', 90, { probe: '1' }), aReading('10:01', 91, { probe: '2' })];
  expect(nextProbe(aPoint({ ...cook, probes: ['1', '2'] }, { readings }), '1')).toBe('2');
});

const lossOfWeight = { kind: 'weightLoss' as const, percent: 35, source: dwell.source };
const drying = { name: 'Drying', takenAs: 'curve' as const, limits: [lossOfWeight], probes: ['piece 1', 'piece 2'] };
const weighed = [
  aReading('10:00', 642.5, { probe: 'piece 1', entered: { value: 642.5, unit: 'g' } }),
  aReading('10:03', 1.4, { probe: 'piece 2', entered: { value: 1.4, unit: 'lb' } }),
  aReading('11:00', 600, { probe: 'piece 1', entered: { value: 600, unit: 'g' } }),
];

test('a keypad asks in the unit its probe was last read in', () => {
  const amended = aReading('11:30', 21, { probe: 'piece 1', entered: { value: 21, unit: 'oz' }, amendedBy: 'later' });
  const readings = [...weighed, amended];
  expect(lastUnit({ readings }, 'piece 1')).toBe('g');
  expect(lastUnit({ readings }, 'piece 2')).toBe('lb');
  expect(lastUnit({ readings }, 'piece 3')).toBeUndefined();
});

test('a marked piece weighs at least half and hardly more of what it weighed before, and first at most the meat of its lot', () => {
  const most = (readings: typeof weighed, meat = 9_000) =>
    usualWeights({ readings }, 'piece 1', meat, 'US').map((each) => [each.unit, each.least, each.most]);
  expect(most(weighed)).toEqual(
    expect.arrayContaining([
      ['g', 300, 675],
      ['lb', 0.661, 1.49],
    ]),
  );
  expect(most([])).toEqual(
    expect.arrayContaining([
      ['lb', 0, 19.8],
      ['g', 0, 9_000],
    ]),
  );
  expect(most([aReading('09:00', 5.3, { probe: 'piece 1', entered: { value: 5.3, unit: 'pH' } })], 0)).toEqual([]);
});

test('only a control point that is weighed asks in weights', () => {
  const scale = usualWeights({ readings: weighed }, 'piece 1', 9_000, 'US');
  expect(unitsFor(aControlPoint(drying), '°F', scale)).toEqual(scale);
  expect(unitsFor(room, '°F', scale).map(({ unit }) => unit)).toEqual(['°F', '°C']);
});
