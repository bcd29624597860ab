import type { Why, WhyCode } from '../calculators/cannot';
import type { Quantity } from '../quantity/quantity';
import { standardPressure } from './boiling-point';
import { asGiven } from '../quantity/quantities';

/**
 * Weather services and most house barometers reduce the pressure to sea level: taken as it is, 1005 hPa at 1600 m puts
 * the boiling point 5.3 °C too high.
 */
export type Air =
  | { from: 'barometer'; hectopascal: number; metres?: number }
  | { from: 'weather report'; seaLevelHectopascal: number; metres: number }
  | { from: 'height'; metres: number };

export type StationPressure = { kind: 'known'; hectopascal: number } | { kind: 'undetermined'; why: Why[] };

const LOWEST_METRES = -430;
const HIGHEST_METRES = 9000;
const LEAST_HECTOPASCAL = 300;
const MOST_HECTOPASCAL = 1100;
/**
 * hPa. Weather moves the pressure by some 20 hPa either way; twice that is another height, or another kind of pressure.
 */
const WEATHER = 40;

/** Absolute pressure at the place, hPa; undetermined for impossible or contradictory figures. */
export function stationPressure(air: Air): StationPressure {
  const metres = air.metres ?? 0;
  if (!(metres >= LOWEST_METRES && metres <= HIGHEST_METRES)) {
    return undetermined({ code: 'height-of-no-shop', figures: { height: asGiven(metres, 'm') } }, 'enter-the-height');
  }
  const hectopascal = pressureOf(air);
  if (!(hectopascal >= LEAST_HECTOPASCAL && hectopascal <= MOST_HECTOPASCAL)) {
    return undetermined({ code: 'pressure-not-of-air' }, 'enter-in-hectopascal');
  }
  const usual = standardPressure(metres);
  if (air.metres === undefined || Math.abs(hectopascal - usual) <= WEATHER) return { kind: 'known', hectopascal };
  const figures = { read: pressure(hectopascal), usual: pressure(usual), height: asGiven(metres, 'm') } as const;
  const notThere: Why = { code: 'pressure-not-there', figures };
  return hectopascal < usual ? undetermined(notThere, 'check-height-and-barometer') : undetermined(notThere, 'as-weather-report');
}

/** Sea-level pressure at the place: × (1 − 0.0065 h ÷ 288.15)^5.255876. */
function pressureOf(air: Air): number {
  switch (air.from) {
    case 'barometer':
      return air.hectopascal;
    case 'weather report':
      return (air.seaLevelHectopascal * standardPressure(air.metres)) / standardPressure(0);
    case 'height':
      return standardPressure(air.metres);
  }
}

const pressure = (hectopascal: number): Quantity => ({ value: hectopascal.toFixed(0), unit: 'hPa' });

const undetermined = (because: Why, next: WhyCode): StationPressure => ({ kind: 'undetermined', why: [because, { code: next }] });
