import { describe, expect, test } from 'vitest';
import { poultryFoodCode } from '../limit-sets/food-code';
import { cookedMeat65Log } from '../limit-sets/fsis-meat';
import { coolingUncured } from '../limit-sets/fsis-stabilization';
import type { Surroundings } from '../thermal/around-core';
import type { Piece } from '../thermal/piece';
import type { CurveContext } from './curve-context';
import { addReading, beginCurve, judgeSoFar } from './judge-curve-so-far';
import type { CurveLimit } from './limit';
import { seriesOf } from './series-of';
import { type Point, read, judge, thin, log, ham, steps, chill } from './judge-core.test-data';

describe('what was misread of the surroundings makes no impossible core possible', () => {
  const air = (setPoint: number | undefined, ...values: number[]): Surroundings => ({
    setPoint: setPoint === undefined ? undefined : { hundredths: setPoint * 100, unit: '°F' },
    readings: seriesOf(read(values.map((value, i): Point => [i * 20, value]))).temperatures,
  });

  test.each<[string, Surroundings]>([
    ['500 °F in a chiller of 36 °F', air(36, 500, 36)],
    ['−40 °F in a chiller of 36 °F', air(36, -40, 36, 35)],
    ['−40 °F in a chiller of 36 °F, and nothing else', air(36, -40)],
    ['−40 °F where nobody has said how cold it is', air(undefined, 36, -40, 35)],
    ['−40 °F and nothing else', air(undefined, -40)],
  ])('%s', (_case, surroundings) => {
    expect(judge(chill(15), coolingUncured, { piece: log, surroundings })?.kind).toBe('undetermined');
  });

  test('a blast chiller read again and again is as cold as it was read', () => {
    expect(judge(chill(15), coolingUncured, { piece: thin, surroundings: air(undefined, -4, -6, -5) })?.kind).toBe('met');
    const fast: Point[] = [
      [0, 141],
      [4, 36],
      [60, 36],
    ];
    expect(judge(fast, coolingUncured, { piece: thin, surroundings: air(34, -4) })?.kind).toBe('undetermined');
    expect(judge(fast, coolingUncured, { piece: thin, surroundings: air(34, 14, 15) })?.kind).toBe('met');
  });

  test('240 °F in a smokehouse of 165 °F heats no core beyond it', () => {
    const hot: Point[] = [
      [0, 100],
      [60, 140],
      [120, 178],
      [125, 178],
    ];
    expect(judge(hot, poultryFoodCode, { piece: thin, surroundings: air(165, 240, 166) })?.kind).toBe('undetermined');
    expect(judge(hot, poultryFoodCode, { piece: thin, surroundings: air(165, 180, 182) })?.kind).toBe('met');
  });
});

test('the air of the chiller, of which only the first reading was set aside, ends no chill', () => {
  const core: Point[] = steps(31).map((i) => [i, 141 - 0.02 * i]);
  const air = steps(30).map((i): Point => [31 + 3 * i, 37, i === 0 ? 'not of the core' : undefined]);
  expect(judge([...core, ...air], coolingUncured, { piece: thin })?.kind).toBe('undetermined');
  // From the first reading on nobody knows of another place.
  expect(
    judge(
      [
        [0, 160, 'not of the core'],
        [1, 160],
        [2, 160],
      ],
      cookedMeat65Log,
      { piece: thin },
    )?.kind,
  ).toBe('undetermined');
});

test('a reading set aside near the core, or longer ago, or of no time, doubts nothing after it', () => {
  const slowly = (aside: Point): Point[] =>
    [...steps(120).map((minute): Point => [minute, 100 + 0.6 * minute]), aside].sort((a, b) => a[0] - b[0]);
  expect(judge(slowly([60.5, 138, 'not of the core']), cookedMeat65Log, { piece: ham })?.kind).toBe('met');
  const sparse: Point[] = [
    [0, 121],
    [1, 168, 'not of the core'],
    [31, 160],
    [41, 160],
  ];
  expect(judge(sparse, cookedMeat65Log, { piece: thin })?.kind).toBe('met');
  expect(judge([...slowly([NaN, 168, 'not of the core'])], cookedMeat65Log, { piece: ham })?.kind).toBe('met');
});

describe('what is stirred or pumped has no core', () => {
  const kettle: Piece = { shape: 'stirred' };
  const steamed: Point[] = [
    [0, 60],
    [2, 100],
    [3, 166],
    [4, 168],
    [5, 168],
  ];

  test('it moves as fast as what heats or chills it', () => {
    expect(judge(steamed, poultryFoodCode, { piece: kettle })?.kind).toBe('met');
    expect(judge(steamed, poultryFoodCode, { piece: ham })?.kind).toBe('undetermined');
    expect(judge(chill(3), coolingUncured, { piece: kettle })?.kind).toBe('met');
    const growing = beginCurve([poultryFoodCode], { piece: kettle });
    for (const reading of seriesOf(read(steamed)).temperatures) addReading(growing, reading);
    expect(judgeSoFar(growing, { ended: true })[0]?.kind).toBe('met');
  });

  test.each<[string, Point[], CurveLimit, Partial<CurveContext>, string]>([
    [
      'a spike',
      [
        [0, 60],
        [2, 61],
        [4, 168],
        [6, 62],
        [8, 62],
      ],
      poultryFoodCode,
      {},
      'undetermined',
    ],
    [
      'hotter than a moist core gets',
      [
        [0, 60],
        [5, 231],
      ],
      poultryFoodCode,
      {},
      'undetermined',
    ],
    ['of the future', steamed, poultryFoodCode, { now: 0 }, 'undetermined'],
    [
      'that goes on from what was not of the core',
      [
        [0, 60],
        [3, 168, 'not of the core'],
        [4, 168],
        [6, 168],
      ],
      poultryFoodCode,
      {},
      'undetermined',
    ],
    [
      'too cold',
      [
        [0, 60],
        [2, 164],
      ],
      poultryFoodCode,
      {},
      'missed',
    ],
    [
      'colder than what it lies in',
      [
        [0, 140],
        [60, 70],
        [120, 32],
      ],
      coolingUncured,
      { surroundings: { setPoint: { hundredths: 3800, unit: '°F' }, readings: [] } },
      'undetermined',
    ],
    [
      'too slow',
      [
        [0, 140],
        [120, 90],
        [500, 39],
      ],
      coolingUncured,
      {},
      'missed',
    ],
  ])('a reading %s is found all the same', (_case, points, limit, context, kind) => {
    expect(judge(points, limit, { piece: kettle, ...context })?.kind).toBe(kind);
  });
});

test('a chill that is missed is missed, however doubtful a reading', () => {
  const late: Point[] = [
    [0, 141],
    [30, 140],
    [31, 100],
    [40, 139],
    [400, 90],
    [900, 40],
  ];
  expect(judge(late, coolingUncured, { piece: log })?.kind).toBe('missed');
});

test('a thermometer that is wrong by more has moved less', () => {
  const jump: Point[] = [
    [0, 144],
    [1, 147],
    [6, 147],
    [30, 147],
  ];
  const by = (hundredths: number) => judge(jump, cookedMeat65Log, { piece: ham, instrumentError: { hundredths, unit: '°F' } })?.kind;
  expect([by(0), by(150)]).toEqual(['met', 'met']);
  const leap: Point[] = [
    [0, 140],
    [1, 149],
    [6, 149],
    [30, 149],
  ];
  const leapBy = (hundredths: number) => judge(leap, cookedMeat65Log, { piece: ham, instrumentError: { hundredths, unit: '°F' } })?.kind;
  expect([leapBy(0), leapBy(400)]).toEqual(['undetermined', 'met']);
});

test.each([0, -22, NaN, Infinity])('a piece of %d mm is no piece: nothing is judged by it', (value) => {
  const piece: Piece = { shape: 'slab', smallest: { value, unit: 'mm' } };
  expect(judge([[0, 160]], cookedMeat65Log, { piece })).toMatchObject({ kind: 'undetermined', finding: 'piece-unusable' });
  const growing = beginCurve([cookedMeat65Log], { piece });
  for (const reading of seriesOf(
    read([
      [0, 160],
      [1, 170],
    ]),
  ).temperatures)
    addReading(growing, reading);
  expect(judgeSoFar(growing, { ended: true })[0]?.kind).toBe('undetermined');
});
