import type { Ratio } from '../../formula/curing-species';
import type { Share } from '../../formula/within-scales';
import { decimalText } from '../../quantity/decimal';
import { divide } from '../../quantity/divide';
import { partsPerMillion, sayPercent } from '../../quantity/percent';
import { sayMass } from '../../quantity/weigh';
import { countedShare, isCountable } from './counted-as';
import { mostThousandths } from './dose-for';
import type { ConcentrationLimit } from './concentration-limit';
import { sayLimit } from '../../limits/say-limit';
import type { Saying } from '../../limits/told';

/**
 * One weighing that brings the substance in: femtograms of the ingredient, its content of the substance in percent, and
 * what the scale may be wrong by, either way.
 */
export type Portion = { mass: bigint; percent: number; name?: string; error?: bigint };

type Said = Pick<Saying, 'kind' | 'margin' | 'because' | 'next' | 'spare'>;
/**
 * Femtograms × parts per million of every portion, over femtograms of meat: the ingoing ppm as an exact fraction. Where
 * the limit counts an ion, both are scaled by `share`, so that the fraction is what the limit counts.
 */
type Ingoing = { substance: bigint; meat: bigint; share: Ratio; limit: ConcentrationLimit; portion: Portion };

/**
 * Ingoing ppm = substance ÷ green weight of the meat block × 10⁶ (9 CFR 424.21(c)), compared without any rounding.
 * Too little is undetermined, since more may still be added; too much is missed.
 * Where the scales may be wrong, the most that may be in is judged; while it is within the limit, the least.
 * @param meatBlock femtograms of trimmed meat, without water, ice or spices
 * @param doubt femtograms the meat block may be wrong by, either way; or the most and the least that may be in, where
 * rework is a part of it
 */
export function judgeConcentration(
  portions: readonly Portion[],
  meatBlock: bigint,
  limit: ConcentrationLimit,
  doubt: bigint | Extremes = 0n,
): Saying {
  const printed = sayLimit(limit);
  const unusable = whatIsWrong(limit) ?? whatIsMissing(portions, meatBlock);
  if (unusable) {
    const measured = 'nothing usable';
    return { kind: 'undetermined', measured, limit: printed, notes: [], source: limit.source, ...unusable };
  }

  const as = ingoingOf(portions, meatBlock, limit, 0n, 0n);
  const [most, least] =
    typeof doubt === 'bigint'
      ? [ingoingOf(portions, meatBlock, limit, 1n, doubt), ingoingOf(portions, meatBlock, limit, -1n, doubt)]
      : [ingoingAt(as, doubt.most), ingoingAt(as, doubt.least)];
  const shared = { limit: printed, source: limit.source };
  if (as.substance === most.substance && as.meat === most.meat) {
    const measured = sayPpm(as);
    return { ...shared, measured, notes: [], ...decide(as, measured) };
  }
  if (most.meat <= 0n) {
    const because = 'The meat block weighs no more than its scale may be wrong by.';
    return { ...shared, kind: 'undetermined', measured: sayPpm(as), notes: [], because, next: 'Weigh on a finer scale.' };
  }
  const measured = `${sayPpm(as)} (${sayFigure(least)} to ${sayFigure(most)} within the scales’ error)`;
  return { ...shared, measured, notes: [WITHIN_ERROR], ...decideWithin(most, least) };
}

/** Pure substance and meat, where it is the most ppm and where it is the least. */
export type Extremes = { most: Share; least: Share };

const ingoingAt = (as: Ingoing, { substance, base }: Share): Ingoing => ({
  ...as,
  substance: substance * 1_000_000n * as.share.numerator,
  meat: base * as.share.denominator,
});

const WITHIN_ERROR = 'The worse within what the scales may be wrong by is judged.';

/** Too much governs, then too little. */
function decideWithin(most: Ingoing, least: Ingoing): Said {
  const atMost = decide(most, sayPpm(most));
  if (atMost.kind === 'missed') return atMost;
  const atLeast = decide(least, sayPpm(least));
  const hasMost = mostThousandths(most.limit) !== undefined;
  return hasMost && atLeast.kind === 'met' ? atMost : atLeast;
}

/** Way 0 as it was weighed; 1 with every weighing as much to the side of more ppm as may be, −1 of less. */
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

function whatIsWrong(limit: ConcentrationLimit): Pick<Saying, 'because' | 'next'> | undefined {
  const { min, max, maxThousandths } = limit;
  const figures = [min, max, maxThousandths].filter((figure) => figure !== undefined);
  const isSound = isCountable(limit) && figures.length > 0 && figures.every((figure) => Number.isSafeInteger(figure) && figure >= 0);
  return isSound ? undefined : { because: 'The limit has no usable figure to compare with.', next: 'Correct the limit in the plan.' };
}

function whatIsMissing(portions: readonly Portion[], meatBlock: bigint): Pick<Saying, 'because' | 'next'> | undefined {
  if (meatBlock <= 0n) return { because: 'The meat block has no weight yet.', next: 'Weigh the trimmed meat first.' };
  if (portions.length === 0) return { because: 'Nothing has been weighed yet.', next: 'Weigh the ingredient.' };
  const bad = portions.find(({ mass, percent }) => mass < 0n || partsPerMillion(percent) === undefined);
  if (!bad) return undefined;
  return {
    because: `${nameOf(bad)} has no usable weight or content.`,
    next: 'Correct the weighing or the content of the ingredient.',
  };
}

function decide(ingoing: Ingoing, said: string): Said {
  const most = mostThousandths(ingoing.limit);
  const least = leastThousandths(ingoing.limit);
  if (most !== undefined && thousandthsOver(ingoing, most) > 0n) return sayTooMuch(ingoing, said, most);
  if (least !== undefined && thousandthsOver(ingoing, least) < 0n) return sayTooLittle(ingoing, said, least);
  // A sound limit has one of the two.
  const spare = most === undefined ? thousandthsOver(ingoing, least as bigint) : -thousandthsOver(ingoing, most);
  return { kind: 'met', because: `${said} is within the limit.`, ...marginOf(spare, ingoing, 'to spare') };
}

const leastThousandths = ({ min }: ConcentrationLimit): bigint | undefined => (min === undefined ? undefined : BigInt(min) * 10n);

/** How far over (+) or under (−) a bound: (substance × 1000 − bound × meat), still a multiple of the meat's weight. */
const thousandthsOver = ({ substance, meat }: Ingoing, bound: bigint): bigint => substance * 1000n - bound * meat;

function sayTooMuch(ingoing: Ingoing, said: string, most: bigint): Said {
  const { portion, meat, substance, share, limit } = ingoing;
  const parts = countedParts(ingoing);
  const over = thousandthsOver(ingoing, most);
  const ingredient = parts === 0n ? '' : `${sayGramsUp(divide(over, parts * 1000n, 'up'))} too much ${nameOf(portion)}. `;
  const missing = most === 0n ? 0n : divide(substance * 1000n - meat * most, most * share.denominator, 'up');
  const moreMeat = most === 0n ? '' : ` ${sayMeatUp(missing)} more meat would bring it back;`;
  return {
    kind: 'missed',
    because: `${said} is above the most allowed, ${limit.printed}.`,
    next: `${ingredient}Hold the lot:${moreMeat} whether that is done is for the responsible person to decide.`,
    ...marginOf(-over, ingoing, 'too much'),
  };
}

function sayTooLittle(ingoing: Ingoing, said: string, least: bigint): Said {
  const { portion, meat, substance, limit } = ingoing;
  const parts = countedParts(ingoing);
  const short = -thousandthsOver(ingoing, least);
  const because = `${said} is below the least allowed, ${decimalText(least, 3)} ppm.`;
  const margin = marginOf(-short, ingoing, 'short');
  if (parts === 0n) return { kind: 'undetermined', ...margin, because, next: 'Weigh an ingredient that contains the substance.' };
  const missing = divide(short, parts * 1000n, 'up');
  const most = mostThousandths(limit);
  const room = most === undefined ? undefined : divide(most * meat - substance * 1000n, parts * 1000n, 'down');
  return {
    kind: 'undetermined',
    ...margin,
    because,
    next: `Add ${sayWeighable(missing, room)} more ${nameOf(portion)} to reach the least allowed.`,
  };
}

/** What the limit counts in a million parts of the last ingredient weighed. */
const countedParts = ({ portion, share }: Ingoing): bigint => BigInt(partsPerMillion(portion.percent) as number) * share.numerator;

function marginOf(spare: bigint, { meat }: Ingoing, word: string) {
  const hundredths = divide(spare, meat * 10n, 'down');
  const size = hundredths < 0n ? -hundredths : hundredths;
  return { margin: `${decimalText(size, 2)} ppm ${word}`, spare: Number(hundredths) };
}

/** The ppm to two decimals; to three or four, or in words, where fewer would look like a bound it is not on. */
function sayPpm(ingoing: Ingoing): string {
  const { countedAs } = ingoing.limit;
  return countedAs ? `${sayFigure(ingoing)} as ${countedAs}` : sayFigure(ingoing);
}

function sayFigure(ingoing: Ingoing, decimals = 2): string {
  const { substance, meat, limit } = ingoing;
  const scale = 10n ** BigInt(decimals);
  const shown = divide(substance * scale, meat, 'nearest');
  const looksOn = [leastThousandths(limit), mostThousandths(limit)].find(
    (bound) => bound !== undefined && shown * 1000n === bound * scale && thousandthsOver(ingoing, bound) !== 0n,
  );
  if (looksOn === undefined) return `${decimalText(shown, decimals)} ppm`;
  if (decimals < 4) return sayFigure(ingoing, decimals + 1);
  return `just ${thousandthsOver(ingoing, looksOn) > 0n ? 'above' : 'below'} ${decimalText(looksOn, 3)} ppm`;
}

/** The smallest step a scale shows that reaches the least without passing the most. */
function sayWeighable(missing: bigint, room: bigint | undefined): string {
  for (const decimals of [1, 2, 3]) {
    const step = 10n ** BigInt(15 - decimals);
    const rounded = divide(missing, step, 'up') * step;
    if (room === undefined || rounded <= room) return sayMass(rounded, 'g', decimals);
  }
  return sayMass(missing, 'g', 9, 'up');
}

const sayGramsUp = (femtograms: bigint): string => sayMass(femtograms, 'g', femtograms < 10n ** 16n ? 2 : 1, 'up');

/** Meat by the gram says nothing on a scale that weighs pounds: from a kilogram on in both. */
const sayMeatUp = (femtograms: bigint): string =>
  femtograms < 10n ** 18n ? sayGramsUp(femtograms) : `${sayMass(femtograms, 'kg', 2, 'up')} (${sayMass(femtograms, 'lb', 2, 'up')})`;

const nameOf = ({ name, percent }: Portion): string => {
  const known = name?.trim() || 'of the ingredient';
  const isUntold = partsPerMillion(percent) !== undefined && !known.includes(sayPercent(percent));
  return isUntold ? `${known} (${sayPercent(percent)})` : known;
};
