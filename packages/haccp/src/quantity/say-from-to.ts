import { sayPrinted } from './bound';
import type { PrintedTemperature, TemperatureUnit } from './temperature';

/** "130 → 80 °F", "end of cooking → 46.4 °F" */
export function sayFromTo(from: PrintedTemperature | undefined, to: PrintedTemperature, unit: TemperatureUnit): string {
  if (!from) return `end of cooking → ${sayPrinted(to, unit)}`;
  return `${sayPrinted(from, unit).replace(` ${unit}`, '')} → ${sayPrinted(to, unit)}`;
}
