import { onCommonScale } from './convert-degrees';
import type { Degrees, PrintedTemperature } from './temperature';

/** A printed figure on the common scale, once per unit of the readings. */
export type Bound = { '°F': number; '°C': number };

/** A reading is compared with the figure printed in its own unit; without such a figure the other is converted. */
export function boundOf(printed: PrintedTemperature): Bound {
  const fahrenheit = printed['°F'];
  const celsius = printed['°C'];
  const inFahrenheit = fahrenheit === undefined ? undefined : onCommonScale({ hundredths: fahrenheit, unit: '°F' });
  const inCelsius = celsius === undefined ? undefined : onCommonScale({ hundredths: celsius, unit: '°C' });
  return { '°F': inFahrenheit ?? inCelsius ?? NaN, '°C': inCelsius ?? inFahrenheit ?? NaN };
}

/** Distance above (+) or below (−) the bound of the reading's own unit, on the common scale. Exact. */
export const above = (reading: Degrees, bound: Bound): number =>
  reading.unit === '°F' ? (reading.hundredths - 3200) * 5 - bound['°F'] : reading.hundredths * 9 - bound['°C'];

/** Colder in both units: the order may not depend on the unit of a reading. */
export function isColder(one: PrintedTemperature, other: PrintedTemperature): boolean {
  const [a, b] = [boundOf(one), boundOf(other)];
  return a['°F'] < b['°F'] && a['°C'] < b['°C'];
}

/** @param by on the common scale */
export const raised = (bound: Bound, by: number): Bound => ({ '°F': bound['°F'] + by, '°C': bound['°C'] + by });
