import { expect, test } from 'vitest';
import { aLot, aReading, at, ms } from '../test-lots/a-lot';
import { aPoint, cooling, dwell, labelRight } from '../test-lots/a-point';
import { curvesOfLot, traceIn } from './curves-of-lot';

const chill = { name: 'Chill', takenAs: 'curve' as const, limits: [cooling] };

test('readings in either unit are drawn in the unit of the shop, and a corrected one is left out', () => {
  const readings = [
    aReading('12:00', 122),
    aReading('12:30', 40, { entered: { value: 40, unit: '°C' } }),
    aReading('12:40', 9, { amendedBy: 'x' }),
  ];
  const curves = curvesOfLot(aLot({ controlPoints: [aPoint(chill, { readings })] }), '°C', ms('13:00'));
  expect(curves?.traces).toMatchObject([{ points: [{ value: 50 }, { value: 40 }] }]);
});

test('what was not of the core is no part of its line', () => {
  const made = { personId: 'x', name: 'Ida Marsh', at: at('12:50'), recordedAt: at('12:50'), station: '' };
  const clarifications = [{ clarificationId: 'c', word: 'not of the core' as const, reason: 'In the air', made }];
  const readings = [aReading('12:00', 122), aReading('12:30', 40, { clarifications }), aReading('12:40', 104)];
  const curves = curvesOfLot(aLot({ controlPoints: [aPoint(chill, { readings })] }), '°F', ms('13:00'));
  expect(curves?.traces).toMatchObject([{ points: [{ value: 122 }, { value: 104 }] }]);
});

test('the limits are ruled while the stage runs, and no longer than it ran', () => {
  const readings = [aReading('12:00', 128), aReading('13:00', 90)];
  const running = curvesOfLot(aLot({ controlPoints: [aPoint(chill, { readings })] }), '°F', ms('13:20'));
  const ended = curvesOfLot(aLot({ controlPoints: [aPoint(chill, { readings, endedAt: at('13:10') })] }), '°F', ms('18:00'));
  expect(running?.figures.map(({ label, to }) => [label, to])).toEqual([
    ['130 °F', ms('13:20')],
    ['80 °F', ms('13:20')],
    ['40 °F', ms('13:20')],
  ]);
  expect(ended?.figures[0]?.to).toBe(ms('13:10'));
});

test('two probes are two lines', () => {
  const readings = [aReading('12:00', 128, { probe: '2' }), aReading('12:00', 126, { probe: '1' })];
  const curves = curvesOfLot(
    aLot({ controlPoints: [aPoint({ name: 'Cook', takenAs: 'curve', limits: [dwell] }, { readings })] }),
    '°F',
    ms('13:00'),
  );
  expect(curves?.traces.map(({ number, points }) => [number, points[0]?.value])).toEqual([
    [0, 126],
    [1, 128],
  ]);
});

test('without a series of temperatures there is nothing to draw', () => {
  expect(
    curvesOfLot(aLot({ controlPoints: [aPoint({ name: 'Label', takenAs: 'attestation', limits: [labelRight] })] }), '°F', ms('13:00')),
  ).toBeUndefined();
});

const points = [
  { at: 100, value: 10 },
  { at: 200, value: 20 },
  { at: 300, value: 0 },
];
test.each([
  [
    'between two readings',
    { from: 100, to: 150 },
    [
      [100, 10],
      [150, 15],
    ],
  ],
  [
    'over a reading',
    { from: 150, to: 250 },
    [
      [150, 15],
      [200, 20],
      [250, 10],
    ],
  ],
  ['before the first reading', { from: 0, to: 100 }, []],
  ['after the last reading', { from: 300, to: 400 }, []],
  ['of one minute at the last reading', { from: 300, to: 300 }, []],
  [
    'of one minute',
    { from: 150, to: 150 },
    [
      [150, 15],
      [150, 15],
    ],
  ],
])('in a row %s the curve is drawn to the rules of the row', (_case, row, drawn) => {
  expect(traceIn(row, points).map(({ at: instant, value }) => [instant, value])).toEqual(drawn);
});
