import { sayConverted } from './convert-degrees';
import { decimalText } from './decimal';
import type { Quantity } from './quantity';
import type { Degrees, PrintedTemperature, TemperatureUnit } from './temperature';

/** A length of time as a figure. */
export const timeOf = (milliseconds: number): Quantity => ({ value: String(Math.abs(milliseconds)), unit: 'ms' });

/** A temperature as it was read. */
export const degreesOf = ({ hundredths, unit }: Degrees): Quantity => ({ value: decimalText(hundredths, 2), unit });

/** A printed figure in one unit: as printed, or converted for reading where the source does not print that unit. */
export function printedIn(printed: PrintedTemperature, unit: TemperatureUnit): Quantity {
  const figure = printed[unit];
  if (figure !== undefined) return degreesOf({ hundredths: figure, unit });
  const other = unit === '°F' ? '°C' : '°F';
  const converted = sayConverted({ hundredths: printed[other] as number, unit: other }, unit);
  return { value: converted.replace(` ${unit}`, ''), unit };
}
