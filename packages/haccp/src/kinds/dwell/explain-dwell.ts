import { errorOf, type CurveContext } from '../../limits/curve-context';
import { rowsOf, type Row } from './dwell-rows';
import type { DwellLimit } from './dwell-limit';
import { rowIn } from './row-in';
import { coded } from '../../limits/coded';
import { sum } from '../../limits/line-part';
import type { Phrase } from '../../limits/verdict';
import { raised } from '../../quantity/bound';
import { onCommonScale } from '../../quantity/convert-degrees';
import { millisecondsOf } from '../../quantity/duration';
import { printedAllowing } from '../../quantity/printed-allowing';
import { timeOf } from '../../quantity/quantities';
import type { Quantity } from '../../quantity/quantity';
import { prepareCurve, type CurveReading } from '../../thermal/curve';
import type { ExplainedStep, RestingOn, WorkedOut } from '../../explain/explanation';
import { explainByVerdict } from '../../explain/explain-by-verdict';
import { lengthOf, longestStretch, type Stretch } from './longest-stretch';
import { resting } from '../../explain/readings-at';

type Held = { row: Row; stretch?: Stretch; held: number };

export function explainDwell(limit: DwellLimit, own: readonly CurveReading[], context: CurveContext): WorkedOut {
  const { colder } = prepareCurve(own);
  const last = colder.at(-1);
  const rows = rowsOf(limit);
  const error = errorOf(context);
  if (!last || !rows || error === undefined) return explainByVerdict;

  const { unit } = last.temperature;
  const longestGap = millisecondsOf(limit.longestGapSeconds);
  const held = (tolerated: number, mustRun = false) => rows.map((row) => heldFor(colder, row, error, tolerated, mustRun));
  const governs = hottestSatisfied(held(longestGap)) ??
    (context.ended ? hottestSatisfied(held(Infinity)) : undefined) ??
    leastLacking(held(longestGap, !context.ended)) ?? { row: rows[0] as Row, held: 0 };
  const gap = timeOf(longestGap);
  return {
    steps: stepsOf(governs, colder, rowIn(governs.row.printed, unit), gap),
    restsOn: restsOn(governs, colder, printedAllowing(governs.row.printed.at, unit, error)),
    assumptions: [coded('colder-and-both-at-row'), coded('longer-step-counts-nothing', { gap })],
  };
}

function heldFor(colder: readonly CurveReading[], row: Row, error: number, gap: number, mustRun: boolean): Held {
  const stretch = longestStretch(colder, raised(row.bound, error), gap, mustRun);
  return { row, stretch, held: stretch ? lengthOf(colder, stretch) : -1 };
}

const hottestSatisfied = (rows: readonly Held[]): Held | undefined => rows.findLast(({ row, held }) => held >= row.needed);

/** As the judge chooses: the hotter of two rows that lack the same. */
const leastLacking = (rows: readonly Held[]): Held | undefined =>
  rows
    .filter(({ stretch }) => stretch)
    .toReversed()
    .sort((a, b) => lacking(a) - lacking(b))[0];

const lacking = ({ row, held }: Held): number => row.needed - held;

function stepsOf({ row, stretch, held }: Held, colder: readonly CurveReading[], governing: Phrase, gap: Quantity): ExplainedStep[] {
  const [first, last] = stretch ? [colder[stretch.first], colder[stretch.last]] : [];
  const choice: ExplainedStep = {
    what: coded('row-that-governs'),
    rule: coded('row-that-governs.rule'),
    putIn: { verdict: 'limit' },
    gives: governing,
  };
  if (!first || !last)
    return [choice, { what: coded('held'), rule: coded('no-reading-at', { row: governing }), putIn: '', gives: { verdict: 'because' } }];
  return [
    choice,
    {
      what: coded('held-without-a-break'),
      rule: coded('held-without-a-break.rule', { gap }),
      putIn: sum`${{ at: last.at }} − ${{ at: first.at }}`,
      gives: timeOf(held),
    },
    {
      what: coded('against-row'),
      rule: coded('held-less-needed'),
      putIn: sum`${timeOf(held)} − ${timeOf(row.needed)}`,
      gives: { verdict: 'margin and because' },
    },
  ];
}

function restsOn({ stretch }: Held, colder: readonly CurveReading[], figure: Quantity): RestingOn[] {
  if (!stretch) {
    const heat = ({ temperature }: CurveReading) => onCommonScale(temperature);
    return resting(
      colder.reduce((most, one) => (heat(one) > heat(most) ? one : most)),
      'the-hottest',
    );
  }
  return [
    ...resting(colder[stretch.first - 1], 'one-before', { figure }),
    ...resting(colder[stretch.first], 'first-at-or-above', { figure }),
    ...(stretch.last > stretch.first ? resting(colder[stretch.last], 'last-held-at-or-above', { figure }) : []),
    ...resting(colder[stretch.last + 1], 'one-after', { figure }),
  ];
}
