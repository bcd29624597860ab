import type { Degrees, TemperatureUnit } from '../quantity/temperature';
import type { LineDrawn } from './drawing';

export function withError(line: LineDrawn, error: Degrees | undefined, unit: TemperatureUnit): LineDrawn {
  const by = drawnError(error, unit);
  return by === 0 ? line : { ...line, band: [line.value - by, line.value + by] };
}

export const drawnError = (error: Degrees | undefined, unit: TemperatureUnit): number =>
  error ? (Math.abs(error.hundredths) / 100) * (error.unit === unit ? 1 : unit === '°F' ? 1.8 : 1 / 1.8) : 0;
