import { sayPrinted } from '../quantity/bound';
import { sayDegrees } from '../quantity/degrees';
import { millisecondsOf, sayAbout, sayDuration } from '../quantity/duration';
import type { TemperatureUnit } from '../quantity/temperature';
import type { CurveReading } from '../thermal/curve';
import type { StageSpan } from '../thermal/stage-spans';
import type { CurveContext } from './curve-context';
import type { CoolingLimit } from './limit';
import { sayFromTo } from './say-limit';
import type { Verdict } from './verdict';

export type SaidStage = Pick<Verdict, 'kind' | 'margin' | 'because' | 'next' | 'running' | 'spare'>;

const CORRECT = 'Hold the lot and follow the corrective action of the plan.';

/** One stage in words. */
export function sayStage(
  span: StageSpan,
  limit: CoolingLimit,
  index: number,
  last: CurveReading,
  context: CurveContext,
): SaidStage {
  const { unit } = last.temperature;
  const name = sayStageName(span, limit, index, unit);
  const allowed = sayDuration(millisecondsOf(limit.stages[index]?.withinSeconds ?? NaN));
  const bound = sayPrinted(span.to, unit);
  const reading = sayDegrees(last.temperature);
  const spare = span.deadline === undefined ? undefined : span.deadline - (span.endAt ?? last.at);
  const shared = { kind: span.verdict, spare, margin: sayMargin(span, spare) };

  switch (span.finding) {
    case 'in time':
      return { ...shared, because: `${name} took at most ${sayTook(span)}; ${allowed} are allowed.` };
    case 'too late':
      return { ...shared, because: `${name} took ${sayTook(span)}; ${allowed} are allowed.`, next: CORRECT };
    case 'still above': {
      const because = `After ${allowed} the core was still at ${reading}, above ${bound}.`;
      return { ...shared, because, next: context.ended ? CORRECT : `Chill on without a break. ${CORRECT}` };
    }
    case 'ended above': {
      const because = `Chilling was ended before ${bound} was reached: the last reading is ${reading}.`;
      return { ...shared, because, next: `Chill on to ${bound} and read again. ${CORRECT}` };
    }
    case 'not shown':
      return { ...shared, because: `The readings do not show that ${name} took no longer than ${allowed}.`, next: missingReadings() };
    case 'gap':
      return { ...shared, because: sayGap(span, limit), next: missingReadings() };
    case 'start unknown': {
      const because = `The first reading is already below ${sayPrinted(span.from, unit)}, so the start of ${name} is not known.`;
      return { ...shared, because, next: 'Add an earlier reading, or the time cooking ended.', running: runningOf(span, unit, name) };
    }
    case 'overdue': {
      const because = `${allowed} are over and no reading shows ${bound}.`;
      return { ...shared, because, next: 'Read the core temperature now.', running: runningOf(span, unit, name) };
    }
    case 'running':
      return {
        ...shared,
        because: `${bound} has not been reached yet.`,
        next: `Chill on: reach ${bound} within ${sayTimeLeft(span, last, context)}.`,
        running: runningOf(span, unit, name),
      };
    case 'not begun': {
      const from = sayPrinted(span.from, unit);
      return { ...shared, because: `${name} has not begun: no reading below ${from} yet.`, next: `Chill without a break and read the core often.` };
    }
  }
}

/** What was measured of one stage: "130 → 80 °F in 1 h 20 min". */
export function sayStageMeasured(span: StageSpan, last: CurveReading): string {
  const name = sayFromTo(span.from, span.to, last.temperature.unit);
  if (span.startAt === undefined) return `${name} not begun`;
  if (span.endAt !== undefined) return `${name} in ${sayTook(span)}`;
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

function sayStageName({ from, to }: StageSpan, { stages }: CoolingLimit, index: number, unit: TemperatureUnit): string {
  const isFromTheStart = index > 0 && stages[index]?.counted === 'start';
  return sayFromTo(isFromTheStart ? (stages[0]?.from ?? from) : from, to, unit);
}

function sayMargin({ finding, endAt }: StageSpan, spare: number | undefined): string | undefined {
  if (spare === undefined) return undefined;
  if (spare < 0) return `${sayDuration(spare)} too long`;
  if (endAt !== undefined) return `${sayDuration(spare)} to spare`;
  return finding === 'running' || finding === 'start unknown' ? `${sayDuration(spare)} left at the last reading` : undefined;
}

function sayGap({ gap }: StageSpan, { longestGapSeconds }: CoolingLimit): string {
  const tolerated = sayDuration(millisecondsOf(longestGapSeconds));
  return `There is no reading for ${sayDuration(gap ?? NaN)}; at most ${tolerated} may lie between two readings.`;
}

const missingReadings = (): string => 'Add the readings in between from the logger, or hold the lot.';

const sayTook = ({ startAt, endAt }: StageSpan): string => sayDuration((endAt ?? NaN) - (startAt ?? NaN));

function sayTimeLeft({ deadline }: StageSpan, last: CurveReading, { now }: CurveContext): string {
  const left = sayDuration((deadline ?? NaN) - (now ?? last.at));
  return now === undefined ? `${left} of the last reading` : `the next ${left}`;
}

const runningOf = (span: StageSpan, unit: TemperatureUnit, stage: string): Verdict['running'] => ({
  stage,
  bound: sayPrinted(span.to, unit),
  deadline: span.deadline,
  since: span.startAt,
});
