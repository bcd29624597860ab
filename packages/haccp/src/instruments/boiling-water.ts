import type { Why } from '../calculators/cannot';
import { scaled } from '../quantity/decimal';
import type { Degrees, TemperatureUnit } from '../quantity/temperature';
import { boilingCelsius } from './boiling-point';
import { stationPressure, type Air } from './station-pressure';

export type BoilingWater = { kind: 'known'; reads: Degrees; goodTo: Degrees; hectopascal: number } | { kind: 'undetermined'; why: Why[] };

/** Hundredths °C, rounded up in °F: a barometer good to 1 hPa; by height the weather is unknown. */
const BY_BAROMETER = { '°C': 3, '°F': 6 };
const BY_HEIGHT = { '°C': 60, '°F': 108 };

/** To the tenth of a degree. A weather report is no better than the height it was converted with. */
export function boilingWater(air: Air, unit: TemperatureUnit): BoilingWater {
  const pressure = stationPressure(air);
  if (pressure.kind === 'undetermined') return pressure;
  const celsius = boilingCelsius(pressure.hectopascal);
  const tenths = scaled(Number((unit === '°C' ? celsius : celsius * 1.8 + 32).toFixed(1)), 1) as number;
  const goodTo = (air.from === 'barometer' ? BY_BAROMETER : BY_HEIGHT)[unit];
  return {
    kind: 'known',
    reads: { hundredths: tenths * 10, unit },
    goodTo: { hundredths: goodTo, unit },
    hectopascal: pressure.hectopascal,
  };
}
