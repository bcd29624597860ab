/** In femtograms. */
export type HeldProduct = {
  /** Less losses, samples and waste, which have a record of their own. */
  there: bigint;
  /** Condemned or sent back for another hold: no longer there to decide. */
  gone: bigint;
  /** By decisions for this hold. */
  decided: bigint;
  /** The hold travels with it into other lots, by their id. */
  taken: readonly { into: string; mass: bigint }[];
};

export type Decided = {
  atStake: bigint;
  decided: bigint;
  undecided: bigint;
  /** Decided within the disagreement of scales, as is every lot that some of it went into. */
  isCovered: boolean;
};

/** `stays`: released or to be reworked; `leaves`: condemned or sent back. */
export type DecisionMade = { mass: bigint; speaksForIt: boolean; becomes: 'stays' | 'leaves' | 'recalled' };

/**
 * @param made in order of time. Condemned for another hold may be the very product that this hold had released; no
 * weight can tell, so it is taken to be, and as much of what stays is undecided.
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
 * decided + undecided = at stake; nothing counts twice. Decisions cover first what is still in a product, then what was
 * taken out, which is decided too when all of its new lot is. A hundredth of the whole may be all of a small lot, so an
 * undecided hundredth is negligible only if it also is one of what went there. @param products every lot and delivery
 * the hold has reached, by id; no lot goes into itself
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

/** Weights taken one by one never add up to the gram (common practice, no source). */
export const isNegligible = (part: bigint, whole: bigint): boolean => part * 100n <= whole;

const atLeastZero = (mass: bigint): bigint => (mass > 0n ? mass : 0n);
const least = (a: bigint, b: bigint): bigint => (a < b ? a : b);
const sum = (masses: readonly bigint[]): bigint => masses.reduce((total, mass) => total + mass, 0n);
