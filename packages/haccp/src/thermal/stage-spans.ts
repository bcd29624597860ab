import type { CoolingLimit } from '../limits/limit';
import { millisecondsOf } from '../quantity/duration';
import type { Degrees } from '../quantity/temperature';
import { straightEndOf, type EndSoFar, type Landing } from './cooling-end';
import { addToCooling, beginCooling, startOfStage, type CoolingSoFar } from './cooling-so-far';
import { startOf, type CoolingStart, type StartSoFar } from './cooling-start';
import type { Curve } from './curve';
import { passingOf } from './passing';
import { VERDICT_OF, type CoolingContext, type StageFinding, type StageSpan } from './stage-span';
import { instantOf } from './time-in-band';

export type * from './stage-span';

/** Every stage of a cooling limit, found in a prepared curve. */
export function stageSpans(curve: Curve, limit: CoolingLimit, context: CoolingContext): StageSpan[] {
  const cooling = beginCooling(limit, context);
  for (let i = 0; i < curve.colder.length; i += 1) addToCooling(cooling, instantOf(curve, i));
  return spansOf(cooling, context);
}

/** Every stage of a chill up to its last reading. `startAt` is the one the chill was begun with. */
export const spansOf = (cooling: CoolingSoFar, context: CoolingContext): StageSpan[] =>
  cooling.limit.stages.map((stage, index) => {
    const hasBegun = startOf(cooling.starts[index] as StartSoFar) !== undefined;
    const start = hasBegun ? startOf(startOfStage(cooling, cooling.limit, index)) : undefined;
    const ends = { from: stage.from, to: stage.to };
    if (!start) return withVerdict({ ...ends, finding: context.ended ? 'ended above' : 'not begun' });

    const end = cooling.ends[index] as EndSoFar;
    const within = millisecondsOf(stage.withinSeconds);
    const gap = longestGapIn(end, start, millisecondsOf(cooling.limit.longestGapSeconds));
    const { before, below } = start.fall;
    return withVerdict({
      ...ends,
      startAt: start.at,
      deadline: start.at + within,
      gap,
      straight: { startAt: start.straightAt },
      passings: { start: passingOf(before, below.colder, start.from, start.straightAt, context.chiller) },
      ...(end.landing
        ? landed(end, end.landing, start, { within, gap, chiller: context.chiller })
        : { finding: findingWhileAbove({ start, within, gap, lastAt: cooling.last?.warmer.at ?? NaN, context }) }),
    });
  });

type While = { start: CoolingStart; within: number; gap?: number; lastAt: number; context: CoolingContext };

function findingWhileAbove({ start, within, gap, lastAt, context: { ended, now } }: While): StageFinding {
  // Across a gap the straight line says nothing; only from the first reading below is the stage surely running.
  const surelySince = gap === undefined ? start.straightAt : start.fall.at;
  if (lastAt >= surelySince + within) return 'still above';
  if (ended) return 'ended above';
  if (lastAt >= start.at + within) return 'not shown';
  if (now !== undefined && now > start.at + within) return 'overdue';
  return start.isKnown ? 'running' : 'start unknown';
}

type Allowed = { within: number; gap?: number; chiller?: Degrees };

/** What there is to say once the lower bound was reached. */
function landed(end: EndSoFar, landing: Landing, start: CoolingStart, { within, gap, chiller }: Allowed) {
  const { reading, before } = landing;
  const straightAt = straightEndOf(end, landing, start.straightAt);
  const lastAbove = landing.index - 1 >= start.fall.index ? before : undefined;
  return {
    endAt: reading.at,
    straight: { startAt: start.straightAt, endAt: straightAt },
    passings: {
      start: passingOf(start.fall.before, start.fall.below.colder, start.from, start.straightAt, chiller),
      end: passingOf(before, reading, end.to, straightAt, chiller),
    },
    finding: findingOnceReached({
      longest: reading.at - start.at,
      straight: straightAt - start.straightAt,
      surely: lastAbove ? lastAbove.at - start.fall.at : 0,
      within,
      gap,
      isKnown: start.isKnown,
    }),
  };
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

/** The longest time without a reading, when it is longer than tolerated. */
function longestGapIn(end: EndSoFar, { at, fall }: CoolingStart, tolerated: number): number | undefined {
  const longest = Math.max(0, fall.at - at, end.landing ? end.gapAtLanding : end.gap);
  return longest <= tolerated ? undefined : longest;
}

const withVerdict = (span: Omit<StageSpan, 'verdict'>): StageSpan => ({ ...span, verdict: VERDICT_OF[span.finding] });
