import { errorOf, type CurveContext } from '../../limits/curve-context';
import { bandCounted, type BandCounted } from './band-counted';
import type { BandTimeLimit } from './band-time-limit';
import type { Passage } from './judge-band-time';
import { coded } from '../../limits/coded';
import { sum } from '../../limits/line-part';
import type { Span, Verdict } from '../../limits/verdict';
import { boundOf } from '../../quantity/bound';
import { millisecondsOf } from '../../quantity/duration';
import { printedIn, timeOf } from '../../quantity/quantities';
import type { Quantity } from '../../quantity/quantity';
import { risesTo } from '../../thermal/crossing';
import type { CurveReading } from '../../thermal/curve';
import type { ExplainedStep, WorkedOut } from '../../explain/explanation';
import { explainByVerdict } from '../../explain/explain-by-verdict';
import { resting } from '../../explain/readings-at';

/** Steps that may be inside count whole; crossings are by straight lines. */
export function explainBandTime(limit: BandTimeLimit, verdict: Verdict, own: readonly CurveReading[], context: CurveContext): WorkedOut {
  const error = errorOf(context);
  const counted = error === undefined ? undefined : bandCounted(own, limit, context, error);
  const last = counted?.colder.at(-1);
  if (!counted || !last) return explainByVerdict;

  const { unit } = last.temperature;
  const { colder } = counted;
  const [from, to] = [printedIn(limit.from, unit), printedIn(limit.to, unit)];
  const span = spanOf(counted);
  return {
    steps: [
      ...(span ? [countedStep(span, counted.passage, { from, to })] : []),
      ...crossingSteps([from, risesTo(colder, boundOf(limit.from))[0]], [to, risesTo(colder, boundOf(limit.to))[0]]),
      againstMost(limit, verdict),
    ],
    restsOn: span
      ? [...resting(span.first, 'begins-first-inside', { figure: from }), ...resting(span.last, 'ends-last-inside', { figure: to })]
      : [],
    assumptions: [coded('step-counted-whole', { band: { from, to } })],
  };
}

type Counted = { first: CurveReading; last: CurveReading; startAt: number; count: number };

/** The time from a recorded start to a first reading inside is a step too. */
export function spanOf({ colder, passage: { lead = 0 }, steps }: BandCounted): Counted | undefined {
  if (!steps && lead === 0) return undefined;
  const { first, last, count } = steps ?? { first: 0, last: 0, count: 0 };
  const begins = colder[lead > 0 ? 0 : first] as CurveReading;
  return { first: begins, last: colder[last] as CurveReading, startAt: begins.at - lead, count: count + (lead > 0 ? 1 : 0) };
}

function countedStep({ last, startAt, count }: Counted, { time }: Passage, band: Span): ExplainedStep {
  return {
    what: coded('time-inside-at-most'),
    rule: coded('time-inside.rule', { band }),
    putIn:
      last.at - startAt === time.longest
        ? sum`${{ at: last.at }} − ${{ at: startAt }}`
        : coded('steps-from-to', { count, from: { at: startAt }, to: { at: last.at } }),
    gives: timeOf(time.longest),
  };
}

type Crossed = readonly [figure: Quantity, at: number | undefined];

const crossingSteps = ([from, start]: Crossed, [to, end]: Crossed): ExplainedStep[] =>
  start === undefined || end === undefined
    ? []
    : [
        {
          what: coded('by-straight-lines'),
          rule: coded('straight-line-at-each.rule'),
          putIn: sum`${coded('figure-at', { figure: from, at: { at: start } })}, ${coded('figure-at', { figure: to, at: { at: end } })}`,
          gives: timeOf(Math.round((end - start) / 1000) * 1000),
        },
      ];

function againstMost({ maxSeconds }: BandTimeLimit, { spare }: Verdict): ExplainedStep {
  const most = millisecondsOf(maxSeconds);
  return {
    what: coded('against-limit'),
    rule: coded('allowed-less-inside'),
    putIn: spare === undefined ? { verdict: 'measured' } : sum`${timeOf(most)} − ${timeOf(most - spare)}`,
    gives: { verdict: 'margin and because' },
  };
}
