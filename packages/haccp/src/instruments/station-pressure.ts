import { standardPressure } from './boiling-point';

/**
 * What is known of the air where the water boils. Weather services and most house barometers give a pressure reduced to
 * sea level: taken as it is, 1005 hPa at 1600 m would put the boiling point 5.3 °C too high.
 */
export type Air =
  | { from: 'barometer'; hectopascal: number; metres?: number }
  | { from: 'weather report'; seaLevelHectopascal: number; metres: number }
  | { from: 'height'; metres: number };

export type StationPressure = { kind: 'known'; hectopascal: number } | { kind: 'undetermined'; because: string; next: string };

const LOWEST_METRES = -430;
const HIGHEST_METRES = 9000;
const LEAST_HECTOPASCAL = 300;
const MOST_HECTOPASCAL = 1100;
/** Weather moves the pressure by some 20 hPa either way; twice that is another height, or another kind of pressure. */
const WEATHER = 40;

/** The absolute pressure at the place, hPa; undetermined where the figures cannot be, or contradict one another. */
export function stationPressure(air: Air): StationPressure {
  const metres = air.metres ?? 0;
  if (!(metres >= LOWEST_METRES && metres <= HIGHEST_METRES)) {
    return undetermined(`${metres} m is not the height of a shop.`, 'Enter the height above the sea.');
  }
  const hectopascal = pressureOf(air);
  if (!(hectopascal >= LEAST_HECTOPASCAL && hectopascal <= MOST_HECTOPASCAL)) {
    return undetermined('That is no pressure of the air where people work.', 'Enter it in hPa: 300 to 1100.');
  }
  const usual = standardPressure(metres);
  if (air.metres === undefined || Math.abs(hectopascal - usual) <= WEATHER) return { kind: 'known', hectopascal };
  const [read, expected] = [hectopascal.toFixed(0), usual.toFixed(0)];
  const because = `${read} hPa cannot be at ${metres} m, where about ${expected} hPa are usual.`;
  if (hectopascal < usual) return undetermined(because, 'Check the height and the barometer.');
  const next = 'Enter it as a weather report, or read the station pressure.';
  return undetermined(`${because} It is probably reduced to sea level.`, next);
}

/** Reduced pressure back up to the place: × (1 − 0.0065 h ÷ 288.15)^5.255876. */
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

const undetermined = (because: string, next: string): StationPressure => ({ kind: 'undetermined', because, next });
