import { sayPrinted } from '../../quantity/bound';
import { sayDegrees } from '../../quantity/degrees';
import { millisecondsOf, sayAbout, sayDuration } from '../../quantity/duration';
import type { TemperatureUnit } from '../../quantity/temperature';
import type { CurveReading } from '../../thermal/curve';
import type { StageFinding, StageSpan } from './stage-span';
import type { CurveContext } from '../../limits/curve-context';
import type { CoolingLimit, CoolingStage } from './cooling-limit';
import { sayFromTo } from '../../quantity/say-from-to';
import type { Verdict } from '../../limits/verdict';

/** One stage, or the start of chilling, in words. */
export type SaidStage = Pick<Verdict, 'kind' | 'margin' | 'because' | 'next' | 'running' | 'spare'>;

/** Everything a sentence about a stage may need, said in the unit of the readings. */
type Words = {
  stage: string;
  from: string;
  to: string;
  reading: string;
  took: string;
  allowed: string;
  gap: string;
  tolerated: string;
  left: string;
};

const HOLD = 'Hold the lot and follow the corrective action of the plan.';
const FILL_IN = 'Add the readings in between from the logger, or hold the lot.';

const SENTENCES: Record<StageFinding, (words: Words) => { because: string; next?: string }> = {
  'in time': ({ stage, took, allowed }) => ({ because: `${stage} took at most ${took}; ${allowed} are allowed.` }),
  'too late': ({ stage, took, allowed }) => ({
    because: `${stage} took ${took}; ${allowed} are allowed.`,
    next: HOLD,
  }),
  'still above': ({ stage, took, allowed, reading }) => ({
    because: `${stage} is not done: ${reading} after ${took}; ${allowed} are allowed.`,
    next: `Chill on without a break. ${HOLD}`,
  }),
  'ended above': ({ to, reading }) => ({
    because: `Chilling was ended before ${to} was reached: the last reading is ${reading}.`,
    next: `Chill on to ${to} and read again. ${HOLD}`,
  }),
  'not shown': ({ stage, allowed }) => ({
    because: `The readings do not show that ${stage} took no longer than ${allowed}.`,
    next: FILL_IN,
  }),
  gap: ({ gap, tolerated }) => ({
    because: `There is no reading for ${gap}; at most ${tolerated} may lie between two readings.`,
    next: FILL_IN,
  }),
  'start unknown': ({ from, stage }) => ({
    because: `The first reading is already below ${from}, so the start of ${stage} is not known.`,
    next: 'Add an earlier reading, or the time cooking ended.',
  }),
  'end of cooking late': ({ stage }) => ({
    because: `The core was as hot before the recorded end of cooking as after it: ${stage} may have begun earlier.`,
    next: 'Correct the time cooking ended, to when the core was hottest or before.',
  }),
  'end of cooking unknown': ({ stage }) => ({
    because: `The time cooking ended is not recorded, so ${stage} cannot be timed.`,
    next: 'Record the end of cooking.',
  }),
  'nothing since cooking': ({ to, left }) => ({
    because: 'There is no reading since cooking ended.',
    next: `Chill and read the core: ${to} within ${left}.`,
  }),
  running: ({ to, left }) => ({
    because: `${to} has not been reached yet.`,
    next: `Chill on: reach ${to} within ${left}.`,
  }),
  overdue: ({ allowed, to }) => ({
    because: `${allowed} are over and no reading shows ${to}.`,
    next: 'Read the core temperature now.',
  }),
  'not begun': ({ stage, from }) => ({
    because: `${stage} has not begun: no reading below ${from} yet.`,
    next: 'Chill without a break and read the core often.',
  }),
};

const GOING_ON: StageFinding[] = ['running', 'overdue', 'start unknown', 'end of cooking late', 'nothing since cooking'];

/** One stage in words. */
export function sayStage(span: StageSpan, limit: CoolingLimit, index: number, last: CurveReading, context: CurveContext): SaidStage {
  const words = wordsFor(span, limit, index, last, context);
  const spare = span.deadline === undefined ? undefined : span.deadline - (span.endAt ?? last.at);
  const isGoingOn = GOING_ON.includes(span.finding) && span.endAt === undefined;
  return {
    kind: span.verdict,
    spare,
    margin: sayMargin(span, spare, isGoingOn),
    ...SENTENCES[span.finding](words),
    ...(isGoingOn && {
      running: { stage: words.stage, bound: words.to, deadline: span.deadline, since: span.startAt },
    }),
  };
}

/** What was measured of one stage: "130 → 80 °F in 1 h 20 min". */
export function sayStageMeasured(span: StageSpan, last: CurveReading): string {
  const name = sayFromTo(span.from, span.to, last.temperature.unit);
  const inAll = span.inAll ? ' in all' : '';
  if (span.finding === 'end of cooking unknown') return `${name} not timed`;
  if (span.startAt === undefined) return `${name} not begun`;
  if (!span.straight) return `${name}: nothing read`;
  if (span.endAt !== undefined) return `${name} in ${sayDuration(span.endAt - span.startAt)}${inAll}`;
  return `${name}: ${sayDegrees(last.temperature)} after ${sayDuration(last.at - span.startAt)}`;
}

/** Straight-line times where they differ from the worst case that counts. */
export function straightNotes(spans: readonly StageSpan[], unit: TemperatureUnit): string[] {
  return spans.flatMap(({ from, to, startAt, endAt, straight }) => {
    if (startAt === undefined || endAt === undefined || straight?.endAt === undefined) return [];
    const estimate = straight.endAt - straight.startAt;
    if (estimate >= endAt - startAt) return [];
    return [`By straight lines between the readings: ${sayFromTo(from, to, unit)} in ${sayAbout(estimate)}.`];
  });
}

function wordsFor(
  span: StageSpan,
  { stages, longestGapSeconds }: CoolingLimit,
  index: number,
  last: CurveReading,
  { now }: CurveContext,
): Words {
  const { unit } = last.temperature;
  const own = stages[index] as CoolingStage;
  const left = sayDuration((span.deadline ?? NaN) - (now ?? last.at));
  return {
    stage: sayFromTo(span.from, span.to, unit),
    from: span.from ? sayPrinted(span.from, unit) : 'the end of cooking',
    to: sayPrinted(span.to, unit),
    reading: sayDegrees(last.temperature),
    took: sayDuration((span.endAt ?? last.at) - (span.startAt ?? NaN)),
    allowed: sayDuration(millisecondsOf(own.withinSeconds)),
    gap: sayDuration(span.gap ?? NaN),
    tolerated: sayDuration(millisecondsOf(longestGapSeconds)),
    left: now === undefined ? `${left} of the last reading` : `the next ${left}`,
  };
}

/** Nothing while it is in doubt: "undetermined, 30 min to spare" says two things at once. */
function sayMargin({ finding, verdict }: StageSpan, spare: number | undefined, isGoingOn: boolean): string | undefined {
  if (spare === undefined) return undefined;
  if (verdict === 'missed' && spare < 0) return `${sayDuration(spare)} too long`;
  if (finding === 'in time') return `${sayDuration(spare)} to spare`;
  return isGoingOn && spare >= 0 ? `${sayDuration(spare)} left at the last reading` : undefined;
}
