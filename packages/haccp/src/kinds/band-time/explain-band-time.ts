import { errorOf, type CurveContext } from '../../limits/curve-context';
import type { BandTimeLimit } from './band-time-limit';
import { sayFromTo } from '../../quantity/say-from-to';
import type { Told } from '../../limits/told';
import { boundOf, sayPrinted } from '../../quantity/bound';
import { millisecondsOf, sayDuration } from '../../quantity/duration';
import { risesTo } from '../../thermal/crossing';
import { prepareCurve, type CurveReading } from '../../thermal/curve';
import { coldOver, warmOver, type Instant } from '../../thermal/instant';
import { addToBandTime, instantOf, noTime, type Band } from '../../thermal/time-in-band';
import type { WorkedStep as Step } from '../../explain/explanation';
import type { SayTime, WorkedOut } from '../../explain/explanation';
import { explainByVerdict } from '../../explain/explain-by-verdict';
import { resting } from '../../explain/readings-at';

/** The steps of a curve that may have been inside a band: places of their first and last reading, and how many. */
type Inside = { first: number; last: number; steps: number; longest: number };

/** Every step between two readings that may have been inside, whole; and where straight lines cross the two figures. */
export function explainBandTime(
  limit: BandTimeLimit,
  told: Told,
  own: readonly CurveReading[],
  context: CurveContext,
  say: SayTime,
): WorkedOut {
  const curve = prepareCurve(own);
  const last = curve.colder.at(-1);
  const error = errorOf(context);
  if (!last || error === undefined) return explainByVerdict(told);

  const { unit } = last.temperature;
  const [low, high] = [boundOf(limit.from), boundOf(limit.to)];
  const band = { low, high, longestGap: millisecondsOf(limit.longestGapSeconds), error };
  const inside = insideOf(curve, band, context.ended);
  const name = sayFromTo(limit.from, limit.to, unit);
  const { colder } = curve;
  const [from, to] = [sayPrinted(limit.from, unit), sayPrinted(limit.to, unit)];
  return {
    steps: [
      ...(inside ? [countedStep(inside, colder, name, say)] : []),
      ...crossingSteps([from, risesTo(colder, low)[0]], [to, risesTo(colder, high)[0]], say),
      againstMost(limit, told),
    ],
    restsOn: inside
      ? [
          ...resting(colder[inside.first], `begins the first step that may have been above ${from}`),
          ...resting(colder[inside.last], `ends the last step that may have been below ${to}`),
        ]
      : [],
    assumptions: [`A step between two readings that may have been between ${name} is counted whole.`],
  };
}

/** As the judge adds up: once ended, what follows the last time at the upper figure belongs to the next stage. */
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

function countedStep({ first, last, steps, longest }: Inside, colder: readonly CurveReading[], name: string, say: SayTime): Step {
  const [start, end] = [first, last].map((index) => (colder[index] as CurveReading).at) as [number, number];
  const isWhole = end - start === longest;
  return {
    what: 'Time inside, at most',
    rule: `every step between two readings that may have been between ${name}, whole`,
    putIn: isWhole ? `${say(end)} − ${say(start)}` : `${steps} steps from ${say(start)} to ${say(end)}`,
    gives: sayDuration(longest),
  };
}

type Crossed = readonly [figure: string, at: number | undefined];

const crossingSteps = ([from, start]: Crossed, [to, end]: Crossed, say: SayTime): Step[] =>
  start === undefined || end === undefined
    ? []
    : [
        {
          what: 'By straight lines, for information',
          rule: 't₁ + (bound − T₁)(t₂ − t₁) ÷ (T₂ − T₁) at each figure',
          putIn: `${from} at ${say(start)}, ${to} at ${say(end)}`,
          gives: sayDuration(Math.round((end - start) / 1000) * 1000),
        },
      ];

function againstMost({ maxSeconds }: BandTimeLimit, { measured, margin, because, spare }: Told): Step {
  const most = millisecondsOf(maxSeconds);
  return {
    what: 'Against the limit',
    rule: 'time allowed − time inside, not below 0',
    putIn: spare === undefined ? measured : `${sayDuration(most)} − ${sayDuration(most - spare)}`,
    gives: [margin, because].filter(Boolean).join('. '),
  };
}
