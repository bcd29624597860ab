import { convertDegrees } from '../quantity/convert-degrees';
import type { Degrees, PrintedTemperature, TemperatureUnit } from '../quantity/temperature';

/** A temperature in the unit of a drawing: for the eye, never to judge by. */
export function drawnDegrees(temperature: Degrees, unit: TemperatureUnit): number {
  const { numerator, denominator } = convertDegrees(temperature, unit);
  return numerator / denominator / 100;
}

/** A printed figure in the unit of a drawing; converted only where the source does not print that unit. */
export function drawnFigure(printed: PrintedTemperature, unit: TemperatureUnit): number {
  const other = unit === '°F' ? '°C' : '°F';
  const own = printed[unit];
  return own === undefined ? drawnDegrees({ hundredths: printed[other] as number, unit: other }, unit) : own / 100;
}
