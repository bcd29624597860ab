import { plainPart } from '../limits/plain-part.test-data';
import { expect, test } from 'vitest';
import type { CurveReading } from '../thermal/curve';
import { addToCourse, beginCourse, changeMedium, type ForecastTask, type Medium } from './course';
import { mediumFromThree } from './find-medium';
import { fitLaw } from './fit-law';
import { forecastOf } from './forecast-of';
import { forecast } from './forecast-probes';

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const air = (celsius: number, is: Medium['is'] = 'measured'): Medium => ({
  temperature: { hundredths: celsius * 100, unit: '°C' },
  is,
});
const chill = (medium: Medium, celsius = 26.7): ForecastTask => ({
  way: 'cooling',
  target: { '°C': Math.round(celsius * 100) },
  medium,
});
const at = (minutes: number, celsius: number, probe?: string): CurveReading => ({
  at: minutes * MINUTE,
  temperature: { hundredths: Math.round(celsius * 100), unit: '°C' },
  probe,
});
const newton = (from: number, medium: number, tau: number) => (minutes: number) =>
  at(minutes, medium + (from - medium) * Math.exp(-minutes / 60 / tau));
const every = (step: number, until: number) => Array.from({ length: Math.floor(until / step) + 1 }, (_, i) => i * step);

const falling = every(10, 60).map(newton(54.4, 2, 3.2));

test.each([
  ['in time for the latest of the range', 4, 'on course'],
  ['the range lies on both sides', 2.4, 'at risk'],
  ['too late for the earliest', 1.5, 'will miss'],
  ['the deadline is over at the last reading', 1, 'will miss'],
])('%s', (_case, hours, state) => {
  expect(forecast(falling, chill(air(2)), hours * HOUR)).toMatchObject({ state, use: 'advice, never acceptance' });
});

const inAbout = { code: 'in-about-time', figures: { time: { value: expect.any(String) as string, unit: 'ms' } } };

test('a forecast says when, how sure, and what to do', () => {
  expect(forecast(falling, chill(air(2)), 2.4 * HOUR)).toEqual({
    use: 'advice, never acceptance',
    state: 'at risk',
    arrival: { best: expect.closeTo(2.4067 * HOUR, -5), earliest: expect.any(Number), latest: expect.any(Number) },
    medium: { celsius: 2, from: 'measured' },
    takeMoreReadings: true,
    because: [
      { code: 'expected-in', figures: { target: { value: '26.7', unit: '°C' }, best: inAbout, earliest: inAbout, latest: inAbout } },
      {
        code: 'must-be-there',
        figures: { when: { code: 'in-about-time', figures: { time: { value: String(84 * 60_000), unit: 'ms' } } } },
      },
    ],
    next: [{ code: 'cool-faster' }, { code: 'take-more-readings' }],
    restartedAt: undefined,
  });
});

test('a deadline within the next minute is said as one', () => {
  expect(forecast(falling, chill(air(2)), HOUR + 30_000).because).toContainEqual({
    code: 'must-be-there',
    figures: { when: { code: 'in-less-than-a-minute' } },
  });
});

test('without a deadline it is expected, and a wide range asks for more readings', () => {
  const first = forecast(every(10, 100).map(newton(54.4, 2, 3.2)), chill(air(2), 20));
  expect(first).toMatchObject({ state: 'expected', because: [{ code: 'expected-in' }] });
  expect(first).toMatchObject({ takeMoreReadings: false, next: [] });
  expect(forecast(falling, chill(air(2), 4.4))).toMatchObject({ takeMoreReadings: true, next: [{ code: 'take-more-readings' }] });
});

test('a medium that may be too warm may never bring it there; one that is surely too warm never does', () => {
  expect(forecast(falling, chill(air(2), 4), 20 * HOUR)).toMatchObject({
    state: 'at risk',
    arrival: { latest: undefined },
    because: [
      { code: 'expected-in', figures: { latest: { code: 'perhaps-never' } } },
      { code: 'must-be-there', figures: { when: inAbout } },
    ],
  });
  const warm = every(10, 60).map(newton(54.4, 8, 3.2));
  expect(forecast(warm, chill(air(8), 4.4))).toMatchObject({
    state: 'will miss',
    arrival: { best: undefined, earliest: undefined, latest: undefined },
    because: [{ code: 'never-in-this-medium', figures: { target: { value: '4.4', unit: '°C' } } }],
    next: [{ code: 'cool-faster' }, { code: 'take-more-readings' }],
  });
  expect(forecast(falling, chill(air(2)), 1.5 * HOUR).next[0]).toEqual({ code: 'cool-faster' });
});

test('a medium two degrees warmer would leave no law to fit, so nothing is the latest', () => {
  const near = [at(0, 54), at(30, 5), at(45, 4.6), at(60, 4.3)];
  expect(forecast(near, chill(air(2), 4))).toMatchObject({ state: 'expected', arrival: { latest: undefined } });
});

test('of two probes that never arrive the first stays named', () => {
  const never = every(10, 60).flatMap((minutes) => [
    { ...newton(54.4, 8, 3)(minutes), probe: 'A' },
    { ...newton(54.4, 8, 3)(minutes), probe: 'B' },
  ]);
  expect(forecast(never, chill(air(8), 4.4))).toMatchObject({ state: 'will miss', probe: 'A' });
});

test('what is past the target is reached, whatever the fit', () => {
  expect(forecast([at(0, 26.7)], chill(air(2)))).toMatchObject({ state: 'reached' });
  expect(forecast([at(0, 26.71)], chill(air(2)))).toMatchObject({ state: 'too early to tell' });
});

test.each([
  ['one reading', [at(0, 60)], 'few-falling-readings 0'],
  ['readings over nineteen minutes', [0, 31, 40, 50].map(newton(60, 2, 3)), 'few-falling-readings 3'],
  ['all the same', every(10, 60).map((minutes) => at(minutes, 60)), 'few-falling-readings 0'],
  ['what never cools', every(10, 60).map((minutes) => at(minutes, 60 + minutes / 10)), 'few-falling-readings 0'],
  ['what warms again', [at(0, 60), at(30, 30), at(45, 32), at(60, 36)], 'not-falling-to-medium'],
])('too early to tell: %s', (_case, readings, because) => {
  const said = forecast(readings, chill(air(2)));
  expect([said.state, ...said.because.map(plainPart)]).toEqual(['too early to tell', because]);
});

test.each([
  ['no reading', [], chill(air(2)), 'nothing-usable-read'],
  ['an open circuit', [at(0, 999)], chill(air(2)), 'nothing-usable-read'],
  ['no temperature of the medium', falling, chill(air(NaN)), 'medium-unusable'],
  ['half a hundredth', falling, { ...chill(air(2)), target: { '°F': 0.5 } }, 'target-no-temperature'],
  ['no target', falling, { ...chill(air(2)), target: {} }, 'target-no-temperature'],
])('undetermined: %s', (_case, readings, task, because) => {
  expect(forecast(readings, task)).toMatchObject({ state: 'undetermined', because: [{ code: because }] });
});

test('a set point stands unless the readings contradict it; without one they tell, as well as they can', () => {
  const fall = every(10, 100).map(newton(54.4, 2, 3.2));
  expect(forecast(fall, chill(air(4, 'set point')))).toMatchObject({ medium: { from: 'set point', celsius: 4 } });
  const told = { from: 'worked out from the readings', celsius: expect.closeTo(2, 1) };
  const contradicted = forecast(every(20, 100).map(newton(54.4, 2, 1)), chill(air(-20, 'set point'), 2.5));
  expect(contradicted).toMatchObject({ medium: told });
  const worked = forecast(fall, { way: 'cooling', target: { '°C': 2670 } });
  expect(worked).toMatchObject({ medium: told, arrival: { best: expect.closeTo(2.4067 * HOUR, -5) } });
  const width = (said: typeof worked) => ('arrival' in said ? (said.arrival.latest ?? NaN) - (said.arrival.earliest ?? NaN) : NaN);
  expect(width(worked)).toBeGreaterThan(width(forecast(fall, chill(air(2)))));
  const uneven = [0, 25, 40, 90].map(newton(54.4, 2, 3.2));
  expect(forecast(uneven, { way: 'cooling', target: { '°C': 2670 } })).toMatchObject({ state: 'undetermined' });
  expect(forecast(uneven, chill(air(4, 'set point')))).toMatchObject({ medium: { celsius: 4, from: 'set point' } });
});

test('where an error of the probes would leave no bend to read, the medium may be any chiller', () => {
  const slow = every(20, 100).map(newton(40, 6, 3));
  const said = forecast(slow, { way: 'cooling', target: { '°C': 1500 } });
  expect(said).toMatchObject({ medium: { from: 'worked out from the readings' }, arrival: { latest: undefined } });
});

test.each([
  ['hardly any bend', [54.4, 50, 45.7]],
  ['colder than any chiller', [50, 40, 31.1]],
  ['warmer than any chiller', [54, 40, 33]],
  ['no number', [NaN, 40, 33]],
])('three readings that tell no medium: %s', (_case, [first = 0, second = 0, third = 0]) => {
  expect(mediumFromThree(first, second, third)).toBeUndefined();
});

test('a change of the medium that somebody tells begins the fit again', () => {
  const course = beginCourse(chill(air(15)));
  for (const reading of every(10, 60).map(newton(60, 15, 2))) addToCourse(course, reading);
  changeMedium(course, air(1), 60 * MINUTE);
  expect(forecastOf(course)).toMatchObject({
    state: 'too early to tell',
    because: expect.arrayContaining([{ code: 'medium-changed' }]) as unknown,
  });
  const fromHere = newton(42.3, 1, 2);
  for (const minutes of every(10, 50)) addToCourse(course, { ...fromHere(minutes), at: (60 + minutes) * MINUTE });
  expect(forecastOf(course)).toMatchObject({ restartedAt: 60 * MINUTE, medium: { celsius: 1 }, state: 'expected' });
  addToCourse(course, { ...fromHere(60), at: 120 * MINUTE });
  expect(forecastOf(course)).toMatchObject({ state: 'reached' });
});

test('a change nobody tells shows in the last readings, which leave the law on one side', () => {
  const course = beginCourse(chill(air(2), 4.4));
  for (const reading of every(10, 90).map(newton(54.4, 2, 3.2))) addToCourse(course, reading);
  expect(course.restartedAt).toBeUndefined();
  for (const minutes of [100, 110, 120, 130]) addToCourse(course, at(minutes, 34.8 + (minutes - 90) / 20));
  expect(course.restartedAt).toBeGreaterThanOrEqual(90 * MINUTE);
  expect(forecastOf(course).state).toBe('too early to tell');
});

test('a second of a logger counts no more than a minute, the newest always, and an hour and a half is kept', () => {
  const course = beginCourse(chill(air(2)));
  const law = newton(54.4, 2, 3.2);
  for (let second = 0; second <= 3 * 3600; second += 1) addToCourse(course, law(second / 60));
  expect(course.points.length).toBeLessThanOrEqual(92);
  expect(course.points[course.points.length - 1]?.at).toBe(3 * HOUR);
  expect(course.points[0]?.at).toBeGreaterThanOrEqual(1.5 * HOUR);
});

test('what is not later than the last reading changes nothing', () => {
  const course = beginCourse(chill(air(2)));
  for (const reading of [...falling, at(5, 80), at(60, 80)]) addToCourse(course, reading);
  expect(forecastOf(course)).toEqual(forecast(falling, chill(air(2))));
});

test('heating goes by the same law towards a warmer medium, as advice', () => {
  const oven: ForecastTask = { way: 'heating', target: { '°C': 6800 }, medium: air(80, 'set point') };
  const said = forecast(every(10, 90).map(newton(10, 80, 1)), oven, 4 * HOUR);
  expect(said).toMatchObject({ state: 'on course', medium: { celsius: 80, from: 'set point' } });
  expect(said).toMatchObject({ arrival: { best: expect.closeTo(Math.log(70 / 12) * HOUR, -5) } });
  expect(forecast(every(10, 90).map(newton(10, 80, 1)), oven, 1.6 * HOUR).next[0]).toEqual({ code: 'check-heat-and-load' });
  expect(forecast([at(0, 10)], oven).because.map(plainPart)).toEqual(['few-rising-readings 0']);
  expect(forecast([at(0, 68)], oven).state).toBe('reached');
});

test('of several probes the last to arrive governs and is named', () => {
  const probes = [
    ...every(10, 60).map((minutes) => ({ ...newton(54.4, 2, 2)(minutes), probe: 'A' })),
    ...every(10, 60).map((minutes) => ({ ...newton(54.4, 2, 4)(minutes), probe: 'B' })),
  ];
  expect(forecast(probes, chill(air(2)))).toMatchObject({ probe: 'B', state: 'expected' });
  expect(forecast([...probes].reverse(), chill(air(2)))).toMatchObject({ probe: 'B' });
  expect(forecast([at(0, 20, 'C'), at(0, 20, 'D')], chill(air(2)))).toMatchObject({ probe: 'C', state: 'reached' });
});

test('points that do not close the gap follow no law', () => {
  expect(fitLaw([0, 0.2, 0.4].map((hours) => ({ hours, gap: 10 + hours })))).toBeUndefined();
  expect(fitLaw([0, 0.2, 0.4].map((hours) => ({ hours, gap: 0.9 - hours })))).toBeUndefined();
});
