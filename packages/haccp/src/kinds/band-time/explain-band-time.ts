import { errorOf, type CurveContext } from '../../limits/curve-context';
import type { BandTimeLimit } from './band-time-limit';
import { coded } from '../../limits/coded';
import { sum } from '../../limits/line-part';
import type { Span, Verdict } from '../../limits/verdict';
import { boundOf } from '../../quantity/bound';
import { millisecondsOf } from '../../quantity/duration';
import { printedIn, timeOf } from '../../quantity/quantities';
import type { Quantity } from '../../quantity/quantity';
import { risesTo } from '../../thermal/crossing';
import { prepareCurve, type CurveReading } from '../../thermal/curve';
import { coldOver, warmOver, type Instant } from '../../thermal/instant';
import { addToBandTime, instantOf, noTime, type Band } from '../../thermal/time-in-band';
import type { ExplainedStep, WorkedOut } from '../../explain/explanation';
import { explainByVerdict } from '../../explain/explain-by-verdict';
import { resting } from '../../explain/readings-at';

/** Places of the first and last reading of the steps that may be inside. */
type Inside = { first: number; last: number; steps: number; longest: number };

/** Steps that may be inside count whole; crossings are by straight lines. */
export function explainBandTime(limit: BandTimeLimit, verdict: Verdict, own: readonly CurveReading[], context: CurveContext): WorkedOut {
  const curve = prepareCurve(own);
  const last = curve.colder.at(-1);
  const error = errorOf(context);
  if (!last || error === undefined) return explainByVerdict;

  const { unit } = last.temperature;
  const [low, high] = [boundOf(limit.from), boundOf(limit.to)];
  const band = { low, high, longestGap: millisecondsOf(limit.longestGapSeconds), error };
  const inside = insideOf(curve, band, context.ended);
  const { colder } = curve;
  const [from, to] = [printedIn(limit.from, unit), printedIn(limit.to, unit)];
  return {
    steps: [
      ...(inside ? [countedStep(inside, colder, { from, to })] : []),
      ...crossingSteps([from, risesTo(colder, low)[0]], [to, risesTo(colder, high)[0]]),
      againstMost(limit, verdict),
    ],
    restsOn: inside
      ? [
          ...resting(colder[inside.first], 'begins-first-inside', { figure: from }),
          ...resting(colder[inside.last], 'ends-last-inside', { figure: to }),
        ]
      : [],
    assumptions: [coded('step-counted-whole', { band: { from, to } })],
  };
}

/** As the judge counts: after the end, time past the last reading at the upper figure is the next stage's. */
function insideOf(curve: ReturnType<typeof prepareCurve>, band: Band, hasEnded: boolean): Inside | undefined {
  const instants = curve.colder.map((_, index) => instantOf(curve, index));
  const wasReached = instants.some((own) => coldOver(own, band.high) >= band.error);
  const lastReached = instants.findLastIndex((own) => warmOver(own, band.high) >= -band.error);
  const until = hasEnded && wasReached ? lastReached : instants.length - 1;
  const time = noTime();
  let inside: Inside | undefined;
  for (let index = 1; index <= until; index += 1) {
    const had = time.longest;
    addToBandTime(time, band, instants[index - 1] as Instant, instants[index] as Instant);
    if (time.longest === had) continue;
    inside = { first: inside?.first ?? index - 1, last: index, steps: (inside?.steps ?? 0) + 1, longest: time.longest };
  }
  return inside;
}

function countedStep({ first, last, steps, longest }: Inside, colder: readonly CurveReading[], band: Span): ExplainedStep {
  const [start, end] = [first, last].map((index) => (colder[index] as CurveReading).at) as [number, number];
  const isWhole = end - start === longest;
  return {
    what: coded('time-inside-at-most'),
    rule: coded('time-inside.rule', { band }),
    putIn: isWhole
      ? sum`${{ at: end }} − ${{ at: start }}`
      : coded('steps-from-to', { count: steps, from: { at: start }, to: { at: end } }),
    gives: timeOf(longest),
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
