import type { Ratio } from '../../formula/curing-species';
import type { Share } from '../../formula/within-scales';
import { divide } from '../../quantity/divide';
import { partsPerMillion, formatPercent } from '../../quantity/percent';
import { amountOf, differenceOf } from '../../quantity/quantities';
import type { Quantity } from '../../quantity/quantity';
import { roundedMass } from '../../quantity/weigh';
import { countedShare, isCountable } from './counted-as';
import { mostThousandths } from './dose-for';
import type { ConcentrationLimit } from './concentration-limit';
import type { Figure, Figures, Found, Phrase, Verdict } from '../../limits/verdict';

/** Femtograms of the ingredient, percent of the substance, error of the scale either way. */
export type Portion = { mass: bigint; percent: number; name?: string; error?: bigint };

type Decided = Pick<Verdict, 'kind' | 'spare'> & Found;
/** Femtograms × parts per million, over femtograms of meat: exact. For an ion `share` scales both. */
type Ingoing = { substance: bigint; meat: bigint; share: Ratio; limit: ConcentrationLimit; portion: Portion };

/**
 * Ingoing ppm = substance ÷ green weight of the meat block × 10⁶ (9 CFR 424.21(c)), compared without rounding. Too
 * little is undetermined, since more may be added; too much is missed. Within the errors of the scales the most is
 * judged, then the least. @param meatBlock femtograms of trimmed meat, without water, ice or spices @param doubt
 * femtograms either way; or the extremes, where rework is part of the meat block
 */
export function judgeConcentration(
  portions: readonly Portion[],
  meatBlock: bigint,
  limit: ConcentrationLimit,
  doubt: bigint | Extremes = 0n,
): Verdict {
  const unusable = whatIsWrong(limit) ?? whatIsMissing(portions, meatBlock);
  if (unusable) return { kind: 'undetermined', ...unusable, notes: [] };

  const as = ingoingOf(portions, meatBlock, limit, 0n, 0n);
  const [most, least] =
    typeof doubt === 'bigint'
      ? [ingoingOf(portions, meatBlock, limit, 1n, doubt), ingoingOf(portions, meatBlock, limit, -1n, doubt)]
      : [ingoingAt(as, doubt.most), ingoingAt(as, doubt.least)];
  const weighed = ppmOf(as);
  if (as.substance === most.substance && as.meat === most.meat) return { ...withFigures(decide(as, as), { weighed }), notes: [] };
  if (most.meat <= 0n) return { kind: 'undetermined', finding: 'meat-within-error', figures: { weighed }, notes: [] };
  const between = { weighed, leastIn: plainPpm(least), mostIn: plainPpm(most) };
  return { ...withFigures(decideWithin(most, least), between), notes: [{ code: 'worse-within-scales' }] };
}

const withFigures = (decided: Decided, beside: Figures): Decided => ({ ...decided, figures: { ...decided.figures, ...beside } });

/** Pure substance and meat at the most and at the least ppm. */
export type Extremes = { most: Share; least: Share };

const ingoingAt = (as: Ingoing, { substance, base }: Share): Ingoing => ({
  ...as,
  substance: substance * 1_000_000n * as.share.numerator,
  meat: base * as.share.denominator,
});

function decideWithin(most: Ingoing, least: Ingoing): Decided {
  const atMost = decide(most, most);
  if (atMost.kind === 'missed') return atMost;
  const atLeast = decide(least, most);
  const hasMost = mostThousandths(most.limit) !== undefined;
  return hasMost && atLeast.kind === 'met' ? atMost : atLeast;
}

/** Way 0 as weighed; 1 at the most ppm within the errors, −1 at the least. */
function ingoingOf(portions: readonly Portion[], meatBlock: bigint, limit: ConcentrationLimit, way: bigint, meatError: bigint): Ingoing {
  const share = countedShare(limit);
  const substance = portions.reduce(
    (sum, { mass, percent, error = 0n }) => sum + atLeastNone(mass + way * error) * BigInt(partsPerMillion(percent) as number),
    0n,
  );
  return {
    substance: substance * share.numerator,
    meat: (meatBlock - way * meatError) * share.denominator,
    share,
    limit,
    portion: portions.at(-1) as Portion,
  };
}

const atLeastNone = (mass: bigint): bigint => (mass > 0n ? mass : 0n);

function whatIsWrong(limit: ConcentrationLimit): Found | undefined {
  const { min, max, maxThousandths } = limit;
  const figures = [min, max, maxThousandths].filter((figure) => figure !== undefined);
  const isSound = isCountable(limit) && figures.length > 0 && figures.every((figure) => Number.isSafeInteger(figure) && figure >= 0);
  return isSound ? undefined : { finding: 'limit-without-figure', figures: {} };
}

function whatIsMissing(portions: readonly Portion[], meatBlock: bigint): Found | undefined {
  if (meatBlock <= 0n) return { finding: 'meat-not-weighed', figures: {} };
  if (portions.length === 0) return { finding: 'nothing-weighed', figures: {} };
  const bad = portions.find(({ mass, percent }) => mass < 0n || partsPerMillion(percent) === undefined);
  return bad && { finding: 'portion-unusable', figures: { ingredient: nameOf(bad) } };
}

/** @param richest what may be in at most: more is added within the room it leaves */
function decide(ingoing: Ingoing, richest: Ingoing): Decided {
  const most = mostThousandths(ingoing.limit);
  const least = leastThousandths(ingoing.limit);
  if (most !== undefined && thousandthsOver(ingoing, most) > 0n) return tooMuch(ingoing, most);
  if (least !== undefined && thousandthsOver(ingoing, least) < 0n) return tooLittle(ingoing, richest, least);
  // A sound limit has one of the two.
  const over = most === undefined ? thousandthsOver(ingoing, least as bigint) : -thousandthsOver(ingoing, most);
  const { by, spare } = marginOf(over, ingoing);
  return { kind: 'met', finding: 'ppm-within', figures: { judged: ppmOf(ingoing), spare: by }, spare };
}

const leastThousandths = ({ min }: ConcentrationLimit): bigint | undefined => (min === undefined ? undefined : BigInt(min) * 10n);

/** (substance × 1000 − bound × meat), positive when over; still a multiple of the meat's weight. */
const thousandthsOver = ({ substance, meat }: Ingoing, bound: bigint): bigint => substance * 1000n - bound * meat;

function tooMuch(ingoing: Ingoing, most: bigint): Decided {
  const { portion, meat, substance, share } = ingoing;
  const parts = countedParts(ingoing);
  const over = thousandthsOver(ingoing, most);
  const { by, spare } = marginOf(-over, ingoing);
  const missing = most === 0n ? 0n : divide(substance * 1000n - meat * most, most * share.denominator, 'up');
  return {
    kind: 'missed',
    finding: 'ppm-above',
    figures: {
      ...{ judged: ppmOf(ingoing), by, most: amountOf(most, 'ppm') },
      ...(parts > 0n && { tooMuch: gramsUp(divide(over, parts * 1000n, 'up')), ingredient: nameOf(portion) }),
      ...(most > 0n && { meat: meatUp(missing) }),
    },
    spare,
  };
}

function tooLittle(ingoing: Ingoing, richest: Ingoing, least: bigint): Decided {
  const { portion, limit } = ingoing;
  const parts = countedParts(ingoing);
  const short = -thousandthsOver(ingoing, least);
  const { by, spare } = marginOf(-short, ingoing);
  const figures = { judged: ppmOf(ingoing), by, least: amountOf(least, 'ppm') };
  if (parts === 0n) return { kind: 'undetermined', finding: 'ppm-below', figures, spare };
  const { error = 0n } = portion; // the further weighing is wrong by as much
  const most = mostThousandths(limit);
  const room = most === undefined ? undefined : divide(-thousandthsOver(richest, most), parts * 1000n, 'down') - error;
  const add = weighable(divide(short, parts * 1000n, 'up') + error, room);
  if (!add) return { kind: 'undetermined', finding: 'ppm-below-on-a-coarse-scale', figures, spare };
  return { kind: 'undetermined', finding: 'ppm-below', figures: { ...figures, add, ingredient: nameOf(portion) }, spare };
}

/** In a million parts of the last ingredient weighed. */
const countedParts = ({ portion, share }: Ingoing): bigint => BigInt(partsPerMillion(portion.percent) as number) * share.numerator;

function marginOf(spare: bigint, { meat }: Ingoing): { by: Quantity; spare: number } {
  const hundredths = divide(spare, meat * 10n, 'down');
  return { by: differenceOf(hundredths, 'ppm', 2), spare: Number(hundredths) };
}

/** "79.998 ppm as NO₂". */
function ppmOf(ingoing: Ingoing): Figure {
  const { countedAs } = ingoing.limit;
  const ppm = plainPpm(ingoing);
  if (!countedAs) return ppm;
  return 'code' in ppm
    ? { code: `${ppm.code}-as`, figures: { ...ppm.figures, as: countedAs } }
    : { code: 'counted-as', figures: { ppm, as: countedAs } };
}

/** Two decimals; three or four, or words, where fewer look like a bound it is not on. */
function plainPpm(ingoing: Ingoing, decimals = 2): Quantity | Phrase {
  const { substance, meat, limit } = ingoing;
  const scale = 10n ** BigInt(decimals);
  const shown = divide(substance * scale, meat, 'nearest');
  const looksOn = [leastThousandths(limit), mostThousandths(limit)].find(
    (bound) => bound !== undefined && shown * 1000n === bound * scale && thousandthsOver(ingoing, bound) !== 0n,
  );
  if (looksOn === undefined) return amountOf(shown, 'ppm', decimals);
  if (decimals < 4) return plainPpm(ingoing, decimals + 1);
  const side = thousandthsOver(ingoing, looksOn) > 0n ? 'above' : 'below';
  return { code: `just-${side}`, figures: { bound: amountOf(looksOn, 'ppm') } };
}

/** Smallest step that reaches the least without passing the most; undefined where no scale shows one. */
function weighable(missing: bigint, room: bigint | undefined): Quantity | undefined {
  const decimals = [1, 2, 3, 9].find((places) => room === undefined || divide(missing, stepOf(places), 'up') * stepOf(places) <= room);
  return decimals === undefined ? undefined : roundedMass(missing, 'g', decimals, 'up');
}

/** Femtograms. */
const stepOf = (decimals: number): bigint => 10n ** BigInt(15 - decimals);

const gramsUp = (femtograms: bigint): Quantity => roundedMass(femtograms, 'g', femtograms < 10n ** 16n ? 2 : 1, 'up');

/** Grams say nothing on a scale in pounds: from a kilogram on in both. */
const meatUp = (femtograms: bigint): Figure =>
  femtograms < 10n ** 18n
    ? gramsUp(femtograms)
    : { code: 'in-both', figures: { metric: roundedMass(femtograms, 'kg', 2, 'up'), us: roundedMass(femtograms, 'lb', 2, 'up') } };

/** With the content where the name does not tell it. */
function nameOf({ name, percent }: Portion): Figure {
  const known = name?.trim();
  const parts = partsPerMillion(percent);
  if (parts === undefined) return known ?? { code: 'an-ingredient' };
  const content = amountOf(parts, '%', 4);
  if (!known) return { code: 'an-ingredient', figures: { content } };
  return known.includes(formatPercent(percent)) ? known : { code: 'ingredient-of', figures: { name: known, content } };
}
