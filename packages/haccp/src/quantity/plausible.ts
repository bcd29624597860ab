import { above, boundOf } from './bound';
import type { Degrees, PrintedTemperature } from './temperature';

/** What a person would expect at this step, both ends included. */
export type PlausibleRange = { min: PrintedTemperature; max: PrintedTemperature };

/**
 * True when the number makes no sense in its own unit but would in the other: 151.5 typed where °C is set.
 * A reason to ask, never to change the number.
 */
export function looksLikeOtherUnit(entered: Degrees, plausible: PlausibleRange): boolean {
  const other: Degrees = { hundredths: entered.hundredths, unit: entered.unit === '°C' ? '°F' : '°C' };
  return !isPlausible(entered, plausible) && isPlausible(other, plausible);
}

export const isPlausible = (entered: Degrees, { min, max }: PlausibleRange): boolean =>
  above(entered, boundOf(min)) >= 0 && above(entered, boundOf(max)) <= 0;
