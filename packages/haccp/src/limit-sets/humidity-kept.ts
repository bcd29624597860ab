import { wordFor } from '../limits/coded';
import type { PlainPhrase } from '../limits/verdict';
import type { EnteredMass } from '../quantity/mass';
import { asGiven, timeOf } from '../quantity/quantities';
import type { TemperatureUnit } from '../quantity/temperature';

const MINUTE = 60_000;

/** `intoOven` and `from` are ISO 8601; minutes in all, so that bursts of steam add up. */
type Timed = { intoOven: string; from: string; minutes: number };
export type HumidityKept =
  | (Timed & { how: 'live steam' | 'sealed oven'; percent?: undefined })
  /** `percent`: the lowest relative humidity while it counts. */
  | (Timed & { how: 'humid for a quarter' | 'humid throughout'; percent: number })
  | { how: 'large piece in a hot oven'; oven: { value: number; unit: TemperatureUnit }; piece: EnteredMass }
  | { how: 'moisture-proof bag' };

/** "live steam, 1 h 50 min in all" */
export function keptPhrase(kept: HumidityKept): PlainPhrase {
  const { code } = wordFor('kept', kept.how);
  if (kept.how === 'moisture-proof bag') return { code };
  if (kept.how === 'large piece in a hot oven') {
    const { oven, piece } = kept;
    return { code, figures: { oven: asGiven(oven.value, oven.unit), piece: asGiven(piece.value, piece.unit) } };
  }
  const time = timeOf(kept.minutes * MINUTE);
  return { code, figures: kept.percent === undefined ? { time } : { time, percent: asGiven(kept.percent, '%') } };
}

/** Epoch ms, where the option is timed. */
export const keptTimes = (kept: HumidityKept): { intoOven: number; from: number } | undefined =>
  'intoOven' in kept ? { intoOven: Date.parse(kept.intoOven), from: Date.parse(kept.from) } : undefined;
