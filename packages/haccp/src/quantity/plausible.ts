import { above, boundOf } from './bound';
import type { Degrees, PrintedTemperature } from './temperature';

/** Both ends included. */
export type PlausibleRange = { min: PrintedTemperature; max: PrintedTemperature };

/** 151.5 typed where °C is set: a reason to ask, never to change the number. */
export function looksLikeOtherUnit(entered: Degrees, plausible: PlausibleRange): boolean {
  const other: Degrees = { hundredths: entered.hundredths, unit: entered.unit === '°C' ? '°F' : '°C' };
  return !isPlausible(entered, plausible) && isPlausible(other, plausible);
}

export const isPlausible = (entered: Degrees, { min, max }: PlausibleRange): boolean =>
  above(entered, boundOf(min)) >= 0 && above(entered, boundOf(max)) <= 0;
