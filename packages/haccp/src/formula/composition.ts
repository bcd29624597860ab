import type { RestrictedSubstance } from './restricted-substance';
import { divide } from '../quantity/divide';
import { partsPerMillion } from '../quantity/percent';

/** What one lot is made of. Femtograms throughout. */
export type Composition = {
  /**
   * The meat block: fresh meat as trimmed, and the meat in whatever was reworked. The base of every ingoing
   * concentration.
   */
  meat: bigint;
  /** The part of it still to be seasoned: fresh meat and plain meat of earlier lots. Targets are scaled on this. */
  toSeason: bigint;
  /** Everything that went in. */
  all: bigint;
  substances: ReadonlyMap<RestrictedSubstance, bigint>;
  /** The entries it was added up from, each of which a scale may have been wrong about. */
  parts?: Parts;
};

/** An ingredient as weighed; `percent` is its content of the substance. */
export type WeighedIn = { mass: bigint; substance?: RestrictedSubstance; percent?: number };
/** So much of an earlier lot, and what that lot is made of. */
export type Reworked = { mass: bigint; of: Composition };
export type Parts = { freshMeat: readonly bigint[]; weighed: readonly WeighedIn[]; reworked: readonly Reworked[] };

const MILLION = 1_000_000n;

/**
 * Adds up a lot. Rework brings along its share of the meat and of every restricted substance that went into its own
 * lot, so that cure is neither forgotten nor weighed in a second time. Shares are whole femtograms that keep the ratio
 * of their lot, so that what was exactly on a limit stays on it. They are taken of what went in; water lost since then
 * is not known and would raise both alike.
 */
export function compose(parts: Parts): Composition {
  const { freshMeat, weighed, reworked } = parts;
  const fresh = sum(freshMeat);
  const substances = new Map<RestrictedSubstance, bigint>();
  const add = (substance: RestrictedSubstance, mass: bigint) => substances.set(substance, (substances.get(substance) ?? 0n) + mass);

  for (const { mass, substance, percent = 0 } of weighed) {
    if (substance) add(substance, divide(mass * BigInt(partsPerMillion(percent) ?? 0), MILLION, 'up'));
  }
  for (const share of reworked) {
    share.of.substances.forEach((_held, substance) => add(substance, carriedBy(share, substance)));
  }
  return {
    meat: fresh + sum(reworked.map(meatIn)),
    toSeason: fresh + sum(reworked.filter(({ of }) => isPlain(of)).map(({ mass }) => mass)),
    all: fresh + sum(weighed.map(({ mass }) => mass)) + sum(reworked.map(({ mass }) => mass)),
    substances,
    parts,
  };
}

/** The femtograms of a substance that rework brings along. */
export function carriedBy({ mass, of }: Reworked, substance: RestrictedSubstance): bigint {
  const held = of.substances.get(substance) ?? 0n;
  if (of.meat > 0n) return (meatIn({ mass, of }) * held) / of.meat;
  return of.all > 0n ? (mass * held) / of.all : 0n;
}

const meatIn = ({ mass, of }: Reworked): bigint => (of.all > 0n ? (mass * of.meat) / of.all : 0n);
const isPlain = ({ all, toSeason }: Composition): boolean => all > 0n && all === toSeason;
const sum = (masses: readonly bigint[]): bigint => masses.reduce((total, mass) => total + mass, 0n);
