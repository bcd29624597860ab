import { describe, expect, test } from 'vitest';
import {
  addUpLethality,
  degrees,
  equivalentMinutes,
  judgeCurve,
  limitSetById,
  listeria70For2,
  type CurveReading,
  type DwellLimit,
  type LethalitySet,
} from '@larderbook/haccp';
import type { Point } from './by-quadrature';

/** Minutes at 70 °C, ∫ 10^((T − 70)/z) dt: a set that kills one log in one minute there counts them. */
const at70 = (zCelsius: number): LethalitySet => ({
  ...listeria70For2,
  minutesPerLog: 1,
  referenceCelsius: 70,
  zCelsius,
});
const curve = (points: readonly Point[]): CurveReading[] =>
  points.map(([minutes, value]) => ({ at: minutes * 60_000, temperature: degrees(value, '°C') }));
const everything = { floorCelsius: -Infinity, longestGap: Infinity };
const minutes = (points: readonly Point[], set: LethalitySet) => addUpLethality(curve(points), set, everything).byStraightLines;
const held = (celsius: number, during: number): Point[] => [
  [0, celsius],
  [during, celsius],
];
const Z = [6, 7.5, 10] as const;

/**
 * Worked out beforehand from 70 °C for 2 min: Food Standards Agency (60 °C 45 min, 65 °C 10 min, 75 °C 30 s, 80 °C
 * 6 s, as trainers restate it), z of 7.5 °C by the Food Safety Authority of Ireland (2018), of 6 °C by ACMSF (burgers,
 * 2007).
 */
describe('time at a temperature equal to 2 min at 70 °C, for z of 6, 7.5 and 10 °C', () => {
  test.each([
    [60, 92.83, 43.09, 20],
    [62, 43.09, 23.32, 12.62],
    [65, 13.63, 9.283, 6.325],
    [66, 9.283, 6.829, 5.024],
    [68, 4.309, 3.696, 3.17],
    [70, 2, 2, 2],
    [71, 81.8 / 60, 88.3 / 60, 95.3 / 60],
    [72, 55.7 / 60, 64.9 / 60, 75.7 / 60],
    [75, 17.6 / 60, 25.9 / 60, 37.9 / 60],
    [80, 2.6 / 60, 5.6 / 60, 12 / 60],
  ])('%s °C', (celsius, ...printed) => {
    Z.forEach((z, index) => {
      const needed = equivalentMinutes(at70(z), celsius, 2);
      expect(Math.abs(needed - (printed[index] ?? NaN))).toBeLessThan(needed > 1.6 ? 0.006 : 0.001);
      expect(minutes(held(celsius, Math.ceil(needed * 60_000) / 60_000), at70(z))).toBeCloseTo(2, 2);
    });
  });

  const stepped: Point[] = [
    [0, 60],
    [20, 60],
    [20 + 1 / 60_000, 65],
    [25, 65],
  ];
  test.each<[string, Point[], number, number, number | undefined]>([
    ['60 °C for 45 min', held(60, 45), 0.9695, 2.0887, 4.5],
    ['65 °C for 10 min', held(65, 10), 1.4678, 2.1544, 3.1623],
    ['75 °C for 30 s', held(75, 0.5), 3.4065, 2.3208, 1.5811],
    ['80 °C for 6 s', held(80, 0.1), 4.6416, 2.1544, 1],
    ['New Zealand, 65 °C for 15 min', held(65, 15), 2.2017, 3.2317, undefined],
    ['New Zealand, 70 °C for 3 min', held(70, 3), 3, 3, 3],
    ['New Zealand, 75 °C for 30 s', held(75, 0.5), 3.4065, 2.3208, undefined],
    ['60 °C for 20 min, then 65 °C for 5 min', stepped, 1.1648, 2.0055, 3.5811],
  ])('%s', (_case, points, ...printed) => {
    printed.forEach((figure, index) => {
      if (figure !== undefined) expect(minutes(points, at70(Z[index] ?? NaN))).toBeCloseTo(figure, 4);
    });
  });

  // z = (70 − T) ÷ lg(minutes ÷ 2): only between the first and the last do all four pairs reach 2 min.
  test.each([
    [60, 45, 7.395],
    [65, 10, 7.153],
    [75, 0.5, 8.305],
    [80, 0.1, 7.686],
  ])('the pair %s °C, %s min is exactly 2 min at 70 °C for one z', (celsius, during, z) => {
    expect(minutes(held(celsius, during), at70((70 - celsius) / Math.log10(during / 2)))).toBeCloseTo(2, 9);
    expect((70 - celsius) / Math.log10(during / 2)).toBeCloseTo(z, 3);
  });

  test('all four pairs give 2 min for z from 7.395 to 7.686 °C and for no other', () => {
    const pairs = [held(60, 45), held(65, 10), held(75, 0.5), held(80, 0.1)];
    const all = (z: number) => pairs.every((pair) => minutes(pair, at70(z)) >= 2);
    expect([7.394, 7.396, 7.5, 7.685, 7.687].map(all)).toEqual([false, true, true, true, false]);
  });
});

/** Invented curves; the closed form of each straight piece, and what a trapezoid over one-minute samples would say. */
describe('minutes at 70 °C while the temperature changes', () => {
  const rise: Point[] = [
    [0, 60],
    [10, 70],
  ];
  const both: Point[] = [
    [0, 55],
    [15, 70],
    [17, 70],
    [32, 55],
  ];
  const samples: Point[] = [
    [0, 58],
    [5, 62],
    [10, 65],
    [15, 67],
    [20, 68],
    [25, 69],
    [30, 69],
  ];
  const rate = (z: number, celsius: number) => 10 ** ((celsius - 70) / z);
  const trapezoid = (points: readonly Point[], z: number) =>
    points.slice(1).reduce((sum, [minute, celsius], index) => {
      const [before, was] = points[index] as Point;
      return sum + ((minute - before) * (rate(z, was) + rate(z, celsius))) / 2;
    }, 0);
  const everyMinute = (points: readonly Point[]): Point[] =>
    points.flatMap(([minute, celsius], index): Point[] => {
      const [before, was] = points[index - 1] ?? [minute - 1, celsius];
      const steps = minute - before;
      return Array.from({ length: steps }, (_, i) => [before + i + 1, was + ((celsius - was) * (i + 1)) / steps]);
    });

  test.each([
    ['60 to 70 °C in 10 min', rise, 6, 2.5496, 2.5808],
    ['60 to 70 °C in 10 min', rise, 7.5, 3.106, 3.1304],
    ['60 to 70 °C in 10 min', rise, 10, 3.9087, 3.9259],
    ['up in 15 min, 2 min at 70 °C, down in 15 min', both, 6, 7.1951, 7.2587],
    ['up in 15 min, 2 min at 70 °C, down in 15 min', both, 7.5, 8.4493, 8.4999],
    ['up in 15 min, 2 min at 70 °C, down in 15 min', both, 10, 10.4112, 10.4483],
  ])('%s, z %s', (_case, points, z, exact, byTrapezoid) => {
    expect(minutes(points, at70(z))).toBeCloseTo(exact, 4);
    expect(trapezoid(everyMinute(points), z)).toBeCloseTo(byTrapezoid, 4);
  });

  test.each([
    [6, 10.0026],
    [7.5, 11.7826],
    [10, 14.1495],
  ])('readings every 5 min, z %s: a trapezoid says %s, which is always more than is there', (z, byTrapezoid) => {
    expect(trapezoid(samples, z)).toBeCloseTo(byTrapezoid, 4);
    expect(minutes(samples, at70(z))).toBeLessThan(byTrapezoid);
  });
});

/**
 * Non-proteolytic Clostridium botulinum: Food Standards Agency, vacuum-packing training, module 3, quoting the Chilled
 * Food Association 2006. The law beside it, 10 min at 90 °C with z of 9 °C below and 10 °C above, decides nothing.
 */
describe('the botulinum table and its law', () => {
  const limit = limitSetById('united-kingdom-2026')?.rows.find(({ id }) => id === 'vacuum-heat')?.limit as DwellLimit;
  const zAt = (celsius: number) => (celsius <= 90 ? 9 : 10);
  const at90 = (celsius: number): LethalitySet => ({ ...at70(zAt(celsius)), referenceCelsius: 90 });
  const rows = [
    [80, 129, 129.15],
    [81, 100, 100],
    [82, 77, 77.43],
    [83, 60, 59.95],
    [84, 46, 46.42],
    [85, 36, 35.94],
    [86, 28, 27.83],
    [87, 22, 21.54],
    [88, 17, 16.68],
    [89, 13, 12.92],
    [90, 10, 10],
    [91, 7.9, 7.94],
    [92, 6.3, 6.31],
    [93, 5, 5.01],
    [94, 4, 3.98],
    [95, 3.2, 3.16],
    [96, 2.5, 2.51],
    [97, 2, 2],
    [98, 1.6, 1.58],
    [99, 1.3, 1.26],
    [100, 1, 1],
  ] as const;

  test.each(rows)('%s °C: %s min printed, %s min by the law', (celsius, printed, byLaw) => {
    expect(equivalentMinutes(at90(celsius), celsius, 10)).toBeCloseTo(byLaw, 2);
    const scored = minutes(held(celsius, printed), at90(celsius));
    expect(scored).toBeGreaterThan(9.9);
    expect(scored).toBeLessThan(10.34);
    const seconds = limit.rows.find(({ at }) => at['°C'] === celsius * 100)?.seconds ?? NaN;
    expect(seconds).toBe(Math.round(printed * 60));
    const judged = (during: number) => {
      const every = Array.from({ length: 13 }, (_, i): Point => [(during * i) / 12, celsius]);
      return judgeCurve(curve(every), limit, { ended: true }).kind;
    };
    expect([judged(seconds / 60), judged(seconds / 60 - 0.01)]).toEqual(['met', 'missed']);
  });

  test('one z of 10 °C would be too kind below 90 °C: 129 min at 80 °C would count 12.9 min', () => {
    expect(minutes(held(80, 129), { ...at70(10), referenceCelsius: 90 })).toBeCloseTo(12.9, 4);
  });
});
