import type { RestrictedSubstance } from './restricted-substance';
import { divide } from '../quantity/divide';
import { partsPerMillion } from '../quantity/percent';
import type { Composition, Reworked } from './composition';

/** In each weighing, either way; femtograms. */
export type ScaleErrors = { ingredient: bigint; meat: bigint };
/** Where the plan states no error, none is assumed. */
export const isStated = ({ ingredient, meat }: ScaleErrors): boolean => ingredient > 0n || meat > 0n;
export type Base = 'meat' | 'all';
/** Femtograms. */
export type Share = { substance: bigint; base: bigint };
/** Towards more of the substance in its base, or less. */
export type Way = 1n | -1n;

const MILLION = 1_000_000n;

/**
 * Every weighing is off by the whole error. Rework has its worst share, and as much of it counts as makes matters
 * worse: less where it is milder than the rest.
 */
export function shareWithin(of: Composition, substance: RestrictedSubstance, base: Base, errors: ScaleErrors, way: Way): Share {
  const { parts } = of;
  if (!parts) return { substance: of.substances.get(substance) ?? 0n, base: of[base] };
  const share: Share = { substance: 0n, base: 0n };
  for (const mass of parts.freshMeat) share.base += off(mass, -way * errors.meat);
  for (const own of parts.weighed) {
    if (base === 'all') share.base += off(own.mass, -way * errors.ingredient);
    if (own.substance === substance) share.substance += held(off(own.mass, way * errors.ingredient), own.percent, way);
  }
  const reworked = parts.reworked.map((one) => reworkWithin(one, substance, base, errors, way));
  for (const { least, richness } of reworked) add(share, richness, least, way);
  for (const { least, most, richness } of reworked.sort((a, b) => Number(way) * compare(b.richness, a.richness))) {
    if (Number(way) * compare(richness, share) > 0) add(share, richness, most - least, way);
  }
  share.substance += parts.reworked.reduce((sum, one) => sum + ofNoMeat(one, substance, base, errors, way), 0n);
  return share;
}

/** `least` and `most` of the base; `richness` is the substance in it. */
type ReworkWithin = { least: bigint; most: bigint; richness: Share };

/** Its share of all that went in, on no meat of its own. */
function ofNoMeat({ mass, of }: Reworked, substance: RestrictedSubstance, base: Base, errors: ScaleErrors, way: Way): bigint {
  if (base === 'all' || of.meat > 0n) return 0n;
  const brought: Share = { substance: 0n, base: 0n };
  add(brought, shareWithin(of, substance, 'all', errors, way), off(mass, way * errors.meat), way);
  return brought.substance;
}

function reworkWithin({ mass, of }: Reworked, substance: RestrictedSubstance, base: Base, errors: ScaleErrors, way: Way): ReworkWithin {
  const [least, most] = [off(mass, -errors.meat), mass + errors.meat];
  const inner = shareWithin(of, substance, base, errors, way);
  if (base === 'all') return { least, most, richness: inner };
  const [meat, all] = [weightWithin(of, 'meat', errors), weightWithin(of, 'all', errors)];
  return { least: part(least, meat.least, all.most, 'down'), most: part(most, meat.most, all.least, 'up'), richness: inner };
}

/** Femtograms. */
export type Weight = { least: bigint; most: bigint };

/** Each rework at its own worst, whatever else is in. */
export function broughtWithin(reworked: readonly Reworked[], substance: RestrictedSubstance, errors: ScaleErrors): Weight {
  const brought = (way: Way): bigint => {
    const share: Share = { substance: 0n, base: 0n };
    for (const one of reworked) {
      const { least, most, richness } = reworkWithin(one, substance, 'meat', errors, way);
      add(share, richness, way > 0n ? most : least, way);
      share.substance += ofNoMeat(one, substance, 'meat', errors, way);
    }
    return share.substance;
  };
  return { least: brought(-1n), most: brought(1n) };
}

export function weightWithin(of: Composition, base: Base, errors: ScaleErrors): Weight {
  const { parts } = of;
  if (!parts) return { least: of[base], most: of[base] };
  const weight: Weight = { least: 0n, most: 0n };
  const take = (mass: bigint, error: bigint) => {
    weight.least += off(mass, -error);
    weight.most += mass + error;
  };
  for (const mass of parts.freshMeat) take(mass, errors.meat);
  if (base === 'all') for (const { mass } of parts.weighed) take(mass, errors.ingredient);
  for (const { mass, of: own } of parts.reworked) {
    if (base === 'all') take(mass, errors.meat);
    else {
      const [meat, all] = [weightWithin(own, 'meat', errors), weightWithin(own, 'all', errors)];
      weight.least += part(off(mass, -errors.meat), meat.least, all.most, 'down');
      weight.most += part(mass + errors.meat, meat.most, all.least, 'up');
    }
  }
  return weight;
}

function add(share: Share, richness: Share, base: bigint, way: Way): void {
  share.base += base;
  share.substance += richness.base > 0n ? divide(base * richness.substance, richness.base, rounding(way)) : 0n;
}

const off = (mass: bigint, error: bigint): bigint => (mass + error > 0n ? mass + error : 0n);
const held = (mass: bigint, percent: number | undefined, way: Way): bigint =>
  divide(mass * BigInt(partsPerMillion(percent ?? 0) ?? 0), MILLION, rounding(way));
const part = (mass: bigint, of: bigint, all: bigint, round: 'up' | 'down'): bigint => (of >= all ? mass : divide(mass * of, all, round));
const rounding = (way: Way) => (way > 0n ? 'up' : 'down');
const compare = (a: Share, b: Share): number => {
  const difference = a.substance * b.base - b.substance * a.base;
  return difference > 0n ? 1 : difference < 0n ? -1 : 0;
};
