import { formatDuration } from '../quantity/duration';
import type { EnteredMass } from '../quantity/mass';
import type { TemperatureUnit } from '../quantity/temperature';

/** `intoOven` and `from` are ISO 8601; minutes in all, so that bursts of steam add up. */
type Timed = { intoOven: string; from: string; minutes: number };
export type HumidityKept =
  | (Timed & { how: 'live steam' | 'sealed oven'; percent?: undefined })
  /** `percent`: the lowest relative humidity while it counts. */
  | (Timed & { how: 'humid for a quarter' | 'humid throughout'; percent: number })
  | { how: 'large piece in a hot oven'; oven: { value: number; unit: TemperatureUnit }; piece: EnteredMass }
  | { how: 'moisture-proof bag' };

/** "live steam, 1 h 50 min in all" */
export function sayHumidityKept(kept: HumidityKept): string {
  switch (kept.how) {
    case 'live steam':
    case 'sealed oven':
      return `${kept.how}, ${formatDuration(kept.minutes * 60_000)} in all`;
    case 'humid for a quarter':
    case 'humid throughout':
      return `relative humidity at least ${kept.percent} % for ${formatDuration(kept.minutes * 60_000)}`;
    case 'large piece in a hot oven':
      return `a piece of ${kept.piece.value} ${kept.piece.unit}, the oven at least ${kept.oven.value} ${kept.oven.unit}`;
    case 'moisture-proof bag':
      return 'sealed moisture-proof bag';
  }
}

/** "into the oven 7:40 am, humid from 7:50 am"; empty where the option has no moments. */
export const sayHumidityTimes = (kept: HumidityKept, say: (at: number) => string): string =>
  'intoOven' in kept ? `into the oven ${say(Date.parse(kept.intoOven))}, humid from ${say(Date.parse(kept.from))}` : '';
