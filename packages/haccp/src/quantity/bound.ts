import { decimalText } from './decimal';
import { onCommonScale, formatConverted } from './convert-degrees';
import type { Degrees, PrintedTemperature, TemperatureUnit } from './temperature';

/** A printed figure ready to be compared: on the common scale, once for readings in °F and once for readings in °C. */
export type Bound = { '°F': number; '°C': number };

/** A reading is compared with the figure printed in its own unit; only where that is not printed is it converted. */
export function boundOf(printed: PrintedTemperature): Bound {
  const fahrenheit = printed['°F'];
  const celsius = printed['°C'];
  const inFahrenheit = fahrenheit === undefined ? undefined : onCommonScale({ hundredths: fahrenheit, unit: '°F' });
  const inCelsius = celsius === undefined ? undefined : onCommonScale({ hundredths: celsius, unit: '°C' });
  return { '°F': inFahrenheit ?? inCelsius ?? NaN, '°C': inCelsius ?? inFahrenheit ?? NaN };
}

/** How far a reading lies above (+) or below (−) the bound of its own unit, on the common scale. Exact. */
export const above = (reading: Degrees, bound: Bound): number =>
  reading.unit === '°F' ? (reading.hundredths - 3200) * 5 - bound['°F'] : reading.hundredths * 9 - bound['°C'];

/** Colder in both units, so that a reading in either is judged the same way. */
export function isColder(one: PrintedTemperature, other: PrintedTemperature): boolean {
  const [a, b] = [boundOf(one), boundOf(other)];
  return a['°F'] < b['°F'] && a['°C'] < b['°C'];
}

/** A bound higher by so much on the common scale. */
export const raised = (bound: Bound, by: number): Bound => ({ '°F': bound['°F'] + by, '°C': bound['°C'] + by });

/** The figure in one unit: as printed, or converted for reading where the source does not print that unit. */
export function formatPrinted(printed: PrintedTemperature, unit: TemperatureUnit): string {
  const figure = printed[unit];
  if (figure !== undefined) return `${decimalText(figure, 2)} ${unit}`;
  const other = unit === '°F' ? '°C' : '°F';
  const otherFigure = printed[other];
  return otherFigure === undefined ? 'no figure' : formatConverted({ hundredths: otherFigure, unit: other }, unit);
}

/** The figure in every unit its source prints: "160 °F (71.1 °C)". */
export function formatBoth(printed: PrintedTemperature): string {
  if (printed['°F'] === undefined) return formatPrinted(printed, '°C');
  if (printed['°C'] === undefined) return formatPrinted(printed, '°F');
  return `${formatPrinted(printed, '°F')} (${formatPrinted(printed, '°C')})`;
}
