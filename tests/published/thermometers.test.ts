import { describe, expect, test } from 'vitest';
import {
  boilingCelsius,
  boilingPointAt,
  degrees,
  icePoint,
  judgeCalibration,
  saturationKelvin,
  standardPressure,
} from '@larderbook/haccp';

const METRES_PER_FOOT = 0.3048;

describe('IAPWS-IF97, region 4, backward equation: verification values of the release (Table 36)', () => {
  test.each([
    [0.1, 372.755919],
    [1, 453.035632],
    [10, 584.149488],
  ])('saturation temperature at %s MPa', (megapascal, kelvin) => {
    expect(saturationKelvin(megapascal)).toBeCloseTo(kelvin, 6);
  });
});

/** U.S. Standard Atmosphere 1976: pressure at geopotential height. */
test.each([
  [0, 1013.25],
  [1000, 898.75],
  [2000, 794.95],
  [3000, 701.09],
])('standard pressure at %s m', (metres, hectopascal) => {
  expect(standardPressure(metres)).toBeCloseTo(hectopascal, 1);
});

/** Both formulas together; at sea level water boils at 99.974 °C on the ITS-90 scale, not at 100. */
test.each([
  [1013.25, 99.974],
  [850, 95.125],
  [700, 89.932],
])('boiling point at %s hPa', (hectopascal, celsius) => {
  expect(boilingCelsius(hectopascal)).toBeCloseTo(celsius, 2);
});

test.each([
  [0, 212],
  [5000, 202.8],
  [5280, 202.3],
  [10_000, 193.7],
])('boiling point at %s ft', (feet, fahrenheit) => {
  expect(boilingPointAt(feet * METRES_PER_FOOT, '°F')).toEqual(degrees(fahrenheit, '°F'));
});

describe('FDA Food Code 4-203.11: food thermometers to ± 2 °F', () => {
  test.each([
    ['34.1 °F in ice water', degrees(34.1, '°F'), icePoint('°F'), 'missed', '2.1 °F above'],
    ['34.0 °F in ice water', degrees(34, '°F'), icePoint('°F'), 'met', '2 °F above'],
    [
      '203.5 °F in boiling water at 5280 ft',
      degrees(203.5, '°F'),
      boilingPointAt(5280 * METRES_PER_FOOT, '°F'),
      'met',
      '1.2 °F above',
    ],
  ])('%s', (_case, reading, expected, kind, difference) => {
    expect(judgeCalibration(reading, expected)).toMatchObject({ kind, difference });
  });
});
