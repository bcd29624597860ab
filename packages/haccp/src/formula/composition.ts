import type { RestrictedSubstance } from './restricted-substance';
import { divide } from '../quantity/divide';
import { partsPerMillion } from '../quantity/percent';

/** Femtograms throughout. */
export type Composition = {
  /** Fresh trimmed meat, and the meat in rework. The base of every ingoing concentration. */
  meat: bigint;
  /** Fresh meat and plain meat of earlier lots; targets are scaled on it. */
  toSeason: bigint;
  all: bigint;
  substances: ReadonlyMap<RestrictedSubstance, bigint>;
  /** The entries behind the sums; a scale may be wrong about each. */
  parts?: Parts;
};

/** `percent` is its content of the substance. */
export type WeighedIn = { mass: bigint; substance?: RestrictedSubstance; percent?: number };
export type Reworked = { mass: bigint; of: Composition };
export type Parts = { freshMeat: readonly bigint[]; weighed: readonly WeighedIn[]; reworked: readonly Reworked[] };

const MILLION = 1_000_000n;

/**
 * Rework brings its share of meat and restricted substances: cure is neither forgotten nor added twice. Shares are
 * whole femtograms in the ratio of their lot, so what is exactly on a limit stays on it. Water lost since is unknown
 * and would raise both alike.
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

/** Femtograms. */
export function carriedBy({ mass, of }: Reworked, substance: RestrictedSubstance): bigint {
  const held = of.substances.get(substance) ?? 0n;
  if (of.meat > 0n) return (meatIn({ mass, of }) * held) / of.meat;
  return of.all > 0n ? (mass * held) / of.all : 0n;
}

const meatIn = ({ mass, of }: Reworked): bigint => (of.all > 0n ? (mass * of.meat) / of.all : 0n);
const isPlain = ({ all, toSeason }: Composition): boolean => all > 0n && all === toSeason;
const sum = (masses: readonly bigint[]): bigint => masses.reduce((total, mass) => total + mass, 0n);
