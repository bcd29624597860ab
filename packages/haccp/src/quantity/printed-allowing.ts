import { boundOf } from './bound';
import { STEPS } from './convert-degrees';
import { degreesOf, printedIn } from './quantities';
import type { Quantity } from './quantity';
import type { PrintedTemperature, TemperatureUnit } from './temperature';

/**
 * The figure a reading is really compared with: raised by the error of the thermometer, or lowered where it is below
 * nothing, and rounded to the stricter side. @param by on the common scale
 */
export function printedAllowing(printed: PrintedTemperature, unit: TemperatureUnit, by: number): Quantity {
  if (by === 0) return printedIn(printed, unit);
  const exact = (boundOf(printed)[unit] + by) / STEPS[unit];
  const hundredths = (by > 0 ? Math.ceil(exact) : Math.floor(exact)) + (unit === '°F' ? 3200 : 0);
  return degreesOf({ hundredths, unit });
}
