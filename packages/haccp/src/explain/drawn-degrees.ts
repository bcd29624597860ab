import { convertDegrees } from '../quantity/convert-degrees';
import type { Degrees, PrintedTemperature, TemperatureUnit } from '../quantity/temperature';

/** For the eye, never to judge by. */
export function drawnDegrees(temperature: Degrees, unit: TemperatureUnit): number {
  const { numerator, denominator } = convertDegrees(temperature, unit);
  return numerator / denominator / 100;
}

/** Converted only where the source does not print the unit. */
export function drawnFigure(printed: PrintedTemperature, unit: TemperatureUnit): number {
  const other = unit === '°F' ? '°C' : '°F';
  const own = printed[unit];
  return own === undefined ? drawnDegrees({ hundredths: printed[other] as number, unit: other }, unit) : own / 100;
}
