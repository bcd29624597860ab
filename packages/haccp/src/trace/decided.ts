/** One lot or delivery that a hold covers, in femtograms. */
export type HeldProduct = {
  /** What went in, less what left it with a record of its own: losses, samples, waste. */
  there: bigint;
  /** Condemned or sent back by decisions that do not speak for this hold: it is no longer there to be decided. */
  gone: bigint;
  /** What the decisions that speak for this hold are about. */
  decided: bigint;
  /** What of it was taken into other lots, by their id. The hold travels with it. */
  taken: readonly { into: string; mass: bigint }[];
};

export type Decided = {
  atStake: bigint;
  decided: bigint;
  undecided: bigint;
  /** All of it is decided, but for what scales do not agree about; and so is every lot that some of it went into. */
  isCovered: boolean;
};

/** One decision about a held product. `stays`: released or to be reworked; `leaves`: condemned or sent back. */
export type DecisionMade = { mass: bigint; speaksForIt: boolean; becomes: 'stays' | 'leaves' | 'recalled' };

/**
 * What the decisions about a product come to for one hold, in the order in which they were made. What is condemned for
 * another hold alone may be the very product that this one had released, which no weight can tell: it is taken to be, and
 * as much of what stays is undecided.
 */
export function countDecisions(made: readonly DecisionMade[]): Pick<HeldProduct, 'gone' | 'decided'> {
  let [gone, decided, released] = [0n, 0n, 0n];
  for (const { mass, speaksForIt, becomes } of made) {
    if (speaksForIt) {
      decided += mass;
      if (becomes === 'stays') released += mass;
    } else if (becomes === 'leaves') {
      const doubtful = least(mass, released);
      gone += mass;
      decided -= doubtful;
      released -= doubtful;
    }
  }
  return { gone, decided };
}

const nothing: HeldProduct = { there: 0n, gone: 0n, decided: 0n, taken: [] };

/**
 * How much of a held product is decided: decided + undecided = at stake, and nothing is counted twice. Decisions made
 * about a product speak first for what is still in it, then for what was taken out of it. What was taken into another
 * lot is also decided when all of that lot is. A hundredth of the whole may be all of a small lot made from it, so a
 * hundredth that is undecided counts as nothing only where it also is a hundredth of what went there.
 * @param products every lot and delivery the hold has reached, by id; no lot goes into itself
 */
export function decidedOf(products: ReadonlyMap<string, HeldProduct>): (id: string) => Decided {
  const known = new Map<string, Decided>();
  return function decide(id: string): Decided {
    const before = known.get(id);
    if (before) return before;
    const { there, gone, decided, taken } = products.get(id) ?? nothing;
    const atStake = atLeastZero(there - gone);
    const allTaken = sum(taken.map(({ mass }) => mass));
    const open = taken.flatMap(({ into, mass }) => (decide(into).isCovered || mass === 0n ? [] : [mass]));
    const takenOpen = sum(open);

    const within = atLeastZero(atStake - allTaken);
    const openWithin = atLeastZero(within - decided);
    const openElsewhere = atLeastZero(takenOpen - atLeastZero(decided - within));
    const undecided = least(atStake, openWithin + openElsewhere);
    const isCovered = isNegligible(undecided, atStake) && open.every((mass) => isNegligible(openElsewhere, mass));
    const found = { atStake, decided: atStake - undecided, undecided, isCovered };
    known.set(id, found);
    return found;
  };
}

/**
 * Weights taken one by one never add up to the gram, so a hundredth of the whole counts as nothing (common practice, no
 * source).
 */
export const isNegligible = (part: bigint, whole: bigint): boolean => part * 100n <= whole;

const atLeastZero = (mass: bigint): bigint => (mass > 0n ? mass : 0n);
const least = (a: bigint, b: bigint): bigint => (a < b ? a : b);
const sum = (masses: readonly bigint[]): bigint => masses.reduce((total, mass) => total + mass, 0n);
