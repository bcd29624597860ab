import type { CoolingLimit, CoolingStage } from '../limits/limit';
import type { VerdictKind } from '../limits/verdict';
import { above, boundOf, type Bound } from '../quantity/bound';
import { millisecondsOf } from '../quantity/duration';
import type { PrintedTemperature } from '../quantity/temperature';
import { findCoolingStart, type CoolingStart } from './cooling-start';
import { crossing } from './crossing';
import type { Curve, CurveReading } from './curve';

/** What was found about one cooling stage; each finding has one verdict. */
export type StageFinding =
  | 'in time'
  | 'too late'
  | 'still above'
  | 'ended above'
  | 'not shown'
  | 'gap'
  | 'start unknown'
  | 'running'
  | 'overdue'
  | 'not begun';

/**
 * One cooling stage on the time axis, ready to be drawn. Instants are epoch ms, in the worst case the readings allow.
 */
export type StageSpan = {
  from: PrintedTemperature;
  to: PrintedTemperature;
  startAt?: number;
  endAt?: number;
  deadline?: number;
  /** Start and end by straight lines between readings: for information. */
  straight?: { startAt: number; endAt?: number };
  /** The longest time without a reading inside the stage, when it is longer than the limit tolerates (ms). */
  gap?: number;
  finding: StageFinding;
  verdict: VerdictKind;
};

export type CoolingContext = {
  /** The operator declared the stage finished. */
  ended: boolean;
  /** The present instant, when there is one (epoch ms). */
  now?: number;
  /** When cooking ended (epoch ms). */
  startAt?: number;
};

const VERDICT_OF: Record<StageFinding, VerdictKind> = {
  'in time': 'met',
  'too late': 'missed',
  'still above': 'missed',
  'ended above': 'missed',
  'not shown': 'undetermined',
  gap: 'undetermined',
  'start unknown': 'undetermined',
  running: 'undetermined',
  overdue: 'undetermined',
  'not begun': 'undetermined',
};

/** Every stage of a cooling limit, found in a prepared curve. */
export function stageSpans(curve: Curve, limit: CoolingLimit, context: CoolingContext): StageSpan[] {
  const [first] = limit.stages;
  if (!first) return [];
  const firstStart = findCoolingStart(curve, boundOf(first.from), 'first', context.startAt);
  return limit.stages.map((stage, index) => {
    const own = () => findCoolingStart(curve, boundOf(stage.from), 'last', context.startAt);
    const hasBegun = index === 0 ? firstStart : own();
    const start = stage.counted === 'start' ? firstStart : hasBegun;
    return spanOf(curve, stage, hasBegun && start, millisecondsOf(limit.longestGapSeconds), context);
  });
}

function spanOf(
  curve: Curve,
  stage: CoolingStage,
  start: CoolingStart | undefined,
  longestGap: number,
  context: CoolingContext,
): StageSpan {
  const ends = { from: stage.from, to: stage.to };
  if (!start) return withVerdict({ ...ends, finding: context.ended ? 'ended above' : 'not begun' });

  const within = millisecondsOf(stage.withinSeconds);
  const to = boundOf(stage.to);
  const end = firstStayingAtOrBelow(curve.warmer, to);
  const span = { ...ends, startAt: start.at, deadline: start.at + within };
  const gap = longestGapIn(curve.colder, start, end ?? curve.colder.length - 1, longestGap);
  const last = curve.warmer[end ?? curve.warmer.length - 1];
  if (!last) return withVerdict({ ...span, finding: 'not begun' });

  if (end === undefined) {
    // Across a gap the straight line says nothing; only from the first reading below is the stage surely running.
    const surelySince = gap === undefined ? start.straightAt : atOf(curve, start.firstBelow);
    const finding = findingWhileAbove({ start, within, surelySince, lastAt: last.at, context });
    return withVerdict({ ...span, gap, straight: { startAt: start.straightAt }, finding });
  }
  const straightEnd = straightEndOf(curve, end, to, start);
  const lastAbove = end - 1 >= start.firstBelow ? curve.warmer[end - 1] : undefined;
  const finding = findingOnceReached({
    longest: last.at - start.at,
    straight: straightEnd - start.straightAt,
    surely: lastAbove ? lastAbove.at - atOf(curve, start.firstBelow) : 0,
    within,
    gap,
    isKnown: start.isKnown,
  });
  return withVerdict({
    ...span,
    endAt: last.at,
    gap,
    straight: { startAt: start.straightAt, endAt: straightEnd },
    finding,
  });
}

type StillAbove = { start: CoolingStart; within: number; surelySince: number; lastAt: number; context: CoolingContext };

function findingWhileAbove({ start, within, surelySince, lastAt, context: { ended, now } }: StillAbove): StageFinding {
  if (lastAt >= surelySince + within) return 'still above';
  if (ended) return 'ended above';
  if (lastAt >= start.at + within) return 'not shown';
  if (now !== undefined && now > start.at + within) return 'overdue';
  return start.isKnown ? 'running' : 'start unknown';
}

type Reached = { longest: number; straight: number; surely: number; within: number; gap?: number; isKnown: boolean };

function findingOnceReached({ longest, straight, surely, within, gap, isKnown }: Reached): StageFinding {
  if (surely > within) return 'too late';
  if (gap !== undefined) return 'gap';
  // A straight-line instant is good to far less than the clock's own millisecond; nothing closer is called.
  if (straight - within >= 1) return 'too late';
  if (!isKnown) return 'start unknown';
  return longest <= within ? 'in time' : 'not shown';
}

/** The first reading at or below the bound after which no reading is above it again. */
function firstStayingAtOrBelow(readings: readonly CurveReading[], to: Bound): number | undefined {
  const end = 1 + readings.findLastIndex(({ temperature }) => above(temperature, to) > 0);
  return end < readings.length ? end : undefined;
}

function straightEndOf({ warmer }: Curve, end: number, to: Bound, start: CoolingStart): number {
  const before = warmer[end - 1];
  const after = warmer[end];
  if (!after) return NaN;
  return before && above(before.temperature, to) > 0
    ? Math.max(start.straightAt, crossing(before, after, to))
    : after.at;
}

function longestGapIn(
  readings: readonly CurveReading[],
  { at, firstBelow }: CoolingStart,
  end: number,
  longestGap: number,
): number | undefined {
  let before = at;
  let longest = 0;
  for (let i = Math.min(firstBelow, end); i <= end; i += 1) {
    const instant = readings[i]?.at ?? before;
    longest = Math.max(longest, instant - before);
    before = instant;
  }
  return longest <= longestGap ? undefined : longest;
}

const atOf = ({ colder }: Curve, index: number): number => colder[index]?.at ?? NaN;

const withVerdict = (span: Omit<StageSpan, 'verdict'>): StageSpan => ({ ...span, verdict: VERDICT_OF[span.finding] });
