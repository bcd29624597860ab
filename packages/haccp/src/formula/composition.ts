import type { RestrictedSubstance } from '../limits/limit';
import { divide } from '../quantity/divide';
import { partsPerMillion } from '../quantity/percent';

/** What one lot is made of. Femtograms throughout. */
export type Composition = {
  /** The meat block: fresh meat as trimmed, and the meat in whatever was reworked. The base of every ingoing concentration. */
  meat: bigint;
  /** The part of it still to be seasoned: fresh meat and plain meat of earlier lots. Targets are scaled on this. */
  toSeason: bigint;
  /** Everything that went in. */
  all: bigint;
  substances: ReadonlyMap<RestrictedSubstance, bigint>;
};

/** An ingredient as weighed; `percent` is its content of the substance. */
export type WeighedIn = { mass: bigint; substance?: RestrictedSubstance; percent?: number };
/** So much of an earlier lot, and what that lot is made of. */
export type Reworked = { mass: bigint; of: Composition };
export type Parts = { freshMeat: readonly bigint[]; weighed: readonly WeighedIn[]; reworked: readonly Reworked[] };

const MILLION = 1_000_000n;

/**
 * Adds up a lot. Rework brings along its share of the meat and of every restricted substance that went into its own lot, so
 * that cure is neither forgotten nor weighed in a second time. Meat is rounded down and substances up, to the femtogram.
 * The share is taken of what went in; water lost since then is not known and would raise both alike.
 */
export function compose({ freshMeat, weighed, reworked }: Parts): Composition {
  const fresh = sum(freshMeat);
  const substances = new Map<RestrictedSubstance, bigint>();
  const add = (substance: RestrictedSubstance, mass: bigint) => substances.set(substance, (substances.get(substance) ?? 0n) + mass);

  for (const { mass, substance, percent = 0 } of weighed) {
    if (substance) add(substance, divide(mass * BigInt(partsPerMillion(percent) ?? 0), MILLION, 'up'));
  }
  for (const { mass, of } of reworked) {
    if (of.all > 0n) of.substances.forEach((held, substance) => add(substance, divide(mass * held, of.all, 'up')));
  }
  return {
    meat: fresh + sum(reworked.map(meatIn)),
    toSeason: fresh + sum(reworked.filter(({ of }) => isPlain(of)).map(({ mass }) => mass)),
    all: fresh + sum(weighed.map(({ mass }) => mass)) + sum(reworked.map(({ mass }) => mass)),
    substances,
  };
}

/** The content of a substance in a lot, in percent as an ingredient of another: rounded up to the fourth decimal. */
export function contentOf({ all, substances }: Composition, substance: RestrictedSubstance): number {
  const held = substances.get(substance) ?? 0n;
  return all > 0n ? Number(divide(held * MILLION, all, 'up')) / 10_000 : 0;
}

const meatIn = ({ mass, of }: Reworked): bigint => (of.all > 0n ? (mass * of.meat) / of.all : 0n);
const isPlain = ({ all, toSeason }: Composition): boolean => all > 0n && all === toSeason;
const sum = (masses: readonly bigint[]): bigint => masses.reduce((total, mass) => total + mass, 0n);
