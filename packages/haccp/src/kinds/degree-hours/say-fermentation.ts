import type { Verdict } from '../../limits/verdict';
import { onCommonScale } from '../../quantity/convert-degrees';
import { decimalText } from '../../quantity/decimal';
import { sayDegrees } from '../../quantity/degrees';
import { divide } from '../../quantity/divide';
import { sayAbout, sayDuration } from '../../quantity/duration';
import type { Degrees } from '../../quantity/temperature';
import type { Curve } from '../../thermal/curve';
import { degreeHour, type DegreeHours } from './add-up-degree-hours';
import type { FermentationClass, FermentationLimit } from './fermentation-limit';

/** What was found about a fermentation; each finding has one verdict. */
export type FermentationFinding =
  | 'in time'
  | 'too many'
  | 'no readings'
  | 'never down'
  | 'running'
  | 'no start'
  | 'not covered'
  | 'not shown';

type Words = { most: string; sure: string; allowed: string; pH: string; gap: string; left: string };
type Said = Pick<Verdict, 'measured' | 'limit' | 'margin' | 'because' | 'next' | 'spare' | 'running'>;

const HOLD = 'Hold the lot and follow the corrective action of the plan.';

const SENTENCES: Record<FermentationFinding, (words: Words) => { because: string; next?: string }> = {
  'in time': ({ most, allowed, pH }) => ({
    because: `pH ${pH} was reached after at most ${most}; ${allowed} are allowed.`,
  }),
  'too many': ({ sure, allowed, pH }) => ({
    because: `${sure} had added up before pH ${pH} was shown; ${allowed} are allowed.`,
    next: HOLD,
  }),
  'no readings': () => ({
    because: 'There is no usable reading of the chamber.',
    next: 'Read the chamber and the pH.',
  }),
  'never down': ({ pH }) => ({ because: `No reading shows pH ${pH}, so the time is not complete.`, next: HOLD }),
  running: ({ pH, most, allowed, left }) => ({
    because: `pH ${pH} has not been shown yet; at most ${most} of ${allowed} are used up.`,
    next: `Go on: reach pH ${pH}${left}. A warmer chamber may leave less.`,
  }),
  'no start': () => ({
    because: 'No start of fermentation is recorded, so what came before the first reading is not covered.',
    next: 'Record when the sausages were hung in the chamber, or hold the lot.',
  }),
  'not covered': ({ pH }) => ({
    because: `The chamber was not recorded from the start until pH ${pH}.`,
    next: 'Add the readings of the chamber, or hold the lot.',
  }),
  'not shown': ({ gap, most, allowed }) => ({
    because: `Over a gap of ${gap} the chamber may have been warm: ${most} at most, ${allowed} are allowed.`,
    next: 'Add the readings in between from the logger, or hold the lot.',
  }),
};

/** "≤ 1200 °F·h below 90 °F, ≤ 1000 °F·h up to 100 °F, ≤ 900 °F·h above it, counted over 60 °F until pH 5.3" */
export function sayDegreeHours({ base, pH, classes }: FermentationLimit): string {
  const said = classes.map(({ top, isTopIncluded, most }) => {
    const reach = top ? `${isTopIncluded ? 'up to' : 'below'} ${sayDegrees(top)}` : 'above it';
    return `≤ ${most} ${base.unit}·h${classes.length === 1 ? '' : ` ${reach}`}`;
  });
  return `${said.join(', ')}, counted over ${sayDegrees(base)} until pH ${decimalText(pH.thousandths, 3)}`;
}

/** A fermentation in words. Degree-hours are rounded up, so that the words never sound better than it was. */
export function sayFermentation(
  finding: FermentationFinding,
  sum: DegreeHours,
  limit: FermentationLimit,
  allowed: FermentationClass,
  { warmer }: Curve,
): Said {
  const { unit } = limit.base;
  const one = degreeHour(unit);
  const say = (halves: bigint) => sayIn(halves, unit);
  const spare = BigInt(allowed.most) * one - sum.most;
  const last = warmer[warmer.length - 1];
  const above = last ? onCommonScale(last.temperature) - onCommonScale(limit.base) : 0;
  const left = above > 0 && spare > 0n ? Number(spare / BigInt(2 * above)) : undefined;
  const pH = decimalText(limit.pH.thousandths, 3);
  const words = {
    most: say(sum.most),
    sure: say(sum.sure),
    allowed: `${allowed.most} ${unit}·h`,
    pH,
    gap: sayDuration(sum.gap ?? NaN),
    left: left === undefined ? '' : ` within ${sayAbout(left)} at this temperature`,
  };
  const hottest = warmer.length > 0 ? sayDegrees(inUnit(sum.hottest, unit)) : 'not known';
  return {
    measured: `${words.most}, chamber at most ${hottest}`,
    limit: `≤ ${words.allowed} until pH ${pH}`,
    margin: spare < 0n ? `${say(-spare)} too many` : finding === 'in time' ? `${say(spare)} to spare` : undefined,
    spare: Number(spare / one),
    ...SENTENCES[finding](words),
    ...(finding === 'running' && {
      running: { stage: 'Fermentation', bound: `pH ${pH}`, deadline: last && left && last.at + left },
    }),
  };
}

/** What straight lines between the readings would give, where that is less than what counts. For information. */
export const sayStraight = ({ straight, most }: DegreeHours, unit: Degrees['unit']): string[] =>
  straight === most ? [] : [`Between two readings the warmer counts; by straight lines it would be ${sayIn(straight, unit)}.`];

const sayIn = (halves: bigint, unit: Degrees['unit']): string =>
  `${decimalText(divide(halves * 10n, degreeHour(unit), 'up'), 1)} ${unit}·h`;

/** For reading only, rounded up to the hundredth. */
const inUnit = (value: number, unit: '°C' | '°F') =>
  unit === '°C' ? { hundredths: Math.ceil(value / 9), unit } : { hundredths: Math.ceil(value / 5) + 3200, unit };
