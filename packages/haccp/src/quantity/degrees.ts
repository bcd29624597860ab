import { scaled } from './decimal';
import type { Degrees, TemperatureUnit } from './temperature';

export function degrees(value: number, unit: TemperatureUnit): Degrees {
  const hundredths = scaled(value, 2);
  if (hundredths === undefined) throw new RangeError(`${value} is not a temperature with at most two decimals`);
  return { hundredths, unit };
}
