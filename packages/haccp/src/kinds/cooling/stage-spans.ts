import type { CoolingLimit, CoolingStage } from './cooling-limit';
import { millisecondsOf } from '../../quantity/duration';
import type { Degrees } from '../../quantity/temperature';
import { straightEndOf, type EndSoFar, type Landing } from './cooling-end';
import { startOfStage, type CoolingSoFar } from './cooling-so-far';
import { startOf, type CoolingStart } from './cooling-start';
import type { Instant } from '../../thermal/instant';
import { passingOf, type Passing } from './passing';
import { VERDICT_OF, type CoolingContext, type StageFinding, type StageSpan } from './stage-span';

export type * from './stage-span';

/** `startAt` is the one the chill began with. */
export const spansOf = (cooling: CoolingSoFar, context: CoolingContext): StageSpan[] =>
  cooling.limit.stages.map(({ withinSeconds }, index): StageSpan => {
    const named = nameOf(cooling.limit, index);
    const clocked = withoutClock(cooling, index, context);
    if (clocked) return clocked;
    const start = startOf(startOfStage(cooling, cooling.limit, index));
    if (!start) {
      const finding = context.ended ? 'ended above' : 'not begun';
      return { ...named, finding, verdict: VERDICT_OF[finding] };
    }
    const end = cooling.ends[index] as EndSoFar;
    const within = millisecondsOf(withinSeconds);
    const gap = longestGapIn(end, start, millisecondsOf(cooling.limit.longestGapSeconds));
    const allowed = { within, gap };
    const landed = end.landing && landedAt(end, end.landing, start, context.chiller);
    const finding = landed
      ? findingOnceReached(start, landed, allowed)
      : findingWhileAbove(start, (cooling.last as Instant).at, allowed, context);
    const { before, below } = start.fall;
    const begun = named.from && passingOf(before, below.colder, start.from, start.straightAt, context.chiller);
    return {
      ...named,
      startAt: start.at,
      endAt: landed?.at,
      deadline: start.at + within,
      straight: { startAt: start.straightAt, endAt: landed?.straightAt },
      passings: { start: begun, end: landed?.passing },
      gap,
      finding,
      verdict: VERDICT_OF[finding],
    };
  });

/** A stage in all is named by where the first one begins. */
function nameOf({ stages }: CoolingLimit, index: number): Pick<StageSpan, 'from' | 'to' | 'inAll'> {
  const { from, to, counted } = stages[index] as CoolingStage;
  const inAll = counted === 'start' && index > 0 ? true : undefined;
  return { from: inAll ? stages[0]?.from : from, to, inAll };
}

/** While the end of cooking is not recorded, or nothing was read since. */
function withoutClock({ limit, before }: CoolingSoFar, index: number, { startAt, now = -Infinity }: CoolingContext): StageSpan | undefined {
  const { withinSeconds, counted } = limit.stages[index] as CoolingStage;
  const isCounted = counted === 'end of cooking' || (counted === 'start' && limit.stages[0]?.from === undefined);
  if (!isCounted) return undefined;
  const named = nameOf(limit, index);
  if (startAt === undefined) return { ...named, finding: 'end of cooking unknown', verdict: VERDICT_OF['end of cooking unknown'] };
  if (before.isPast) return undefined;
  const deadline = startAt + millisecondsOf(withinSeconds);
  const finding = now > deadline ? 'overdue' : 'nothing since cooking';
  return { ...named, startAt, deadline, finding, verdict: VERDICT_OF[finding] };
}

type Allowed = { within: number; gap: number | undefined };

function findingWhileAbove(start: CoolingStart, lastAt: number, { within, gap }: Allowed, { ended, now }: CoolingContext): StageFinding {
  // Across a gap the straight line says nothing; only from the first reading below is the stage surely running.
  const surelySince = gap === undefined ? start.straightAt : start.surelyFrom;
  if (lastAt >= surelySince + within) return 'still above';
  if (ended) return 'ended above';
  if (lastAt >= start.at + within) return 'not shown';
  if (now !== undefined && now > start.at + within) return 'overdue';
  return start.doubt ?? 'running';
}

/** `surelyUntil`: the last reading surely inside the stage. */
type Landed = { at: number; straightAt: number; passing: Passing; surelyUntil: number; isSeenAbove: boolean };

function landedAt(end: EndSoFar, landing: Landing, start: CoolingStart, chiller: Degrees | undefined): Landed {
  const { reading, before, index } = landing;
  const straightAt = straightEndOf(end, landing, start.straightAt);
  return {
    at: reading.at,
    straightAt,
    passing: passingOf(before, reading, end.to, straightAt, chiller),
    surelyUntil: before && index > start.fall.index ? before.at : start.surelyFrom,
    isSeenAbove: before !== undefined,
  };
}

function findingOnceReached(start: CoolingStart, landed: Landed, { within, gap }: Allowed): StageFinding {
  if (landed.surelyUntil - start.surelyFrom > within) return 'too late';
  if (gap !== undefined) return 'gap';
  // Straight-line instants are good to far less than the clock's millisecond; nothing closer is called.
  if (landed.isSeenAbove && landed.straightAt - start.straightAt - within >= 1) return 'too late';
  if (start.doubt) return start.doubt;
  return landed.at - start.at <= within ? 'in time' : 'not shown';
}

/** Where longer than tolerated. */
function longestGapIn(end: EndSoFar, { at, fall }: CoolingStart, tolerated: number): number | undefined {
  const longest = Math.max(0, fall.at - at, end.landing ? end.gapAtLanding : end.gap);
  return longest <= tolerated ? undefined : longest;
}
