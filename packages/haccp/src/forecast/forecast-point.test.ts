import { describe, expect, test } from 'vitest';
import type { CriticalLimit } from '../limits/limit';
import type { TemperatureUnit } from '../quantity/temperature';
import type { CurveReading } from '../thermal/curve';
import type { Surroundings } from '../thermal/around-core';
import { asOf, forecastPoint } from './forecast-point';
import { mediaOf } from './media';

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
/** Only to show by: the published figures are in the limit sets. */
const source = { citation: 'example for tests', edition: '', confirmed: false };

const cooling: CriticalLimit = {
  kind: 'cooling',
  longestGapSeconds: 5400,
  source,
  stages: [
    { from: { '°F': 13_000 }, to: { '°F': 8000 }, withinSeconds: 5400, counted: 'stage' },
    { from: { '°F': 8000 }, to: { '°F': 4000 }, withinSeconds: 18_000, counted: 'stage' },
  ],
};
const comeUp: CriticalLimit = {
  kind: 'bandTime',
  from: { '°F': 5000 },
  to: { '°F': 13_000 },
  maxSeconds: 6 * 3600,
  longestGapSeconds: 7200,
  source,
};
const dwell: CriticalLimit = {
  kind: 'dwell',
  longestGapSeconds: 1800,
  source,
  rows: [
    { at: { '°F': 15_800 }, seconds: 0 },
    { at: { '°F': 14_500 }, seconds: 240 },
  ],
};
const range: CriticalLimit = { kind: 'range', measured: 'temperature', min: { '°F': 16_500 }, source };
const as = (...limits: CriticalLimit[]) => limits.map((limit, i) => ({ limitId: `limit ${i + 1}`, limit }));

const at = (minutes: number, fahrenheit: number, probe?: string): CurveReading => ({
  at: minutes * MINUTE,
  temperature: { hundredths: Math.round(fahrenheit * 100), unit: '°F' },
  probe,
});
const law = (from: number, medium: number, tau: number, probe?: string) => (minutes: number) =>
  at(minutes, medium + (from - medium) * Math.exp(-minutes / 60 / tau), probe);
const every = (step: number, until: number) => Array.from({ length: Math.floor(until / step) + 1 }, (_, i) => i * step);
const goesOn = (now?: number) => ({ ended: false, startAt: 0, now: now === undefined ? undefined : now * MINUTE });
const setAt = (hundredths: number, unit: TemperatureUnit): Surroundings => ({
  setPoint: { hundredths, unit },
  readings: [],
});
const chiller = setAt(3400, '°F');
const read = (...readings: CurveReading[]): Surroundings => ({ ...chiller, readings });

describe('which bound a forecast is for', () => {
  test('of a chill the first stage that goes on, with its deadline', () => {
    const said = forecastPoint(as(cooling), every(10, 40).map(law(140, 34, 3)), chiller, goesOn());
    expect(said).toMatchObject({ limitId: 'limit 1', target: { value: '80', unit: '°F' }, state: 'will miss', by: 100 * MINUTE });
    expect(said).toMatchObject({ medium: { from: 'set point' } });
  });

  test('then the next', () => {
    const said = forecastPoint(as(cooling), every(10, 80).map(law(140, 34, 0.8)), chiller, goesOn());
    expect(said).toMatchObject({ target: { value: '40', unit: '°F' }, state: 'on course' });
  });

  test('a stage missed for good is waited for no more, the one after it is', () => {
    const said = forecastPoint(as(cooling), every(15, 105).map(law(140, 34, 3)), chiller, goesOn());
    expect(said).toMatchObject({ target: { value: '40', unit: '°F' }, by: undefined, state: 'expected' });
  });

  test('of a cook the come-up, by when it must be there, before the coldest row of the table, which knows no time', () => {
    const cook = every(10, 60).map(law(45, 180, 2));
    const smokehouse = setAt(8000, '°C');
    const [come, hold] = [comeUp, dwell].map((limit) => forecastPoint(as(limit), cook, smokehouse, goesOn()));
    expect(come).toMatchObject({ target: { value: '130', unit: '°F' }, by: 6 * HOUR, state: 'on course' });
    expect(hold).toMatchObject({ target: { value: '145', unit: '°F' }, by: undefined, state: 'expected' });
    expect(forecastPoint(as(comeUp, dwell), cook, smokehouse, goesOn())).toMatchObject({ limitId: 'limit 1' });
  });

  test.each([
    ['a hold that is met, though it cools again', dwell, [at(0, 160), at(30, 140), at(60, 120)]],
    ['a hold at its coldest row', dwell, [at(0, 120), at(30, 146)]],
    ['a come-up that is over', comeUp, [at(0, 45), at(60, 100), at(120, 131)]],
    ['a come-up missed for good', comeUp, every(60, 600).map((minutes) => at(minutes, 51 + minutes / 20))],
    ['a limit on one value', range, [at(0, 120)]],
    ['a chill at its end', cooling, every(20, 60).map((minutes) => at(minutes, 140 - 2 * minutes))],
    ['no usable reading', cooling, [at(0, NaN)]],
  ])('nothing is awaited of %s', (_case, limit, readings) => {
    const all = limit === cooling && readings.length > 1 ? [...readings, at(80, 60), at(100, 39)] : readings;
    expect(forecastPoint(as(limit), all, chiller, goesOn())).toBeUndefined();
  });

  test('a thermometer’s error puts the arrival off, whichever way it goes', () => {
    const off = (hundredths: number) => ({ ...goesOn(), instrumentError: { hundredths, unit: '°C' as const } });
    const bestOf = (limit: CriticalLimit, readings: CurveReading[], around: Surroundings, error: number) => {
      const said = forecastPoint(as(limit), readings, around, off(error));
      return said && 'arrival' in said ? (said.arrival.best ?? NaN) : NaN;
    };
    const fall = every(10, 40).map(law(140, 34, 1.2));
    expect(bestOf(cooling, fall, chiller, 100)).toBeGreaterThan(bestOf(cooling, fall, chiller, 0));
    const inCelsius = every(10, 40).map((minutes): CurveReading => {
      const celsius = 1.1 + 58.9 * Math.exp(-minutes / 72);
      return { at: minutes * MINUTE, temperature: { hundredths: Math.round(celsius * 100), unit: '°C' } };
    });
    expect(bestOf(cooling, inCelsius, chiller, 100)).toBeGreaterThan(bestOf(cooling, inCelsius, chiller, 0));
    const [rise, oven] = [every(10, 60).map(law(45, 180, 2)), setAt(18_000, '°F')];
    expect(bestOf(comeUp, rise, oven, 100)).toBeGreaterThan(bestOf(comeUp, rise, oven, 0));
    expect(forecastPoint(as(cooling), fall, chiller, off(NaN))).toBeUndefined();
  });

  test('nothing is awaited once the stage is finished', () => {
    const fall = every(10, 40).map(law(140, 34, 1.6));
    expect(forecastPoint(as(cooling), fall, chiller, { ended: true, startAt: 0 })).toBeUndefined();
  });

  test('of two probes the one that will be last, each in its own stage', () => {
    const two = every(10, 60).flatMap((minutes) => [law(140, 34, 0.7, 'A')(minutes), law(140, 34, 1.3, 'B')(minutes)]);
    expect(forecastPoint(as(cooling), two, chiller, goesOn())).toMatchObject({ probe: 'B', target: { value: '80', unit: '°F' } });
    expect(forecastPoint(as(cooling), two.reverse(), chiller, goesOn())).toMatchObject({ probe: 'B', target: { value: '80', unit: '°F' } });
    const alike = every(10, 40).flatMap((minutes) => [law(45, 180, 2, 'A')(minutes), law(45, 180, 3, 'B')(minutes)]);
    expect(forecastPoint(as(dwell), alike, setAt(18_000, '°F'), goesOn())).toMatchObject({
      probe: 'B',
      state: 'expected',
    });
  });
});

describe('what it lies in', () => {
  const fall = every(10, 50).map(law(140, 34, 1.2));

  test('what was read takes the place of the set point, the latest of it', () => {
    const said = forecastPoint(as(cooling), fall, read(at(30, 37), at(5, 36)), goesOn());
    expect(said).toMatchObject({ medium: { from: 'measured', celsius: expect.closeTo(2.78, 2) } });
    expect(said).not.toMatchObject({ restartedAt: expect.anything() });
  });

  test('the range covers everything read of it, so it is wider the more the air swings', () => {
    const width = (surroundings: Surroundings) => {
      const said = forecastPoint(as(cooling), fall, surroundings, goesOn());
      return said && 'arrival' in said ? (said.arrival.latest ?? NaN) - (said.arrival.earliest ?? NaN) : NaN;
    };
    expect(width(read(at(5, 40), at(30, 34)))).toBeGreaterThan(width(read(at(5, 34), at(30, 34))));
  });

  test('a change of it begins the fit anew', () => {
    const said = forecastPoint(as(cooling), fall, read(at(5, 55), at(45, 34)), goesOn());
    expect(said).toMatchObject({ state: 'too early to tell', because: expect.arrayContaining([{ code: 'medium-changed' }]) as unknown });
    const later = [...fall, ...[60, 70, 80, 90, 100].map(law(140, 34, 1.2))];
    const after = forecastPoint(as(cooling), later, read(at(5, 55), at(45, 34)), goesOn());
    expect(after).toMatchObject({ restartedAt: 45 * MINUTE, medium: { celsius: expect.closeTo(1.11, 2) } });
  });

  test('with neither, it is worked out where the readings tell, and asked for where they do not', () => {
    const long = every(10, 90).map(law(140, 34, 1.2));
    expect(forecastPoint(as(cooling), long, undefined, goesOn())).toMatchObject({
      medium: { from: 'worked out from the readings', celsius: expect.closeTo(1.1, 0) },
    });
    expect(forecastPoint(as(cooling), fall.slice(0, 3), undefined, goesOn())?.state).toBe('too early to tell');
    const [straight, state] = [every(10, 60).map(law(140, 0, 3)), 'undetermined'];
    expect(forecastPoint(as(cooling), straight, { readings: [] }, goesOn())).toMatchObject({
      state,
      next: [{ code: 'read-the-medium' }],
    });
    expect(forecastPoint(as(cooling), straight, undefined, goesOn())).toMatchObject({
      state,
      next: [{ code: 'name-the-medium' }],
    });
    const cook = every(10, 60).map(law(45, 180, 2));
    expect(forecastPoint(as(dwell), cook, { readings: [] }, goesOn())?.state).toBe('undetermined');
  });

  test('readings of it are put in order, and what cannot be true is left out', () => {
    const air = [at(60, 50), at(0, 34), at(30, 38), at(40, NaN)];
    expect(mediaOf(air)).toMatchObject([
      { from: 0, medium: { temperature: { hundredths: 3800 }, is: 'measured' } },
      { from: HOUR, medium: { temperature: { hundredths: 5000 }, between: [10, 10] } },
    ]);
  });
});

describe('some time after the last reading', () => {
  const fall = every(10, 40).map(law(140, 34, 0.9));
  const said = forecastPoint(as(cooling), fall, chiller, goesOn(41));

  test('it stands as long as it can still come true', () => {
    expect(said).toMatchObject({ state: 'on course' });
    expect(said && asOf(said, undefined)).toEqual(said);
  });

  test('once it should have, and nobody read, it says nothing any more', () => {
    expect(forecastPoint(as(cooling), fall, chiller, goesOn(91))).toEqual({
      use: 'advice, never acceptance',
      state: 'undetermined',
      because: [
        {
          code: 'should-have-been-reached',
          figures: {
            target: { value: '80', unit: '°F' },
            time: { code: 'about-time', figures: { time: { value: '2700000', unit: 'ms' } } },
          },
        },
      ],
      next: [{ code: 'read-core-now' }],
      limitId: 'limit 1',
      target: { value: '80', unit: '°F' },
      by: 90 * MINUTE,
    });
    const named = fall.map((reading) => ({ ...reading, probe: 'A' }));
    expect(forecastPoint(as(cooling), named, chiller, goesOn(91))).toMatchObject({ probe: 'A', state: 'undetermined' });
  });

  test('without a time, when the latest of its range is past; never while there is no latest', () => {
    const cook = every(10, 60).map(law(45, 180, 2));
    const oven = setAt(18_000, '°F');
    expect(forecastPoint(as(dwell), cook, oven, goesOn(600))?.state).toBe('undetermined');
    const cool = setAt(14_700, '°F');
    const near = every(10, 60).map(law(45, 147, 2));
    expect(forecastPoint(as(dwell), near, cool, goesOn(6000))).toMatchObject({ state: 'expected', arrival: {} });
  });

  test('what will be missed stays so, and what is too early to tell too', () => {
    const slow = every(10, 40).map(law(140, 34, 3));
    expect(forecastPoint(as(cooling), slow, chiller, goesOn(300))?.state).toBe('will miss');
    expect(forecastPoint(as(cooling), [at(0, 140)], chiller, goesOn(300))?.state).toBe('too early to tell');
  });
});
