import {
  broughtWithin,
  carriedBy,
  divide,
  doseFor,
  isStated,
  partsPerMillion,
  weightWithin,
  type ConcentrationLimit,
  type InstrumentErrors,
  type Reworked,
  type RestrictedSubstance,
  type ScaleErrors,
} from '@larderbook/haccp';
import { scalesAt } from './scales-of';
import type { WentIn } from './what-went-in';

/** Femtograms in the whole lot, by the narrowest limits of its plan. */
export type Bounds = { least?: bigint; most?: bigint; printed?: string };

type Ingredient = { itemId: string; percent: number; substance: RestrictedSubstance };
const million = 1_000_000n;

export type LimitWithin = { limit: ConcentrationLimit; errors?: InstrumentErrors };

/**
 * Counts on the meat that is in, less what other ingredients and rework bring. Rounds inward and allows for scale
 * errors.
 */
export function boundsOfIngredient(ingredient: Ingredient, limits: readonly LimitWithin[], wentIn: WentIn): Bounds {
  const { meat } = wentIn.composition;
  if (meat === 0n || !partsPerMillion(ingredient.percent)) return {};
  const own = wentIn.weighings.filter(({ itemId }) => itemId === ingredient.itemId);
  const doses = limits.map(({ limit, errors }) => {
    const scales = scalesAt(errors);
    const others = broughtByOthers(ingredient, wentIn, scales);
    const within = { ingredient: scales.ingredient * BigInt(Math.max(1, own.length)), meat: doubtOfMeat(wentIn, scales) };
    const { least, most } = doseFor(limit, meat, ingredient.percent, within) ?? {};
    return {
      least: least === undefined ? undefined : least - others.least,
      most: most === undefined ? undefined : most - others.most,
      printed: limit.printed,
    };
  });
  const [highestLeast] = doses.flatMap(({ least }) => least ?? []).sort(descending);
  const [lowestMost] = doses
    .flatMap(({ most, printed }) => (most === undefined ? [] : [{ most, printed }]))
    .sort((a, b) => descending(b.most, a.most));
  return {
    least: highestLeast === undefined ? undefined : atLeastNone(highestLeast),
    most: lowestMost && atLeastNone(lowestMost.most),
    printed: lowestMost?.printed,
  };
}

/** Two decimals, for reading. Undefined without the substance or without meat. */
export function ppmIn({ composition: { meat, substances } }: WentIn, substance: RestrictedSubstance): number | undefined {
  const held = substances.get(substance) ?? 0n;
  return meat === 0n || held === 0n ? undefined : Number(divide(held * million * 100n, meat, 'nearest')) / 100;
}

/** As a mass of this ingredient that would bring as much. */
function broughtByOthers(
  { itemId, percent, substance }: Ingredient,
  { composition, weighings, reworked }: WentIn,
  scales: ScaleErrors,
): { least: bigint; most: bigint } {
  const parts = (some: number | undefined) => BigInt(partsPerMillion(some ?? 0) ?? 0);
  const own = weighings.reduce((sum, one) => (one.itemId === itemId ? sum + one.mass * parts(one.percent) : sum), 0n);
  const inAll = (composition.substances.get(substance) ?? 0n) * million;
  const others = weighings.filter((one) => one.itemId !== itemId && one.substance === substance);
  const doubt = others.reduce((sum, one) => sum + scales.ingredient * parts(one.percent), 0n);
  const brought = atLeastNone(inAll - own);
  const rework = doubtOfRework(reworked, substance, scales);
  return {
    least: divide(atLeastNone(brought - doubt - rework * million), parts(percent), 'down'),
    most: divide(brought + doubt + rework * million, parts(percent), 'up'),
  };
}

/** How far the meat block may be off, rework's share included. */
function doubtOfMeat({ composition }: WentIn, scales: ScaleErrors): bigint {
  const { least, most } = weightWithin(composition, 'meat', scales);
  return isStated(scales) ? larger(composition.meat - least, most - composition.meat) : 0n;
}

function doubtOfRework(reworked: readonly Reworked[], substance: RestrictedSubstance, scales: ScaleErrors): bigint {
  const brought = reworked.reduce((sum, one) => sum + carriedBy(one, substance), 0n);
  const { least, most } = broughtWithin(reworked, substance, scales);
  return isStated(scales) ? larger(brought - least, most - brought) : 0n;
}

const larger = (a: bigint, b: bigint): bigint => (a > b ? a : b);
const descending = (a: bigint, b: bigint): number => (a < b ? 1 : a > b ? -1 : 0);
const atLeastNone = (mass: bigint): bigint => (mass > 0n ? mass : 0n);
