import type { Phrase } from '../limits/verdict';
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

/** A length of time to the minute, for estimates: "about 3 h 1 min". */
export const aboutTime = (milliseconds: number): Phrase =>
  Math.abs(milliseconds) < 60_000
    ? { code: 'less-than-a-minute' }
    : { code: 'about-time', figures: { time: timeOf(Math.round(milliseconds / 60_000) * 60_000) } };
