import type { Doubt } from '../thermal/doubt';
import { sayReadings } from '../thermal/curve';

const SAID: Record<Doubt, string> = {
  spike: 'far from both neighbours, which agree',
  'out of the product': 'fallen faster than a core can: the probe may be out of the product',
  'power-up': 'what a probe shows before it has measured',
  'hotter than a core': 'hotter than a moist core gets: is it °F?',
};

/** Readings in doubt, by their kind. They stay in the curve and can only count against the lot. */
export const sayDoubted = (doubted: Partial<Record<Doubt, number>>): string[] =>
  (Object.keys(SAID) as Doubt[]).flatMap((doubt) => {
    const count = doubted[doubt];
    return count === undefined ? [] : [`${sayReadings(count)} in doubt: ${SAID[doubt]}.`];
  });
