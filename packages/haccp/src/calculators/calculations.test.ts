import { describe, expect, test } from 'vitest';
import { cookedMeat65Log } from '../limit-sets/fsis-meat';
import { coolingUncured } from '../limit-sets/fsis-stabilization';
import { nitriteComminuted, nitriteComminutedRefrigerated } from '../limit-sets/curing';
import { cureForMeat } from './cure-for-meat';
import { curveAgainstLimit } from './curve-against-limit';
import { limitWithInstrument } from './limit-with-instrument';
import { thermometerInBoilingWater } from './thermometer-in-boiling-water';
import { timeAtTemperature } from './time-at-temperature';
import type { CannotCalculate, Calculation } from './calculation';
import { plainTell } from '../limits/plain-tell.test-data';

/** Results by their name, in words. */
const said = (outcome: Calculation | CannotCalculate): Record<string, string> =>
  'cannot' in outcome ? outcome : Object.fromEntries(outcome.results.map((result) => [result.what, result.said]));

describe('curing salt for so much meat', () => {
  const meat = { value: 7.3, unit: 'kg' } as const;
  const limit = nitriteComminuted;

  test('the trade’s 2.5 g of 6.25 % salt for each kilogram is exactly the most', () => {
    const outcome = cureForMeat({ meat, strength: 6.25, limit, scale: { value: 0.1, unit: 'g' } });
    expect(said(outcome)).toEqual({
      'At most': '18.25 g',
      'On this scale': expect.stringMatching(/^what shows 0.1 g to 18.2 g is surely within: 0.05 g of doubt/),
    });
    expect(outcome).toMatchObject({
      steps: [{ putIn: '7300 g × 156.25 ppm ÷ 1,000,000 ÷ 6.25 %', gives: '18.25 g' }],
      sources: [limit.source],
    });
  });

  test('a kitchen scale in grams cannot weigh for one kilogram what has a least and a most', () => {
    const small = { value: 1, unit: 'kg' } as const;
    const asked = { meat: small, strength: 6.25, limit: nitriteComminutedRefrigerated };
    expect(said(cureForMeat({ ...asked, scale: { value: 1, unit: 'g' } }))).toMatchObject({
      'At least': '1.92 g',
      'At most': '2.5 g',
      'This scale is too coarse': expect.stringContaining('Take a finer scale'),
    });
    expect(said(cureForMeat({ ...asked, scale: { value: 0.1, unit: 'g' } }))).toMatchObject({
      'On this scale': expect.stringMatching(/^what shows 2 g to 2.4 g is surely within/),
    });
  });

  test('a limit with a least alone gives no most', () => {
    const least = { ...nitriteComminutedRefrigerated, max: undefined };
    const outcome = said(cureForMeat({ meat, strength: 6.25, limit: least, scale: { value: 0.1, unit: 'g' } }));
    expect(outcome).toMatchObject({ 'At least': '14.016 g' });
    expect(outcome).not.toHaveProperty('At most');
  });

  test('where one figure alone of the scale is surely within, it is the one to weigh', () => {
    const small = { value: 1, unit: 'kg' } as const;
    const asked = { meat: small, strength: 6.25, limit: nitriteComminutedRefrigerated, scale: { value: 0.3, unit: 'g' } as const };
    expect(said(cureForMeat(asked))).toMatchObject({
      'This scale is too coarse': expect.stringMatching(/^what shows 2.1 g is surely within/),
    });
  });

  test.each([
    { strength: 0, value: 7.3 },
    { strength: 101, value: 7.3 },
    { strength: NaN, value: 7.3 },
    { strength: 6.25, value: 0 },
  ])('$strength % for $value kg is refused with its reason', ({ strength, value }) => {
    const scale = { value: 0.1, unit: 'g' } as const;
    expect(cureForMeat({ meat: { value, unit: 'kg' }, strength, limit, scale })).toEqual({
      cannot: expect.stringMatching(/weighs nothing|cannot be used/),
    });
  });
});

describe('time at a temperature', () => {
  const hold = (value: number, unit: '°C' | '°F') => timeAtTemperature(value, unit, cookedMeat65Log, 'Cooked meat');

  test.each([
    [145, '°F', '4 min', '145 °F'],
    [144.9, '°F', '5 min', '144 °F'],
    [158, '°F', 'no holding time', '158 °F'],
    [68, '°C', '27 s', '67.8 °C'],
  ] as const)('%d %s: %s by the row of %s, never one between two', (value, unit, held, row) => {
    expect(said(hold(value, unit))).toEqual({ 'To be held for': held });
    expect(hold(value, unit)).toMatchObject({ steps: [{ putIn: expect.stringContaining(row) }] });
  });

  test('below the coldest row no time counts', () => {
    expect(hold(129.9, '°F')).toEqual({ cannot: expect.stringContaining('below the coldest row of this table, 130 °F') });
  });

  test('a table without a row is no table', () => {
    expect(timeAtTemperature(150, '°F', { ...cookedMeat65Log, rows: [] }, '')).toHaveProperty('cannot');
  });
});

describe('a curve against a limit', () => {
  const cooling = (values: number[], step = 30) => {
    const readings = values.map((value, index) => ({ minutes: index * step, value }));
    return curveAgainstLimit(readings, '°F', coolingUncured, 'Cooling', plainTell);
  };

  test('is judged as a lot would be whose stage has ended, and says each reading', () => {
    const outcome = cooling([135, 110, 90, 78, 70, 64, 58, 53, 48, 44, 41, 39]);
    expect(outcome).toMatchObject({ verdicts: [{ kind: 'met' }] });
    expect(outcome).toMatchObject({ given: expect.arrayContaining([{ what: 'After 1 h', said: '90 °F' }]) });
  });

  test('is judged by the piece that is said, and by a thin sausage where none is', () => {
    const readings = [
      [0, 141],
      [15, 140.7],
      [30, 37],
    ].map(([minutes = 0, value = 0]) => ({ minutes, value }));
    const of = (value?: number) => {
      const piece = value === undefined ? undefined : { shape: 'cylinder' as const, smallest: { value, unit: 'mm' as const } };
      return curveAgainstLimit(readings, '°F', coolingUncured, 'Cooling', plainTell, piece);
    };
    const sausage = 'not said, so as thin as a sausage: cylinder, 22 mm at its thinnest';
    expect(of()).toMatchObject({
      verdicts: [{ kind: 'met' }],
      given: expect.arrayContaining([{ what: 'Piece', said: sausage }]) as unknown,
    });
    expect(of(60)).toMatchObject({
      verdicts: [{ kind: 'undetermined', because: 'faster-than-a-core.because' }],
      given: expect.arrayContaining([{ what: 'Piece', said: 'cylinder, 60 mm at its thinnest' }]) as unknown,
    });
  });

  test('one that never cools is missed', () => {
    expect(cooling([135, 120, 118, 117, 116, 115])).toMatchObject({ verdicts: [{ kind: 'missed' }] });
  });

  test('one reading decides nothing, and none is refused', () => {
    expect(cooling([135])).toMatchObject({ verdicts: [{ kind: expect.stringMatching(/undetermined|missed/) }] });
    expect(cooling([])).toEqual({ cannot: expect.any(String) });
  });
});

test('165 °F with a thermometer good to ± 1 °F needs 166 °F; 40 °F at most needs 39 °F', () => {
  const asked = { error: 1, unit: '°F' } as const;
  expect(said(limitWithInstrument({ ...asked, figure: 165, side: 'min' }))).toEqual({ 'Shown at least': '166 °F' });
  expect(said(limitWithInstrument({ ...asked, figure: 40, side: 'max' }))).toEqual({ 'Shown at most': '39 °F' });
});

test('water boils at 95.9 °C in 4000 ft, and a barometer is better than the height', () => {
  const byHeight = thermometerInBoilingWater({ from: 'height', metres: 1219.2 }, '°C');
  expect(said(byHeight)).toMatchObject({ 'It should show': '95.9 °C', 'In melting ice': '0 °C' });
  const byBarometer = thermometerInBoilingWater({ from: 'barometer', hectopascal: 1000 }, '°F');
  expect(said(byBarometer)).toMatchObject({ 'It should show': '211.3 °F', 'In melting ice': '32 °F' });
  expect(byHeight).toMatchObject({ results: [{}, { what: 'Known to', said: '± 0.6 °C' }, {}], given: [{ what: 'Height' }] });
  expect(thermometerInBoilingWater({ from: 'barometer', hectopascal: NaN }, '°C')).toHaveProperty('cannot');
});

test('a weather report is worked back to the height; taken for a barometer’s figure there it is refused', () => {
  const report = thermometerInBoilingWater({ from: 'weather report', seaLevelHectopascal: 1005, metres: 1600 }, '°C');
  expect(report).toMatchObject({ steps: [{ what: 'Pressure at this height', gives: '828.4 hPa' }, { what: 'Boiling point' }] });
  expect(said(report)).toMatchObject({ 'It should show': '94.4 °C' });
  expect(thermometerInBoilingWater({ from: 'barometer', hectopascal: 1005, metres: 1600 }, '°C')).toEqual({
    cannot: expect.stringContaining('reduced to sea level'),
  });
  const there = thermometerInBoilingWater({ from: 'barometer', hectopascal: 835, metres: 1600 }, '°C');
  expect(there).toMatchObject({ given: [{ what: 'Pressure' }, { what: 'Height', said: '1600 m' }] });
});
