import { describe, expect, test } from 'vitest';
import {
  addUpLethality,
  boundOf,
  burgers70For2,
  cooked70For2,
  cookedMeat65Log,
  degrees,
  equivalentMinutes,
  ecoliO157InBurgers,
  judgeCook,
  judgeCurve,
  listeria70For2,
  listeriaHeatedSlowly,
  lethalitySets,
  salmonellaByTheMeatTable,
  timeAtOrAbove,
  type CurveReading,
  type LethalitySet,
  type TemperatureUnit,
} from '@larderbook/haccp';
import { byQuadrature, type Point } from './by-quadrature';

const MINUTE = 60_000;
const curve = (points: readonly Point[], unit: TemperatureUnit = '°C', shift = 0): CurveReading[] =>
  points.map(([minutes, value]) => ({
    at: minutes * MINUTE,
    temperature: { hundredths: Math.round((value + shift) * 100), unit },
  }));
const noFloor = { floorCelsius: -Infinity, longestGap: Infinity };
const logs = (points: readonly Point[], set: LethalitySet, floorCelsius = -Infinity) =>
  addUpLethality(curve(points), set, { floorCelsius, longestGap: Infinity }).byStraightLines;

const A: Point[] = [
  [0, 60],
  [10, 60],
];
const B: Point[] = [
  [0, 20],
  [60, 60],
  [90, 65],
  [100, 65],
  [110, 66.5],
  [130, 62],
  [160, 50],
];
const C: Point[] = [
  [0, 12],
  [95, 52],
  [130, 61],
  [150, 66],
];
const C2: Point[] = [...C, [165, 63], [190, 54]];
const R: Point[] = [
  [0, 50],
  [40, 70],
];
const H: Point[] = [
  [0, 54.4],
  [112, 54.4],
];
const M: Point[] = [
  [0, 4],
  [150, 50],
  [200, 55],
  [220, 56.5],
  [235, 56],
  [260, 48],
];
const [S, UK, SLOW] = [salmonellaByTheMeatTable, listeria70For2, listeriaHeatedSlowly];

describe('invented curves, their log reductions worked out beforehand in 40-50 digit decimals', () => {
  test.each([
    ['A, level', A, 5.834306, 1.392477, 0.772201],
    ['B, a whole cook', B, 257.183141, 38.409506, 19.716219],
    ['C, a slow cook', C, 67.300813, 11.319649, 5.960154],
    ['C2, with its carry-over', C2, 140.649427, 22.897029, 11.964908],
    ['R, one straight rise', R, 177.145287, 19.501147, 9.534329],
    ['H, held at 54.4 °C', H, 6.427069, 2.794726, 1.722155],
    ['M, marginal', M, 6.329989, 2.637989, 1.62189],
  ])('%s', (_case, points, salmonella, listeria, slow) => {
    for (const [set, printed] of [
      [S, salmonella],
      [UK, listeria],
      [SLOW, slow],
    ] as const) {
      expect(logs(points, set)).toBeCloseTo(printed, 6);
      const exact = byQuadrature(points, set);
      expect(Math.abs(logs(points, set) / exact - 1)).toBeLessThan(1e-9);
    }
  });

  test('B piece by piece', () => {
    const pieces = [2.113195, 58.578902, 46.266831, 64.139039, 78.078107, 8.007067];
    expect(B.slice(1).map((_, i) => logs(B.slice(i, i + 2), S))).toEqual(pieces.map((log) => expect.closeTo(log, 6)));
  });

  test.each([
    ['B, Salmonella', B, S, 54.4, 256.684885],
    ['B, Listeria', B, UK, 54.4, 38.137032],
    ['C2, Salmonella', C2, S, 54.4, 140.129445],
    ['M, Salmonella, from 130 °F', M, S, (130 - 32) / 1.8, 4.659086],
    ['M, Listeria, from 130 °F', M, UK, (130 - 32) / 1.8, 1.734052],
    ['M, Listeria heated slowly, from 130 °F', M, SLOW, (130 - 32) / 1.8, 1.040109],
  ])('nothing counted below a floor: %s', (_case, points, set, floor, printed) => {
    expect(logs(points, set, floor)).toBeCloseTo(printed, 6);
  });

  test.each([
    [-0.5, 5.1461],
    [-0.28, 5.6369],
    [0.28, 7.1082],
    [0.5, 7.7863],
  ])('M read %s °C wrong', (shift, printed) => {
    expect(addUpLethality(curve(M, '°C', shift), S, noFloor).byStraightLines).toBeCloseTo(printed, 4);
  });

  // Trapezoid over the rates, rate at the mean temperature, rate of the colder end: none of them is what we do.
  test.each([
    ['B', B, 327.751, 229.851, 137.028],
    ['C', C, 95.661, 54.511, 18.399],
    ['R', R, 733.99, 23.337, 0.371],
    ['M', M, 8.176, 5.697, 3.706],
  ])('the usual wrong methods give something else: %s', (_case, points, trapezoid, atTheMean, colderEnd) => {
    const rate = (T: number) => 10 ** ((T - S.referenceCelsius) / S.zCelsius) / S.minutesPerLog;
    const wrong = (of: (a: number, b: number) => number) =>
      points.slice(1).reduce((sum, [t, T], i) => sum + (t - (points[i]?.[0] ?? 0)) * of(points[i]?.[1] ?? 0, T), 0);
    const sums = [wrong((a, b) => (rate(a) + rate(b)) / 2), wrong((a, b) => rate((a + b) / 2)), wrong((a, b) => rate(Math.min(a, b)))];
    expect(sums).toEqual([trapezoid, atTheMean, colderEnd].map((log) => expect.closeTo(log, 3)));
    for (const sum of sums) expect(Math.abs(sum / logs(points, S) - 1)).toBeGreaterThan(0.05);
  });

  test('M meets no printed row and stays with a process authority, whatever its integral', () => {
    const inAll = [130, 131, 132, 133].map((row) => timeAtOrAbove(curve(M), boundOf({ '°F': row * 100 })) / MINUTE);
    expect(inAll).toEqual([45.416667, 38.125, 28.981481, 16.851852].map((minutes) => expect.closeTo(minutes, 6)));
    const cook = judgeCook(curve(M), cookedMeat65Log, { ended: true });
    expect(cook).toMatchObject({
      verdict: { kind: 'missed' },
      by: 'nothing yet',
      support: { rowsInAll: [] },
    });
  });
});

describe('FSIS-GD-2021-14, December 2021, Table 2, p. 35, 6.5-log column: a law rounded up', () => {
  const rows = cookedMeat65Log.rows.filter(({ seconds }) => seconds > 0);
  const secondsByLaw = (fahrenheit: number) => 6.5 * 60 * equivalentMinutes(S, (fahrenheit - 32) / 1.8, S.minutesPerLog);

  test('28 rows have a time', () => {
    expect(rows).toHaveLength(28);
  });

  test.each(rows.map(({ at, seconds }) => [(at['°F'] ?? NaN) / 100, seconds] as const))('%s °F for %s s', (fahrenheit, seconds) => {
    const step = fahrenheit <= 145 ? 60 : 1;
    expect(Math.ceil(secondsByLaw(fahrenheit) / step) * step).toBe(seconds);
  });

  // Model seconds against the printed row, and by how much the law is less strict.
  test.each([
    [130, 6672.31, -0.71],
    [131, 5300.98, -0.73],
    [132, 4211.49, -1.14],
    [133, 3345.92, -0.42],
    [134, 2658.25, -1.55],
    [135, 2111.91, -2.23],
    [136, 1677.86, -0.13],
    [137, 1333.02, -3.4],
    [138, 1059.05, -1.94],
    [139, 841.39, -6.51],
    [140, 668.46, -7.16],
    [141, 531.07, -1.65],
    [142, 421.93, -12.1],
    [143, 335.21, -6.89],
    [144, 266.31, -11.23],
    [145, 211.58, -11.84],
    [146, 168.1, -0.54],
    [147, 133.55, -0.34],
    [148, 106.1, -0.84],
    [149, 84.29, -0.83],
    [150, 66.97, -0.05],
    [151, 53.21, -1.47],
    [152, 42.27, -1.7],
    [153, 33.58, -1.23],
    [154, 26.68, -1.18],
    [155, 21.2, -3.65],
    [156, 16.84, -0.94],
    [157, 13.38, -4.43],
  ])('%s °F: %s s by the law, %s %% off', (fahrenheit, seconds, percent) => {
    const printed = rows.find(({ at }) => at['°F'] === fahrenheit * 100)?.seconds ?? NaN;
    expect(secondsByLaw(fahrenheit)).toBeCloseTo(seconds, 2);
    expect(Math.abs((secondsByLaw(fahrenheit) / printed - 1) * 100 - percent)).toBeLessThan(0.006);
  });

  // At 158 °F the table asks for no time; the law would: the row decides.
  test.each([
    [158, 10.6],
    [160, 6.7],
  ])('%s °F is a rule of its own: the law gives %s s', (fahrenheit, seconds) => {
    expect(secondsByLaw(fahrenheit)).toBeCloseTo(seconds, 1);
    const read = [{ at: 0, temperature: degrees(fahrenheit, '°F') }];
    expect(judgeCook(read, cookedMeat65Log, { ended: true })).toMatchObject({ by: 'no holding time needed' });
  });

  // One printed row held at constant temperature, in four sets: why no figure goes without the name of its set.
  test.each([
    [130, 112 * 60, 6.546, 2.833, 1.744, 7.709],
    [140, 12 * 60, 7.001, 1.671, 0.927, 5.136],
    [145, 4 * 60, 7.373, 1.307, 0.688, 4.269],
    [150, 67, 6.503, 0.856, 0.428, 2.972],
    [155, 22, 6.746, 0.659, 0.313, 2.433],
    [157, 14, 6.802, 0.59, 0.274, 2.232],
  ])('%s °F for %s s', (fahrenheit, seconds, ...printed) => {
    const held = curve(
      [
        [0, fahrenheit],
        [seconds / 60, fahrenheit],
      ],
      '°F',
    );
    const mean = lethalitySets.find(({ name }) => name === 'Listeria monocytogenes, mean of many studies') ?? S;
    const all = [S, UK, SLOW, mean].map((set) => addUpLethality(held, set, noFloor).byStraightLines);
    expect(all).toEqual(printed.map((log) => expect.closeTo(log, 3)));
  });
});

describe('70 °C for 2 min and its equivalents: z 7.5 °C (FSAI 2018), z 6.0 °C (ACMSF, burgers, March 2007)', () => {
  test.each([
    ['z 7.5, 60 °C', UK, 60, 43.089 * 60, 45 * 60, cooked70For2],
    ['z 7.5, 65 °C', UK, 65, 9.283 * 60, 10 * 60, cooked70For2],
    ['z 7.5, 70 °C', UK, 70, 120, 120, cooked70For2],
    ['z 7.5, 75 °C', UK, 75, 25.85, 30, cooked70For2],
    ['z 7.5, 80 °C', UK, 80, 5.57, 6, cooked70For2],
    ['z 6.0, 60 °C', ecoliO157InBurgers, 60, 92.832 * 60, 93 * 60, burgers70For2],
    ['z 6.0, 65 °C', ecoliO157InBurgers, 65, 13.626 * 60, 14 * 60, burgers70For2],
    ['z 6.0, 70 °C', ecoliO157InBurgers, 70, 120, 120, burgers70For2],
    ['z 6.0, 75 °C', ecoliO157InBurgers, 75, 17.61, 18, burgers70For2],
  ] as const)('%s', (_case, set, celsius, byLaw, printed, limit) => {
    expect(Math.abs(equivalentMinutes(set, celsius, 2) * 60 - byLaw)).toBeLessThan(0.03);
    expect(limit.rows.find(({ at }) => at['°C'] === celsius * 100)?.seconds).toBe(printed);
    const held = (seconds: number) =>
      judgeCurve(
        Array.from({ length: 13 }, (_, i) => ({ at: (seconds * 1000 * i) / 12, temperature: degrees(celsius, '°C') })),
        limit,
        { ended: true },
      ).kind;
    expect([held(printed), held(printed - 0.12)]).toEqual(['met', 'missed']);
  });

  test('80 °C at z 6.0 °C is 2.59 s by the law and is printed nowhere', () => {
    expect(equivalentMinutes(ecoliO157InBurgers, 80, 2) * 60).toBeCloseTo(2.59, 2);
    expect(burgers70For2.rows.some(({ at }) => at['°C'] === 8000)).toBe(false);
  });
});

/** Relative error over one straight piece, a = ln 10 × step ÷ z: (a/2)/tanh(a/2) − 1 and (a/2)/sinh(a/2) − 1. */
describe('what the plainer methods cost', () => {
  test.each([
    [0.5, 5.56, 0.36, -0.18],
    [0.5, 7.5, 0.2, -0.1],
    [0.5, 10, 0.11, -0.06],
    [1, 5.56, 1.43, -0.71],
    [1, 7.5, 0.78, -0.39],
    [1, 10, 0.44, -0.22],
    [2, 5.56, 5.65, -2.8],
    [2, 7.5, 3.12, -1.55],
    [2, 10, 1.76, -0.88],
    [3, 5.56, 12.5, -6.2],
    [3, 7.5, 7, -3.5],
    [3, 10, 4, -2],
    [5, 5.56, 33.4, -15.9],
    [5, 7.5, 18.9, -9.2],
    [5, 10, 10.8, -5.3],
    [10, 5.56, 113.8, -46.9],
    [10, 7.5, 68.5, -30.6],
    [10, 10, 40.7, -19.1],
  ])('a step of %s °C at z %s °C', (step, z, trapezoid, atTheMean) => {
    const set = { ...S, zCelsius: z };
    const exact = logs(
      [
        [0, 60],
        [1, 60 + step],
      ],
      set,
    );
    const rate = (T: number) => 10 ** ((T - set.referenceCelsius) / z) / set.minutesPerLog;
    // Worked out beforehand to two figures or a tenth; three of them were rounded a hair the other way.
    expect(Math.abs(100 * ((rate(60) + rate(60 + step)) / 2 / exact - 1) - trapezoid)).toBeLessThan(0.055);
    expect(Math.abs(100 * (rate(60 + step / 2) / exact - 1) - atTheMean)).toBeLessThan(0.055);
  });
});

/** Heating in a 74 °C chamber (time constant 55 min) from 12 °C, pulled at 112.6 min, up 1.5 °C, then slowly down. */
test('thinned readings of a heating curve err low, on the safe side', () => {
  const heating = (minute: number) => 74 - 62 * Math.exp(-minute / 55);
  const every = (step: number): Point[] => Array.from({ length: Math.floor(112.5 / step) + 1 }, (_, i) => [i * step, heating(i * step)]);
  const fine = logs(every(0.5), S);
  for (const step of [2.5, 7.5, 37.5]) expect(logs(every(step), S)).toBeLessThan(fine);
});
