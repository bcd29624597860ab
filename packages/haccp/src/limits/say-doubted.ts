import type { ClockDoubt } from '../thermal/clock-doubt';
import type { Doubt } from '../thermal/doubt';
import { sayReadings } from '../thermal/curve';

const SAID: Record<Doubt, string> = {
  'rises faster than the piece can': 'risen faster than the core of the piece can',
  'falls faster than the piece can': 'fallen faster than the core of the piece can: the probe may be out of the product',
  'goes on from what was not of the core': 'like the one before, which was not of the core',
  spike: 'far from both neighbours, which agree',
  'power-up': 'what a probe shows before it has measured',
  'hotter than a core': 'hotter than a moist core gets: is it °F?',
};

/** Readings in doubt, by their kind. They stay in the curve and can only count against the lot. */
export const sayDoubted = (doubted: Partial<Record<Doubt, number>>): string[] =>
  (Object.keys(SAID) as Doubt[]).flatMap((doubt) => {
    const count = doubted[doubt];
    return count === undefined ? [] : [`${sayReadings(count)} in doubt: ${SAID[doubt]}.`];
  });

/** Why nothing is met by such a clock. */
export const WRONG_CLOCK: Record<ClockDoubt, string> = {
  'in the future': 'A reading is dated later than it was kept: it cannot have been read yet.',
  'clock reset': 'The clock of the readings jumps by days: it was lost or set anew.',
  'an hour off': 'The clock of the readings jumps by exactly an hour.',
  'out of order': 'A reading came after a later one: one of their times may be wrong.',
};

export const sayClock = (doubts: readonly ClockDoubt[]): string[] => doubts.map((doubt) => WRONG_CLOCK[doubt]);
