import { scaled } from '../quantity/decimal';
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

/**
 * Saturation temperature of water (K) at an absolute pressure (MPa): IAPWS-IF97 backward equation, 611 Pa to 22.064
 * MPa.
 */
export function saturationKelvin(megapascal: number): number {
  const beta = megapascal ** 0.25;
  const e = beta ** 2 + N[3] * beta + N[6];
  const f = N[1] * beta ** 2 + N[4] * beta + N[7];
  const g = N[2] * beta ** 2 + N[5] * beta + N[8];
  const d = (2 * g) / (-f - Math.sqrt(f ** 2 - 4 * e * g));
  return (N[10] + d - Math.sqrt((N[10] + d) ** 2 - 4 * (N[9] + N[10] * d))) / 2;
}

/** Pressure (hPa) at a height (m) in the US Standard Atmosphere 1976, up to 11 000 m. */
export const standardPressure = (metres: number): number => 1013.25 * (1 - (0.0065 * metres) / 288.15) ** 5.255876;

/**
 * Where water boils, in °C. From the height alone it is good to about ± 0.6 °C, since weather moves the pressure;
 * with a barometer to 0.03 °C. Prefer the ice point.
 * @param hectopascal absolute pressure at the place, not reduced to sea level
 */
export const boilingCelsius = (hectopascal: number): number => saturationKelvin(hectopascal / 10_000) - 273.15;

/** What a thermometer should read in boiling water at a height in metres, to the tenth of a degree. */
export function boilingPointAt(metres: number, unit: TemperatureUnit): Degrees {
  if (!(metres >= -430 && metres <= 9000)) throw new RangeError(`${metres} m is not the height of a shop`);
  const celsius = boilingCelsius(standardPressure(metres));
  const value = unit === '°C' ? celsius : celsius * 1.8 + 32;
  return { hundredths: (scaled(Number(value.toFixed(1)), 1) ?? NaN) * 10, unit };
}

/** The ice point is the same at any height. */
export const icePoint = (unit: TemperatureUnit): Degrees => ({ hundredths: unit === '°C' ? 0 : 3200, unit });
