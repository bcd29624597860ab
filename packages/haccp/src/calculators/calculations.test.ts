import { describe, expect, test } from 'vitest';
import { cookedMeat65Log } from '../limit-sets/fsis-meat';
import { coolingUncured } from '../limit-sets/fsis-stabilization';
import { nitriteComminuted, nitriteComminutedRefrigerated } from '../limit-sets/curing';
import { cureForMeat } from './cure-for-meat';
import { curveAgainstLimit } from './curve-against-limit';
import { limitWithInstrument } from './limit-with-instrument';
import { thermometerInBoilingWater } from './thermometer-in-boiling-water';
import { timeAtTemperature } from './time-at-temperature';
import { plainly, resultsBy } from './plain-calculation.test-data';

describe('curing salt for so much meat', () => {
  const meat = { value: 7.3, unit: 'kg' } as const;
  const limit = nitriteComminuted;

  test('the trade’s 2.5 g of 6.25 % salt for each kilogram is exactly the most', () => {
    const outcome = cureForMeat({ meat, strength: 6.25, limit, scale: { value: 0.1, unit: 'g' } });
    expect(resultsBy(outcome)).toEqual({
      'at-most': '18.25 g',
      'on-this-scale': 'fine-enough-between 0.05 g 18.25 g 0.274 % 5 % 0.1 g 18.2 g',
    });
    expect(plainly(outcome)).toMatchObject({
      steps: [{ putIn: '7300 g × 156.25 ppm ÷ 1000000 ÷ 6.25 %', gives: '18.25 g' }],
    });
    expect(outcome).toMatchObject({ sources: [limit.source] });
  });

  test('a kitchen scale in grams cannot weigh for one kilogram what has a least and a most', () => {
    const small = { value: 1, unit: 'kg' } as const;
    const asked = { meat: small, strength: 6.25, limit: nitriteComminutedRefrigerated };
    expect(resultsBy(cureForMeat({ ...asked, scale: { value: 1, unit: 'g' } }))).toMatchObject({
      'at-least': '1.92 g',
      'at-most': '2.5 g',
      'scale-too-coarse': 'nothing-surely-within 1 g',
    });
    expect(resultsBy(cureForMeat({ ...asked, scale: { value: 0.1, unit: 'g' } }))).toMatchObject({
      'on-this-scale': expect.stringMatching(/^fine-enough-between.* 2 g 2.4 g$/),
    });
  });

  test('a limit with a least alone gives no most', () => {
    const least = { ...nitriteComminutedRefrigerated, max: undefined };
    const outcome = resultsBy(cureForMeat({ meat, strength: 6.25, limit: least, scale: { value: 0.1, unit: 'g' } }));
    expect(outcome).toMatchObject({ 'at-least': '14.016 g' });
    expect(outcome).not.toHaveProperty('at-most');
  });

  test('where one figure alone of the scale is surely within, it is the one to weigh', () => {
    const small = { value: 1, unit: 'kg' } as const;
    const asked = { meat: small, strength: 6.25, limit: nitriteComminutedRefrigerated, scale: { value: 0.3, unit: 'g' } as const };
    expect(resultsBy(cureForMeat(asked))).toMatchObject({
      'scale-too-coarse': expect.stringMatching(/^too-coarse-at-one .* 2.1 g$/),
    });
  });

  test.each([
    { strength: 0, value: 7.3 },
    { strength: 101, value: 7.3 },
    { strength: NaN, value: 7.3 },
    { strength: 6.25, value: 0 },
  ])('$strength % for $value kg is refused with its reason', ({ strength, value }) => {
    const scale = { value: 0.1, unit: 'g' } as const;
    const { cannot } = plainly(cureForMeat({ meat: { value, unit: 'kg' }, strength, limit, scale }));
    expect(cannot).toMatch(/^(meat-weighs-nothing|salt-unusable)/);
  });
});

describe('time at a temperature', () => {
  const hold = (value: number, unit: '°C' | '°F') => timeAtTemperature(value, unit, cookedMeat65Log, 'Cooked meat');

  test.each([
    [145, '°F', '4 min', '145 °F'],
    [144.9, '°F', '5 min', '144 °F'],
    [158, '°F', 'no-holding-time', '158 °F'],
    [68, '°C', '27 s', '67.8 °C'],
  ] as const)('%d %s: %s by the row of %s, never one between two', (value, unit, held, row) => {
    expect(resultsBy(hold(value, unit))).toEqual({ 'to-be-held-for': held });
    expect(plainly(hold(value, unit)).steps[0]?.putIn).toContain(row);
  });

  test('below the coldest row no time counts', () => {
    expect(plainly(hold(129.9, '°F')).cannot).toBe('below-coldest-row 129.9 °F 130 °F');
  });

  test('a table without a row is no table', () => {
    expect(timeAtTemperature(150, '°F', { ...cookedMeat65Log, rows: [] }, '')).toHaveProperty('cannot');
  });
});

describe('a curve against a limit', () => {
  const cooling = (values: number[], step = 30) => {
    const readings = values.map((value, index) => ({ minutes: index * step, value }));
    return plainly(curveAgainstLimit(readings, '°F', coolingUncured, 'Cooling'));
  };

  test('is judged as a lot would be whose stage has ended, and says each reading', () => {
    const outcome = cooling([135, 110, 90, 78, 70, 64, 58, 53, 48, 44, 41, 39]);
    expect(outcome).toMatchObject({ verdicts: [{ kind: 'met' }] });
    expect(outcome).toMatchObject({ given: expect.arrayContaining([{ what: 'after-time 1 h', is: '90 °F' }]) });
  });

  test('is judged by the piece that is said, and by a thin sausage where none is', () => {
    const readings = [
      [0, 141],
      [15, 140.7],
      [30, 37],
    ].map(([minutes = 0, value = 0]) => ({ minutes, value }));
    const of = (value?: number) => {
      const piece = value === undefined ? undefined : { shape: 'cylinder' as const, smallest: { value, unit: 'mm' as const } };
      return plainly(curveAgainstLimit(readings, '°F', coolingUncured, 'Cooling', piece));
    };
    expect(plainly(curveAgainstLimit(readings, '°F', coolingUncured, 'Cooling', { shape: 'stirred' }))).toMatchObject({
      given: expect.arrayContaining([{ what: 'piece', is: 'piece-stirred' }]) as unknown,
    });
    expect(of(NaN)).toMatchObject({ given: expect.arrayContaining([{ what: 'piece', is: 'piece-cylinder' }]) as unknown });
    const sausage = 'piece-not-said piece-cylinder-of 22 mm';
    expect(of()).toMatchObject({
      verdicts: [{ kind: 'met' }],
      given: expect.arrayContaining([{ what: 'piece', is: sausage }]) as unknown,
    });
    expect(of(60)).toMatchObject({
      verdicts: [{ kind: 'undetermined', finding: 'faster-than-a-core' }],
      given: expect.arrayContaining([{ what: 'piece', is: 'piece-cylinder-of 60 mm' }]) as unknown,
    });
  });

  test('one that never cools is missed', () => {
    expect(cooling([135, 120, 118, 117, 116, 115])).toMatchObject({ verdicts: [{ kind: 'missed' }] });
  });

  test('one reading decides nothing, and none is refused', () => {
    expect(cooling([135])).toMatchObject({ verdicts: [{ kind: expect.stringMatching(/undetermined|missed/) }] });
    expect(cooling([]).cannot).toBe('no-reading-given');
  });
});

test('165 °F with a thermometer good to ± 1 °F needs 166 °F; 40 °F at most needs 39 °F', () => {
  const asked = { error: 1, unit: '°F' } as const;
  expect(resultsBy(limitWithInstrument({ ...asked, figure: 165, side: 'min' }))).toEqual({ 'shown-at-least': '166 °F' });
  expect(resultsBy(limitWithInstrument({ ...asked, figure: 40, side: 'max' }))).toEqual({ 'shown-at-most': '39 °F' });
});

test('water boils at 95.9 °C in 4000 ft, and a barometer is better than the height', () => {
  const byHeight = thermometerInBoilingWater({ from: 'height', metres: 1219.2 }, '°C');
  expect(resultsBy(byHeight)).toMatchObject({ 'it-should-show': '95.9 °C', 'in-melting-ice': '0 °C' });
  const byBarometer = thermometerInBoilingWater({ from: 'barometer', hectopascal: 1000 }, '°F');
  expect(resultsBy(byBarometer)).toMatchObject({ 'it-should-show': '211.3 °F', 'in-melting-ice': '32 °F' });
  expect(plainly(byHeight)).toMatchObject({
    results: [{}, { what: 'known-to', is: 'plus-minus 0.6 °C' }, {}],
    given: [{ what: 'height' }],
  });
  expect(thermometerInBoilingWater({ from: 'barometer', hectopascal: NaN }, '°C')).toHaveProperty('cannot');
});

test('a weather report is worked back to the height; taken for a barometer’s figure there it is refused', () => {
  const report = thermometerInBoilingWater({ from: 'weather report', seaLevelHectopascal: 1005, metres: 1600 }, '°C');
  expect(plainly(report)).toMatchObject({ steps: [{ what: 'pressure-at-this-height', gives: '828.4 hPa' }, { what: 'boiling-point' }] });
  expect(resultsBy(report)).toMatchObject({ 'it-should-show': '94.4 °C' });
  expect(plainly(thermometerInBoilingWater({ from: 'barometer', hectopascal: 1005, metres: 1600 }, '°C')).cannot).toBe(
    'pressure-not-there 1005 hPa 835 hPa 1600 m; as-weather-report',
  );
  const there = thermometerInBoilingWater({ from: 'barometer', hectopascal: 835, metres: 1600 }, '°C');
  expect(plainly(there)).toMatchObject({ given: [{ what: 'pressure' }, { what: 'height', is: '1600 m' }] });
});
