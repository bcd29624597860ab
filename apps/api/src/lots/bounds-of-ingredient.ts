import { divide, doseFor, partsPerMillion, type ConcentrationLimit, type RestrictedSubstance } from '@larderbook/haccp';
import type { WentIn } from './what-went-in';

/**
 * How much of a restricted ingredient a lot may hold altogether, in femtograms, by the narrowest limits of its plan.
 */
export type Bounds = { least?: bigint; most?: bigint; printed?: string };

type Ingredient = { itemId: string; percent: number; substance: RestrictedSubstance };
const million = 1_000_000n;

/** Counted on the meat that is in, less what other ingredients and rework bring of the substance. Rounded inward. */
export function boundsOfIngredient(
  ingredient: Ingredient,
  limits: readonly ConcentrationLimit[],
  wentIn: WentIn,
): Bounds {
  const { meat } = wentIn.composition;
  if (meat === 0n || !partsPerMillion(ingredient.percent)) return {};
  const others = broughtByOthers(ingredient, wentIn);
  const doses = limits.map((limit) => ({ ...doseFor(limit, meat, ingredient.percent), printed: limit.printed }));
  const [highestLeast] = doses.flatMap(({ least }) => least ?? []).sort(descending);
  const [lowestMost] = doses
    .flatMap(({ most, printed }) => (most === undefined ? [] : [{ most, printed }]))
    .sort((a, b) => descending(b.most, a.most));
  return {
    least: highestLeast === undefined ? undefined : atLeastNone(highestLeast - others),
    most: lowestMost && atLeastNone(lowestMost.most - others),
    printed: lowestMost?.printed,
  };
}

/** The ingoing ppm of a substance to two decimals, for reading; undefined while there is none of it or no meat. */
export function ppmIn(
  { composition: { meat, substances } }: WentIn,
  substance: RestrictedSubstance,
): number | undefined {
  const held = substances.get(substance) ?? 0n;
  return meat === 0n || held === 0n ? undefined : Number(divide(held * million * 100n, meat, 'nearest')) / 100;
}

/** As much of this ingredient as would bring what everything else brings of its substance. */
function broughtByOthers({ itemId, percent, substance }: Ingredient, { composition, weighings }: WentIn): bigint {
  const parts = (some: number | undefined) => BigInt(partsPerMillion(some ?? 0) ?? 0);
  const own = weighings.reduce((sum, one) => (one.itemId === itemId ? sum + one.mass * parts(one.percent) : sum), 0n);
  const inAll = (composition.substances.get(substance) ?? 0n) * million;
  return divide(inAll > own ? inAll - own : 0n, parts(percent), 'up');
}

const descending = (a: bigint, b: bigint): number => (a < b ? 1 : a > b ? -1 : 0);
const atLeastNone = (mass: bigint): bigint => (mass > 0n ? mass : 0n);
