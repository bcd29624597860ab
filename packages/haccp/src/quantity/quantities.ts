import type { Figures, Phrase } from '../limits/verdict';
import { formatConverted } from './convert-degrees';
import { decimalText } from './decimal';
import { divide, type Rounding } from './divide';
import type { Quantity, QuantityUnit } from './quantity';
import type { Degrees, PrintedTemperature, TemperatureUnit } from './temperature';

/** A length of time as a figure. */
export const timeOf = (milliseconds: number): Quantity => ({ value: String(Math.abs(milliseconds)), unit: 'ms' });

/** A temperature as it was read. */
export const degreesOf = ({ hundredths, unit }: Degrees): Quantity => ({ value: decimalText(hundredths, 2), unit });

/** An exact count of last decimal places, usually of thousandths, as a figure of its unit. */
export const amountOf = (count: number | bigint, unit: QuantityUnit, decimals = 3): Quantity => ({
  value: decimalText(count, decimals),
  unit,
});

/** How far two figures of one unit lie apart, never with a sign: a difference of two pH is a plain number. */
export const differenceOf = (count: number | bigint, unit: QuantityUnit, decimals = 3): Quantity =>
  amountOf(count < 0 ? -count : count, unit === 'pH' || unit === 'aw' ? 'ratio' : unit, decimals);

/** A difference on the common scale in degrees of one unit. */
export const degreesApart = (steps: number, unit: TemperatureUnit, rounding: Rounding): Quantity =>
  amountOf(divide(BigInt(Math.abs(steps)), unit === '°C' ? 9n : 5n, rounding), unit, 2);

/** A printed figure in one unit: as printed, or converted for reading where the source does not print that unit. */
export function printedIn(printed: PrintedTemperature, unit: TemperatureUnit): Quantity {
  const figure = printed[unit];
  if (figure !== undefined) return degreesOf({ hundredths: figure, unit });
  const other = unit === '°F' ? '°C' : '°F';
  const converted = formatConverted({ hundredths: printed[other] as number, unit: other }, unit);
  return { value: converted.replace(` ${unit}`, ''), unit };
}

const MINUTE = 60_000;
const toTheMinute = (milliseconds: number): Quantity => timeOf(Math.round(milliseconds / MINUTE) * MINUTE);

/** A length of time to the minute, for estimates: "about 3 h 1 min". */
export const aboutTime = (milliseconds: number): Phrase =>
  Math.abs(milliseconds) < MINUTE ? { code: 'less-than-a-minute' } : { code: 'about-time', figures: { time: toTheMinute(milliseconds) } };

/** How long it still takes, to the minute; that there is a figure `soon` says that it is less than one. */
export function leftOf(milliseconds: number | undefined): Figures {
  if (milliseconds === undefined) return {};
  return milliseconds < MINUTE ? { soon: 1 } : { left: toTheMinute(milliseconds) };
}
