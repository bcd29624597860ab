import { foodCode } from '../limit-sets/sources';
import type { Source } from '../limits/source';
import type { TemperatureUnit } from '../quantity/temperature';

/** Hundredths, either way: ± 2 °F, or ± 1 °C where its scale is in °C. */
export const foodThermometerTolerance: Record<TemperatureUnit, number> & { source: Source } = {
  '°F': 200,
  '°C': 100,
  source: foodCode('4-203.11'),
};
