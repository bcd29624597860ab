import { describe, expect, test } from 'vitest';
import {
  boilingCelsius,
  boilingWater,
  foodThermometerTolerance,
  icePoint,
  judgeCheck,
  saturationKelvin,
  standardPressure,
  stationPressure,
  type Air,
  type Degrees,
} from '@larderbook/haccp';

const METRES_PER_FOOT = 0.3048;
const HECTOPASCAL_PER_INCH = 33.863886;
const read = (air: Air, unit: '°C' | '°F'): Degrees => {
  const point = boilingWater(air, unit);
  if (point.kind !== 'known') throw new Error(point.why[0]?.code);
  return point.reads;
};

describe('IAPWS R7-97(2012), region 4', () => {
  // Table 36: saturation temperature, backward equation.
  test.each([
    [0.1, 372.755919],
    [1, 453.035632],
    [10, 584.149488],
  ])('at %s MPa', (megapascal, kelvin) => {
    expect(saturationKelvin(megapascal)).toBeCloseTo(kelvin, 6);
  });

  // Table 35: saturation pressure, the same equation the other way; written out here, so that it checks ours.
  const n = [
    1167.0521452767, -724213.16703206, -17.073846940092, 12020.82470247, -3232555.0322333, 14.91510861353, -4823.2657361591,
    405113.40542057, -0.23855557567849, 650.17534844798,
  ] as const;
  const saturationMegapascal = (kelvin: number): number => {
    const v = kelvin + n[8] / (kelvin - n[9]);
    const [a, b, c] = [v * v + n[0] * v + n[1], n[2] * v * v + n[3] * v + n[4], n[5] * v * v + n[6] * v + n[7]];
    return ((2 * c) / (-b + Math.sqrt(b * b - 4 * a * c))) ** 4;
  };
  test.each([
    [300, 0.003536589],
    [500, 2.638898],
    [600, 12.34431],
  ])('at %s K, and back', (kelvin, megapascal) => {
    expect(saturationMegapascal(kelvin) / megapascal).toBeCloseTo(1, 6);
    expect(saturationKelvin(saturationMegapascal(kelvin))).toBeCloseTo(kelvin, 6);
  });

  // Wagner and Pruss 1993, J Phys Chem Ref Data 22:783-787, auxiliary equation: an independent formula.
  test('agrees with Wagner and Pruss to 0.001 K between 600 and 1050 hPa', () => {
    const a = [-7.85951783, 1.84408259, -11.7866497, 22.6807411, -15.9618719, 1.80122502];
    const powers = [1, 1.5, 3, 3.5, 4, 7.5];
    const hectopascal = (kelvin: number): number => {
      const tau = 1 - kelvin / 647.096;
      const sum = powers.reduce((total, power, i) => total + (a[i] ?? 0) * tau ** power, 0);
      return 220_640 * Math.exp((647.096 / kelvin) * sum);
    };
    for (let kelvin = 359; kelvin <= 374; kelvin += 0.5) {
      expect(Math.abs(boilingCelsius(hectopascal(kelvin)) + 273.15 - kelvin)).toBeLessThan(0.001);
    }
  });
});

/** US Standard Atmosphere 1976 and IAPWS-IF97 together, worked out beforehand. */
describe('boiling point by height', () => {
  test.each([
    [0, 1013.25, 99.974, 211.95],
    [150, 995.36, 99.476, 211.06],
    [300, 977.73, 98.977, 210.16],
    [500, 954.61, 98.312, 208.96],
    [750, 926.34, 97.481, 207.47],
    [1000, 898.75, 96.649, 205.97],
    [1250, 871.82, 95.816, 204.47],
    [1500, 845.56, 94.983, 202.97],
    [1750, 819.94, 94.149, 201.47],
    [2000, 794.95, 93.315, 199.97],
    [2500, 746.83, 91.645, 196.96],
    [3000, 701.09, 89.972, 193.95],
  ])('%s m', (metres, hectopascal, celsius, fahrenheit) => {
    expect(standardPressure(metres)).toBeCloseTo(hectopascal, 2);
    expect(boilingCelsius(standardPressure(metres))).toBeCloseTo(celsius, 3);
    expect(boilingCelsius(standardPressure(metres)) * 1.8 + 32).toBeCloseTo(fahrenheit, 2);
    // The straight line through them, good to 0.007 °C.
    expect(Math.abs(99.98 - 0.003334 * metres - celsius)).toBeLessThan(0.0075);
  });

  test.each([
    [0, 1013.25, 29.921, 99.97, 211.95],
    [500, 995.08, 29.385, 99.47, 211.04],
    [1000, 977.17, 28.856, 98.96, 210.13],
    [2000, 942.13, 27.821, 97.95, 208.31],
    [3000, 908.12, 26.817, 96.93, 206.48],
    [4000, 875.11, 25.842, 95.92, 204.65],
    [5000, 843.07, 24.896, 94.9, 202.83],
    [6000, 812, 23.978, 93.89, 201],
    [7000, 781.85, 23.088, 92.87, 199.16],
    [8000, 752.62, 22.225, 91.85, 197.33],
    [9000, 724.29, 21.388, 90.83, 195.5],
    [10_000, 696.82, 20.577, 89.81, 193.66],
  ])('%s ft', (feet, hectopascal, inches, celsius, fahrenheit) => {
    const pressure = standardPressure(feet * METRES_PER_FOOT);
    expect(pressure).toBeCloseTo(hectopascal, 1);
    expect(pressure / HECTOPASCAL_PER_INCH).toBeCloseTo(inches, 2);
    expect(Math.abs(boilingCelsius(pressure) - celsius)).toBeLessThan(0.0051);
    expect(Math.abs(boilingCelsius(pressure) * 1.8 + 32 - fahrenheit)).toBeLessThan(0.0051);
  });
});

/**
 * As a table for thermometer checks prints it: feet, kPa by the US Standard Atmosphere, °C, °F, and the quick rule of
 * 212 °F less 1 °F for every 550 ft, which a training page gives and nothing here uses.
 */
test.each([
  [0, 101.33, 99.97, 212, 212],
  [500, 99.51, 99.47, 211, 211.1],
  [1000, 97.72, 98.96, 210.1, 210.2],
  [2000, 94.21, 97.95, 208.3, 208.4],
  [3000, 90.81, 96.93, 206.5, 206.5],
  [4000, 87.51, 95.92, 204.7, 204.7],
  [5000, 84.31, 94.9, 202.8, 202.9],
  [5280, 83.43, 94.62, 202.3, 202.4],
  [6000, 81.2, 93.89, 201, 201.1],
  [7000, 78.19, 92.87, 199.2, 199.3],
  [8000, 75.26, 91.85, 197.3, 197.5],
  [10_000, 69.68, 89.81, 193.7, 193.8],
])('%s ft: %s kPa, %s °C, %s °F; %s °F by the quick rule', (feet, kilopascal, celsius, fahrenheit, quick) => {
  const pressure = standardPressure(feet * METRES_PER_FOOT);
  expect(Math.abs(pressure / 10 - kilopascal)).toBeLessThan(0.0055);
  expect(Math.abs(boilingCelsius(pressure) - celsius)).toBeLessThan(0.0055);
  expect(Math.abs(boilingCelsius(pressure) * 1.8 + 32 - fahrenheit)).toBeLessThan(0.055);
  expect(Math.abs(212 - feet / 550 - quick)).toBeLessThan(0.055);
});

test.each([
  [29.92, 212],
  [28, 208.6],
  [26, 205],
  [25, 203],
  [24, 201],
])('by a barometer of %s inHg: %s °F', (inches, fahrenheit) => {
  const boils = boilingCelsius(inches * HECTOPASCAL_PER_INCH) * 1.8 + 32;
  expect(Math.abs(boils - fahrenheit)).toBeLessThan(0.06);
});

test.each([
  [700, 89.932],
  [750, 91.758],
  [800, 93.485],
  [850, 95.125],
  [900, 96.687],
  [950, 98.178],
  [980, 99.042],
  [1000, 99.606],
  [1013.25, 99.974],
  [1030, 100.434],
  [1050, 100.976],
])('boiling point at %s hPa', (hectopascal, celsius) => {
  expect(boilingCelsius(hectopascal)).toBeCloseTo(celsius, 3);
});

test.each([
  [1013.25, 0.0276],
  [800, 0.0336],
])('a hectopascal at %s hPa moves it by %s °C', (hectopascal, kelvin) => {
  const moved = boilingCelsius(hectopascal + 0.5) - boilingCelsius(hectopascal - 0.5);
  expect(Math.abs(moved - kelvin)).toBeLessThan(0.0001);
});

test('a sea-level pressure of 1005 hPa at 1600 m is 828.43 hPa there: 94.428 °C, not 99.745', () => {
  const air: Air = { from: 'weather report', seaLevelHectopascal: 1005, metres: 1600 };
  expect(stationPressure(air)).toEqual({ kind: 'known', hectopascal: expect.closeTo(828.43, 2) });
  expect(boilingCelsius(828.43)).toBeCloseTo(94.428, 3);
  expect(boilingCelsius(1005)).toBeCloseTo(99.745, 3);
  expect(read(air, '°C')).toEqual({ hundredths: 9440, unit: '°C' });
  expect(stationPressure({ from: 'barometer', hectopascal: 1005, metres: 1600 }).kind).toBe('undetermined');
});

// Bridgeman and Aldrich 1964, constants as listed by NIST, bar and kelvin; and an often copied set, half a degree off.
describe('simpler formulas, which are not what we do', () => {
  const antoine = (a: number, b: number, c: number, hectopascal: number) => b / (a - Math.log10(hectopascal / 1000)) - c - 273.15;
  test.each([0, 1000, 2000, 3000, 4000])('Antoine is 0.025 K high at %s m', (metres) => {
    const pressure = standardPressure(metres);
    const high = antoine(5.08354, 1663.125, -45.622, pressure) - boilingCelsius(pressure);
    expect(Math.abs(high - 0.025)).toBeLessThan(0.01);
  });
  test('the copied set reads 100.45 °C at sea level', () => {
    expect(antoine(4.6543, 1435.264, -64.848, 1013.25)).toBeCloseTo(100.45, 2);
  });
});

test.each([
  [0, 212],
  [5000, 202.8],
  [5280, 202.3],
  [10_000, 193.7],
])('what a thermometer should read in boiling water at %s ft', (feet, fahrenheit) => {
  const reads = { hundredths: Math.round(fahrenheit * 100), unit: '°F' };
  expect(read({ from: 'height', metres: feet * METRES_PER_FOOT }, '°F')).toEqual(reads);
});

const aMileUp: Air = { from: 'height', metres: 5280 * METRES_PER_FOOT };

describe('FDA Food Code 4-203.11: food thermometers to ± 2 °F or ± 1 °C', () => {
  test.each([
    ['34.1 °F in ice water', 34.1, icePoint('°F'), 'missed'],
    ['34.0 °F in ice water', 34, icePoint('°F'), 'met'],
    ['1.0 °C in ice water', 1, icePoint('°C'), 'met'],
    ['-1.01 °C in ice water', -1.01, icePoint('°C'), 'missed'],
    ['203.5 °F in boiling water at 5280 ft', 203.5, read(aMileUp, '°F'), 'met'],
  ] as const)('%s', (_case, observed, expected, kind) => {
    const { hundredths, unit } = expected;
    const tolerance = foodThermometerTolerance[unit] / 100;
    expect(judgeCheck({ expected: hundredths / 100, observed, tolerance, unit }).kind).toBe(kind);
  });
});
