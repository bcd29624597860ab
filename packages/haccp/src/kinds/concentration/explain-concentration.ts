import { divide } from '../../quantity/divide';
import { decimalText } from '../../quantity/decimal';
import { partsPerMillion, sayPercent } from '../../quantity/percent';
import { sayMass } from '../../quantity/weigh';
import { countedShare } from './counted-as';
import { mostThousandths } from './dose-for';
import type { Portion } from './judge-concentration';
import type { ConcentrationLimit } from './concentration-limit';
import type { Told } from '../../limits/told';
import type { WorkedStep as Step } from '../../explain/explanation';
import type { WorkedOut } from '../../explain/explanation';

/** What brings the substance in: a weighing by its name, or the share that came along with rework. */
export type Brought = Portion & { id?: string; at?: number };
/** Meat of a delivery, or the meat in rework, as trimmed (femtograms). */
export type MeatIn = { id?: string; at?: number; name: string; mass: bigint };

const MILLION = 1_000_000n;

/** Ingoing ppm = Σ(ingredient × content) ÷ meat block × 1,000,000, with every weighing put in by its name. */
export function explainConcentration(
  limit: ConcentrationLimit,
  told: Told,
  brought: readonly Brought[],
  meat: readonly MeatIn[],
  meatBlock: bigint,
): WorkedOut {
  const amounts = brought.map((portion) => ({ ...portion, pure: pureOf(portion) }));
  const pure = amounts.reduce((sum, one) => sum + one.pure, 0n);
  const share = countedShare(limit);
  const counted = divide(pure * share.numerator, share.denominator, 'nearest');
  const isIon = share.numerator !== share.denominator;
  const steps: Step[] = [
    {
      what: 'Meat block',
      rule: 'all trimmed meat added up',
      putIn: meat.map(({ mass }) => sayMass(mass, 'g')).join(' + ') || 'nothing yet',
      gives: sayMass(meatBlock, 'g'),
    },
    ...amounts.map(
      ({ name, mass, percent, pure: held }): Step => ({
        what: `${limit.substance} in ${name ?? 'the ingredient'}`,
        rule: 'weight × content',
        putIn: `${sayMass(mass, 'g')} × ${sayContent(percent)}`,
        gives: sayMass(held, 'g', 6),
      }),
    ),
    ...(isIon
      ? [
          {
            what: `Counted as ${limit.countedAs}`,
            rule: `${limit.substance} × molar mass of the ion ÷ molar mass of the salt`,
            putIn: `${sayMass(pure, 'g', 6)} × ${share.numerator} ÷ ${share.denominator}`,
            gives: sayMass(counted, 'g', 6),
          },
        ]
      : []),
    {
      what: 'Ingoing',
      rule: 'substance ÷ meat block × 1,000,000',
      putIn: `${sayMass(counted, 'g', 6)} ÷ ${sayMass(meatBlock, 'g')} × 1,000,000`,
      gives: told.measured,
    },
    againstLimit(limit, told),
  ];
  return {
    steps,
    restsOn: [
      ...meat.map(({ id, at, name, mass }) => ({ id, at, said: `${name}, ${sayMass(mass, 'g')}`, role: 'meat block' })),
      ...brought.map(({ id, at, name = 'ingredient', mass }) => ({
        id,
        at,
        said: `${name}, ${sayMass(mass, 'g')}`,
        role: `brings ${limit.substance}`,
      })),
    ],
    assumptions: [
      'The base is the green weight of the trimmed meat alone: no bone, water, ice or spices.',
      'Nothing is rounded before it is compared; the figures are rounded here for reading.',
      ...sayScales(brought),
      ...told.notes,
    ],
  };
}

/** What each weighing may be wrong by, where the plan states it. */
const sayScales = (brought: readonly Brought[]): string[] => [
  ...new Set(
    brought.flatMap(({ name = 'ingredient', error = 0n }) =>
      error > 0n ? [`The weight of ${name} may be wrong by ± ${sayMass(error, 'g')}.`] : [],
    ),
  ),
];

/** Femtograms of the substance; none where the content is no percentage, which the verdict then says. */
const pureOf = ({ mass, percent }: Portion): bigint => divide(mass * BigInt(partsPerMillion(percent) ?? 0), MILLION, 'nearest');

const sayContent = (percent: number): string =>
  partsPerMillion(percent) === undefined ? 'a content that is not known' : sayPercent(percent);

function againstLimit(limit: ConcentrationLimit, { measured, because, margin }: Told): Step {
  const most = mostThousandths(limit);
  const bounds = [
    ...(limit.min === undefined ? [] : [`at least ${decimalText(limit.min, 2)} ppm`]),
    ...(most === undefined ? [] : [`at most ${decimalText(most, 3)} ppm, printed “${limit.printed}”`]),
  ];
  return {
    what: 'Against the limit',
    rule: bounds.join(', ') || 'no bound set',
    putIn: measured,
    gives: [margin, because].filter(Boolean).join('. '),
  };
}
