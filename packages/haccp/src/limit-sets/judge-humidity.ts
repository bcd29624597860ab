import { above, boundOf } from '../quantity/bound';
import { degreesOf, printedIn, timeOf } from '../quantity/quantities';
import type { Degrees } from '../quantity/temperature';
import type { Found, Verdict } from '../limits/verdict';
import { both } from './printed';
import { fsisCooking } from './sources';

export type HumidityOption = 1 | 2 | 3 | 4;

/** Milliseconds; `humid` in all, by steam, sealed oven or 90 % relative humidity. */
export type HumidCook = { cooking: number; humid: number; endpoint: Degrees };

const HOUR = 3_600_000;
export const humiditySource = fsisCooking('Table 1, p. 26, relative humidity');
/** Steam and a sealed oven are for product that ends at or above this, and printed for rows from here on. */
export const WARM = both(145, 62.8);
const isWholeTime = (time: number) => Number.isSafeInteger(time) && time >= 0;

/**
 * Options 1 and 2 ask for half of the cooking time, option 3 for a quarter, each at least 1 h and only for a cook of at
 * least 1 h; option 4 for all of it. Cooking time runs from going into the heated oven until the lethality is met.
 */
export function judgeHumidity(option: HumidityOption, cook: HumidCook): Verdict {
  const { cooking, humid, endpoint: reached } = cook;
  if (!isWholeTime(cooking) || !isWholeTime(humid) || cooking === 0 || !Number.isFinite(reached.hundredths)) {
    return { kind: 'undetermined', finding: 'humidity-unrecorded', figures: {}, notes: [] };
  }
  const seen = { humid: timeOf(humid), cooking: timeOf(cooking), reached: degreesOf(reached) };
  const needed = humidNeeded(option, cooking);
  const miss = whyNot(option, cook, needed);
  const { finding, figures } = miss ?? {
    finding: 'humidity-long-enough',
    figures: { needed: timeOf(needed), spare: timeOf(humid - needed) },
  };
  return { kind: miss ? 'missed' : 'met', finding, figures: { ...seen, ...figures }, measure: 'humid-cook', notes: [] };
}

function whyNot(option: HumidityOption, { cooking, humid, endpoint: reached }: HumidCook, needed: number): Found | undefined {
  if (option <= 2 && above(reached, boundOf(WARM)) < 0) {
    return { finding: 'humidity-endpoint-too-cold', figures: { least: printedIn(WARM, reached.unit) } };
  }
  if (option <= 3 && cooking < HOUR) return { finding: 'humidity-cook-too-short', figures: { least: timeOf(HOUR) } };
  return humid < needed ? { finding: 'humidity-too-short', figures: { needed: timeOf(needed) } } : undefined;
}

/** Milliseconds, rounded up; `cooking` as in `judgeHumidity`. */
export function humidNeeded(option: HumidityOption, cooking: number): number {
  if (option === 4) return cooking;
  return Math.max(Math.ceil(cooking / (option === 3 ? 4 : 2)), HOUR);
}
