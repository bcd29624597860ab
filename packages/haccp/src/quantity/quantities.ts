import type { Figures, Phrase } from '../limits/verdict';
import { formatConverted, STEPS } from './convert-degrees';
import { decimalText } from './decimal';
import { divide, type Rounding } from './divide';
import type { Quantity, QuantityUnit } from './quantity';
import type { Degrees, PrintedTemperature, TemperatureUnit } from './temperature';

export const timeOf = (milliseconds: number): Quantity => ({ value: String(Math.abs(milliseconds)), unit: 'ms' });

export const degreesOf = ({ hundredths, unit }: Degrees): Quantity => ({ value: decimalText(hundredths, 2), unit });

export const asGiven = (value: number, unit: QuantityUnit): Quantity => ({ value: String(value), unit });

export const amountOf = (count: number | bigint, unit: QuantityUnit, decimals = 3): Quantity => ({
  value: decimalText(count, decimals),
  unit,
});

/** Without a sign; a difference of two pH is a plain number. */
export const differenceOf = (count: number | bigint, unit: QuantityUnit, decimals = 3): Quantity =>
  amountOf(count < 0 ? -count : count, unit === 'pH' || unit === 'aw' ? 'ratio' : unit, decimals);

/** @param steps on the common scale */
export const degreesApart = (steps: number, unit: TemperatureUnit, rounding: Rounding): Quantity =>
  amountOf(divide(BigInt(Math.abs(steps)), BigInt(STEPS[unit]), rounding), unit, 2);

/** As printed; converted for reading only where the source does not print the unit. */
export function printedIn(printed: PrintedTemperature, unit: TemperatureUnit): Quantity {
  const figure = printed[unit];
  if (figure !== undefined) return degreesOf({ hundredths: figure, unit });
  const other = unit === '°F' ? '°C' : '°F';
  const converted = formatConverted({ hundredths: printed[other] as number, unit: other }, unit);
  return { value: converted.replace(` ${unit}`, ''), unit };
}

/** "145 °F", for reading. */
export const formatPrinted = (printed: PrintedTemperature, unit: TemperatureUnit): string => `${printedIn(printed, unit).value} ${unit}`;

const MINUTE = 60_000;
const toTheMinute = (milliseconds: number): Quantity => timeOf(Math.round(milliseconds / MINUTE) * MINUTE);

export const aboutTime = (milliseconds: number): Phrase =>
  Math.abs(milliseconds) < MINUTE ? { code: 'less-than-a-minute' } : { code: 'about-time', figures: { time: toTheMinute(milliseconds) } };

/** `soon` stands for less than a minute. */
export function leftOf(milliseconds: number | undefined): Figures {
  if (milliseconds === undefined) return {};
  return milliseconds < MINUTE ? { soon: 1 } : { left: toTheMinute(milliseconds) };
}
