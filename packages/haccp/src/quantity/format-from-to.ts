import { formatPrinted } from './bound';
import type { PrintedTemperature, TemperatureUnit } from './temperature';

/** "130 → 80 °F", "end of cooking → 46.4 °F" */
export function formatFromTo(from: PrintedTemperature | undefined, to: PrintedTemperature, unit: TemperatureUnit): string {
  if (!from) return `end of cooking → ${formatPrinted(to, unit)}`;
  return `${formatPrinted(from, unit).replace(` ${unit}`, '')} → ${formatPrinted(to, unit)}`;
}
