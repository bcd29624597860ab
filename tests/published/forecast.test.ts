import { describe, expect, test } from 'vitest';
import {
  addToCourse,
  beginCourse,
  fitLaw,
  forecast,
  forecastOf,
  hoursToGap,
  mediumFromThree,
  type CurveReading,
  type ForecastTask,
} from '@larderbook/haccp';

const HOUR = 3_600_000;
type Point = readonly [hours: number, celsius: number];

const fitOf = (points: readonly Point[], medium: number) => {
  const law = fitLaw(points.map(([hours, celsius]) => ({ hours, gap: celsius - medium })));
  if (!law) throw new Error('no law');
  return law;
};
const arrival = (points: readonly Point[], medium: number, target: number) => hoursToGap(fitOf(points, medium), target - medium);

describe('Newton’s law of cooling: medium 2 °C, time constant 3.2 h, from 54.4 °C', () => {
  const newton = (hours: number): Point => [hours, 2 + 52.4 * Math.exp(-hours / 3.2)];

  test('its own temperatures', () => {
    expect([newton(1)[1], newton(2)[1]]).toEqual([expect.closeTo(40.336659, 6), expect.closeTo(30.047699, 6)]);
  });

  test('the fit finds the constant and both arrivals', () => {
    const readings = [newton(0), newton(1), newton(2)];
    expect(1 / fitOf(readings, 2).tauHours).toBeCloseTo(0.3125, 9);
    expect(arrival(readings, 2, 26.7)).toBeCloseTo(2.406731, 6);
    expect(arrival(readings, 2, 4.4)).toBeCloseTo(9.867001, 6);
  });

  test('three equally spaced readings give the medium, rounded ones nearly', () => {
    expect(mediumFromThree(54.4, newton(1)[1], newton(2)[1])).toBeCloseTo(2, 6);
    expect(mediumFromThree(54.4, 40.3, 30)).toBeCloseTo(2.0816, 4);
  });
});

/**
 * An infinite cylinder of 5 cm radius (α 1.3e-7 m²/s, k 0.45 W/mK, h 20 W/m²K, illustrative) from 68 °C in a medium of
 * 1 °C: the whole series, not only the term the law is (Carslaw and Jaeger, Conduction of Heat in Solids, 1959).
 */
describe('a cylinder, whose centre lags behind the law at first', () => {
  const bessel = (order: 0 | 1, x: number): number => {
    let term = order === 0 ? 1 : x / 2;
    let sum = term;
    for (let m = 1; m < 80; m += 1) {
      term *= -((x / 2) ** 2) / (m * (m + order));
      sum += term;
    }
    return sum;
  };
  const BIOT = (20 * 0.05) / 0.45;
  const characteristic = (x: number) => x * bessel(1, x) - BIOT * bessel(0, x);
  const betas: number[] = [];
  for (let x = 0.01; betas.length < 6; x += 0.01) {
    let [low, high] = [x, x + 0.01];
    if (characteristic(low) * characteristic(high) > 0) continue;
    for (let step = 0; step < 60; step += 1) {
      const middle = (low + high) / 2;
      if (characteristic(low) * characteristic(middle) <= 0) high = middle;
      else low = middle;
    }
    betas.push(low);
  }
  const share = (beta: number) => (2 * bessel(1, beta)) / (beta * (bessel(0, beta) ** 2 + bessel(1, beta) ** 2));
  const perHour = (1.3e-7 * 3600) / 0.05 ** 2;
  const centre = (hours: number): number =>
    1 + 67 * betas.reduce((sum, beta) => sum + share(beta) * Math.exp(-(beta ** 2) * perHour * hours), 0);
  const crossing = (celsius: number): number => {
    let [low, high] = [0.05, 20];
    for (let step = 0; step < 80; step += 1) {
      const middle = (low + high) / 2;
      if (centre(middle) > celsius) low = middle;
      else high = middle;
    }
    return low;
  };
  const start = crossing(54.4);
  const five = (window: number): Point[] => [0, 1, 2, 3, 4].map((i) => [start + (window * i) / 4, centre(start + (window * i) / 4)]);

  test('its numbers', () => {
    const [beta = NaN] = betas;
    expect([BIOT, beta, share(beta), 1 / (beta ** 2 * perHour)]).toEqual([
      expect.closeTo(2.2222, 4),
      expect.closeTo(1.650383, 6),
      expect.closeTo(1.35982, 5),
      expect.closeTo(1.96121, 5),
    ]);
    expect([0.5, 1, 1.5, 2, 3, 4, 5, 6].map((hours) => centre(hours))).toEqual(
      [65.622, 54.664, 43.221, 33.829, 20.734, 12.852, 8.118, 5.275].map((value) => expect.closeTo(value, 3)),
    );
    expect([54.4, 26.7, 7.2, 4.4].map(crossing)).toEqual([1.0109, 2.4816, 5.2707, 6.449].map((value) => expect.closeTo(value, 4)));
  });

  test.each([
    [0.25, 1.556, 4.581],
    [0.5, 1.523, 4.479],
    [1, 1.491, 4.376],
    [1.5, 1.476, 4.329],
  ])('five readings over %s h: the first stage (1.471 h) and on to 7.2 °C (4.260 h)', (window, first, second) => {
    // A quarter of an hour is too short for a forecast; its figure is the same fit taken on shorter hours.
    const stretch = 4;
    const points = five(window).map(([hours, celsius]): Point => [(hours - start) * stretch, celsius]);
    expect(arrival(points, 1, 26.7) / stretch).toBeCloseTo(first, 3);
    expect(arrival(points, 1, 7.2) / stretch).toBeCloseTo(second, 3);
  });

  test.each([
    [-1, 1.485, 4.208],
    [1, 1.497, 4.582],
    [2, 1.503, 4.844],
    [3, 1.51, 5.197],
  ])('the second stage is hostage to the medium: %s °C wrong, one hour of readings', (wrong, first, second) => {
    const points = five(1).map(([hours, celsius]): Point => [hours - start, celsius]);
    expect(arrival(points, 1 + wrong, 26.7)).toBeCloseTo(first, 3);
    expect(arrival(points, 1 + wrong, 7.2)).toBeCloseTo(second, 3);
  });

  // 5 and 95 % of the first stage's length with 0.3 °C of noise (standard deviation) on every reading, Ta known.
  test.each([
    [3, 0.5, 1.448, 1.613],
    [5, 1, 1.454, 1.527],
  ])('%s noisy readings over %s h', (taken, window, low, high) => {
    let seed = 1;
    const uniform = () => (seed = (seed * 48_271) % 2_147_483_647) / 2_147_483_647;
    const noise = () => 0.3 * Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
    const stages = Array.from({ length: 20_000 }, () => {
      const points = Array.from({ length: taken }, (_, i): Point => {
        const hours = (window * i) / (taken - 1);
        return [hours, centre(start + hours) + noise()];
      });
      return arrival(points, 1, 26.7);
    }).sort((a, b) => a - b);
    expect([stages[1000], stages[19_000]]).toEqual([expect.closeTo(low, 2), expect.closeTo(high, 2)]);
  });

  test('fitted to the first half hour, before the lag is over, it would say 14.6 h for what takes 2.5', () => {
    const early = [0.1, 0.2, 0.3, 0.4, 0.5].map((hours): Point => [hours, centre(hours)]);
    expect(arrival(early, 1, 26.7)).toBeGreaterThan(10);
  });

  const task: ForecastTask = {
    way: 'cooling',
    target: { '°F': 8000, '°C': 2670 },
    medium: { temperature: { hundredths: 100, unit: '°C' }, is: 'measured' },
  };
  const read = (hours: number): CurveReading => ({
    at: hours * HOUR,
    temperature: { hundredths: Math.round(centre(hours) * 100), unit: '°C' },
  });

  test('so those readings are not used', () => {
    expect(forecast([0, 0.1, 0.2, 0.3, 0.4, 0.5].map(read), task).state).toBe('too early to tell');
  });

  test('half an hour past the lag the first stage is right to 5 %, and its range holds the truth', () => {
    const course = beginCourse(task);
    for (let minute = 0; minute <= 105; minute += 1) addToCourse(course, read(minute / 60));
    const said = forecastOf(course, start * HOUR + 1.5 * HOUR);
    if (!('arrival' in said)) throw new Error(JSON.stringify(said.because));
    const { best = NaN, earliest = NaN, latest = NaN } = said.arrival;
    const stage = (at: number) => at / HOUR - start;
    expect(Math.abs(stage(best) / 1.471 - 1)).toBeLessThan(0.05);
    expect([stage(earliest) <= 1.471, stage(latest) >= 1.471]).toEqual([true, true]);
    expect(said.restartedAt).toBeUndefined();
  });
});
