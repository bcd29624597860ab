import { above, boundOf } from '../quantity/bound';
import { sayDuration } from '../quantity/duration';
import { sayDegrees } from '../quantity/degrees';
import type { Degrees } from '../quantity/temperature';
import type { Saying } from '../limits/told';
import { both } from './printed';
import { fsisCooking } from './sources';

export type HumidityOption = 1 | 2 | 3 | 4;

/**
 * Milliseconds: the cooking, and how long it was humid in all (steam let in, oven sealed, or 90 % relative humidity).
 */
export type HumidCook = { cooking: number; humid: number; endpoint: Degrees };

const HOUR = 3_600_000;
const source = fsisCooking('Table 1, p. 26, relative humidity');
/** Steam and a sealed oven are for product that ends at or above this. */
const endpoint = boundOf(both(145, 62.8));
const isWholeTime = (time: number) => Number.isSafeInteger(time) && time >= 0;

/**
 * Whether a cook was humid for long enough: options 1 and 2 half of the cooking time, option 3 a quarter of it, each at
 * least 1 h and only for a cook of at least 1 h; option 4 all of it. Cooking time runs from the product's going into
 * the heated oven until the lethality is met.
 */
export function judgeHumidity(option: HumidityOption, cook: HumidCook): Saying {
  const shared = { limit: saidOptions[option], notes: [], source };
  const { cooking, humid } = cook;
  if (!isWholeTime(cooking) || !isWholeTime(humid) || cooking === 0 || !Number.isFinite(cook.endpoint.hundredths)) {
    const because = 'The cooking time, the humid time or the endpoint is not recorded.';
    return {
      ...shared,
      kind: 'undetermined',
      measured: 'nothing usable',
      because,
      next: 'Enter the times and the endpoint.',
    };
  }
  const measured = `${sayDuration(humid)} humid in ${sayDuration(cooking)} of cooking, to ${sayDegrees(cook.endpoint)}`;
  const miss = whyNot(option, cook);
  if (miss) return { ...shared, kind: 'missed', measured, because: miss, next: 'Hold the lot: lethality is not supported.' };
  const spare = humid - humidNeeded(option, cooking);
  return {
    ...shared,
    kind: 'met',
    measured,
    margin: `${sayDuration(spare)} to spare`,
    because: `${sayDuration(humid)} is at least the ${sayDuration(humidNeeded(option, cooking))} needed.`,
  };
}

function whyNot(option: HumidityOption, { cooking, humid, endpoint: reached }: HumidCook): string | undefined {
  if (option <= 2 && above(reached, endpoint) < 0)
    return `Option ${option} is only for an endpoint of at least 145 °F (62.8 °C); it was ${sayDegrees(reached)}.`;
  if (option <= 3 && cooking < HOUR) return `Option ${option} is only for a cooking time of at least 1 h.`;
  const least = humidNeeded(option, cooking);
  return humid < least ? `It was humid for ${sayDuration(humid)}; ${sayDuration(least)} are needed.` : undefined;
}

/** How long it has to be humid, in milliseconds, rounded up; `cooking` as in `judgeHumidity`. */
export function humidNeeded(option: HumidityOption, cooking: number): number {
  if (option === 4) return cooking;
  return Math.max(Math.ceil(cooking / (option === 3 ? 4 : 2)), HOUR);
}

const saidOptions: Record<HumidityOption, string> = {
  1: 'live steam ≥ 50 % of the cooking time or 1 h, whichever is longer; endpoint ≥ 145 °F (62.8 °C)',
  2: 'sealed oven ≥ 50 % of the cooking time or 1 h, whichever is longer; endpoint ≥ 145 °F (62.8 °C)',
  3: 'relative humidity ≥ 90 % for ≥ 25 % of the cooking time or 1 h, whichever is longer',
  4: 'relative humidity 90 % for the whole cooking time',
};
