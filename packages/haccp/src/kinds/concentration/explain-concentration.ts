import { coded, wordFor } from '../../limits/coded';
import { joined, sum } from '../../limits/line-part';
import type { Coded, Phrase, Verdict } from '../../limits/verdict';
import { divide } from '../../quantity/divide';
import { decimalText } from '../../quantity/decimal';
import { partsPerMillion } from '../../quantity/percent';
import { grams, percent as percentage } from '../../calculators/figures';
import { countedShare } from './counted-as';
import { mostThousandths } from './dose-for';
import type { Portion } from './judge-concentration';
import type { ConcentrationLimit } from './concentration-limit';
import { againstLimit } from '../../explain/explain-by-verdict';
import type { ExplainedStep, RestingOn, WorkedOut } from '../../explain/explanation';

/** A named weighing, or the share that came with rework. */
export type Brought = Omit<Portion, 'name'> & { id?: string; at?: number; name?: string | Phrase };
/** As trimmed (femtograms), of a delivery or in rework. */
export type MeatIn = { id?: string; at?: number; name: string | Phrase; mass: bigint };

const MILLION = 1_000_000n;
const NAMELESS: Phrase = { code: 'the-ingredient' };

/** Σ(ingredient × content) ÷ meat block × 1,000,000. */
export function explainConcentration(
  limit: ConcentrationLimit,
  verdict: Verdict,
  brought: readonly Brought[],
  meat: readonly MeatIn[],
  meatBlock: bigint,
): WorkedOut {
  const amounts = brought.map((portion) => ({ ...portion, pure: pureOf(portion) }));
  const pure = amounts.reduce((all, one) => all + one.pure, 0n);
  const share = countedShare(limit);
  const counted = divide(pure * share.numerator, share.denominator, 'nearest');
  const isIon = share.numerator !== share.denominator;
  const substance = wordFor('substance', limit.substance);
  const steps: ExplainedStep[] = [
    {
      what: coded('meat-block'),
      rule: coded('meat-added-up'),
      putIn:
        meat.length > 0
          ? {
              sum: joined(
                meat.map(({ mass }) => grams(mass)),
                ' + ',
              ),
            }
          : coded('nothing-yet'),
      gives: grams(meatBlock),
    },
    ...amounts.map(
      ({ name = NAMELESS, mass, percent, pure: held }): ExplainedStep => ({
        what: coded('substance-in', { substance, name }),
        rule: coded('weight-times-content'),
        putIn: sum`${grams(mass)} × ${partsPerMillion(percent) === undefined ? coded('content-not-known') : percentage(percent)}`,
        gives: grams(held, 6),
      }),
    ),
    ...(isIon
      ? [
          {
            what: coded('counted-as', { ion: limit.countedAs as string }),
            rule: coded('ion-by-molar-mass', { substance }),
            putIn: sum`${grams(pure, 6)} × ${Number(share.numerator)} ÷ ${Number(share.denominator)}`,
            gives: grams(counted, 6),
          },
        ]
      : []),
    {
      what: coded('ingoing'),
      rule: coded('substance-by-meat'),
      putIn: sum`${grams(counted, 6)} ÷ ${grams(meatBlock)} × ${1_000_000}`,
      gives: { verdict: 'measured' },
    },
    { ...againstLimit, rule: boundsOf(limit) },
  ];
  return {
    steps,
    restsOn: [
      ...meat.map(({ name, mass, ...record }) => weighed(record, name, mass, coded('is-meat-block'))),
      ...brought.map(({ id, at, name, mass }) => weighed({ id, at }, name, mass, coded('brings', { substance }))),
    ],
    assumptions: [coded('base-green-weight'), coded('nothing-rounded-before'), ...scaleErrors(brought), ...verdict.notes],
  };
}

const weighed = (record: { id?: string; at?: number }, name: string | Phrase = NAMELESS, mass: bigint, role: Coded): RestingOn => ({
  ...record,
  is: coded('named-weight', { name, weight: grams(mass) }),
  role,
});

const scaleErrors = (brought: readonly Brought[]): Coded[] =>
  brought.flatMap(({ name = NAMELESS, error = 0n }) => (error > 0n ? [coded('weight-may-be-wrong', { name, error: grams(error) })] : []));

/** Femtograms; zero where the content is no percentage, which the verdict then says. */
const pureOf = ({ mass, percent }: Brought): bigint => divide(mass * BigInt(partsPerMillion(percent) ?? 0), MILLION, 'nearest');

function boundsOf(limit: ConcentrationLimit): Coded {
  const most = mostThousandths(limit);
  const least = limit.min === undefined ? undefined : ({ value: decimalText(limit.min, 2), unit: 'ppm' } as const);
  if (most === undefined) return least ? coded('bounds-least', { least }) : coded('no-bound');
  const figures = { most: { value: decimalText(most, 3), unit: 'ppm' } as const, printed: limit.printed };
  return least ? coded('bounds-both', { least, ...figures }) : coded('bounds-most', figures);
}
