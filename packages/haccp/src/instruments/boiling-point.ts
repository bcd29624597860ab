import type { Degrees, TemperatureUnit } from '../quantity/temperature';

/** IAPWS-IF97, region 4 (saturation line), coefficients n1 to n10 of the backward equation. */
const N = [
  NaN,
  1167.0521452767,
  -724213.16703206,
  -17.073846940092,
  12020.82470247,
  -3232555.0322333,
  14.91510861353,
  -4823.2657361591,
  405113.40542057,
  -0.23855557567849,
  650.17534844798,
] as const;

/** K at an absolute pressure (MPa): IAPWS-IF97 backward equation, 611 Pa to 22.064 MPa. */
export function saturationKelvin(megapascal: number): number {
  const beta = megapascal ** 0.25;
  const e = beta ** 2 + N[3] * beta + N[6];
  const f = N[1] * beta ** 2 + N[4] * beta + N[7];
  const g = N[2] * beta ** 2 + N[5] * beta + N[8];
  const d = (2 * g) / (-f - Math.sqrt(f ** 2 - 4 * e * g));
  return (N[10] + d - Math.sqrt((N[10] + d) ** 2 - 4 * (N[9] + N[10] * d))) / 2;
}

/** hPa at a height (m) in the US Standard Atmosphere 1976, up to 11 000 m. */
export const standardPressure = (metres: number): number => 1013.25 * (1 - (0.0065 * metres) / 288.15) ** 5.255876;

/** °C at an absolute pressure (hPa): 99.974 °C at 1013.25 hPa on the scale of 1990, not 100. */
export const boilingCelsius = (hectopascal: number): number => saturationKelvin(hectopascal / 10_000) - 273.15;

/** The same at any height, so it needs no barometer: preferred. */
export const icePoint = (unit: TemperatureUnit): Degrees => ({ hundredths: unit === '°C' ? 0 : 3200, unit });
