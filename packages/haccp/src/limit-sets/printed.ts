import { scaled } from '../quantity/decimal';
import type { PrintedTemperature } from '../quantity/temperature';

/** A figure in both units its source prints, written in degrees. */
export const both = (fahrenheit: number, celsius: number): PrintedTemperature => ({
  '°F': hundredths(fahrenheit),
  '°C': hundredths(celsius),
});

/** Seconds in a printed time, exactly: "63.3m" is 3798, "16.9s" is 16.9. */
export function printedSeconds(text: string): number {
  const [, figure, unit] = /^(\d+(?:\.\d)?)([ms])$/.exec(text) ?? [];
  const tenths = scaled(Number(figure), 1);
  if (tenths === undefined) throw new RangeError(`"${text}" is not a printed time`);
  return (unit === 'm' ? tenths * 60 : tenths) / 10;
}

function hundredths(value: number): number {
  const count = scaled(value, 2);
  if (count === undefined) throw new RangeError(`${value} is not a printed temperature`);
  return count;
}
