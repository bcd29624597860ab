import { boundOf } from '../../quantity/bound';
import { millisecondsOf } from '../../quantity/duration';
import type { CurveReading } from '../../thermal/curve';
import { coldOver, warmOver, type Instant } from '../../thermal/instant';
import { addToBandTime, copyOfTime, copyTime, noTime, type Band, type BandTime } from '../../thermal/time-in-band';
import type { CurveContext } from '../../limits/curve-context';
import type { BandTimeLimit } from './band-time-limit';
import { limitFault } from '../../limits/limit-fault';
import { nothingUsableIn } from '../../limits/nothing-usable';
import { byStraightLines } from '../../limits/by-straight-lines';
import { bandTimeFound, type BandFinding } from './band-time-findings';
import { unusableLimit } from '../../limits/unusable-limit';
import type { Remark, Verdict } from '../../limits/verdict';

/** Constant in size, however many readings. */
export type BandTimeSoFar = {
  readonly limit: BandTimeLimit;
  readonly band: Band;
  /** Time inside: in all, and until the upper bound may last have been reached. */
  time: BandTime;
  timeUntilReached: BandTime;
  /** Upper bound surely reached: at some time, and at the last reading. */
  wasReached: boolean;
  isReached: boolean;
  first?: Instant;
  last?: Instant;
};

export type Passage = {
  time: BandTime;
  /** From the recorded start to a first reading inside (ms). */
  lead?: number;
  /** Ended: what followed the last time the upper bound was reached is left out. */
  isUntilReached: boolean;
  isFinished: boolean;
  isStartKnown: boolean;
  isInside: boolean;
};

export const beginBandTime = (limit: BandTimeLimit, error: number): BandTimeSoFar => ({
  limit,
  band: {
    low: boundOf(limit.from),
    high: boundOf(limit.to),
    longestGap: millisecondsOf(limit.longestGapSeconds),
    error,
  },
  time: noTime(),
  timeUntilReached: noTime(),
  wasReached: false,
  isReached: false,
  first: undefined,
  last: undefined,
});

export function addToBandTimeSoFar(come: BandTimeSoFar, instant: Instant): void {
  const { band, last } = come;
  if (last) addToBandTime(come.time, band, last, instant);
  else come.first = instant;
  come.last = instant;
  come.isReached = coldOver(instant, band.high) >= band.error;
  come.wasReached ||= come.isReached;
  // A falling core reaches nothing new.
  const mayRise = !last || instant.warm >= last.warm;
  if (come.isReached || (mayRise && warmOver(instant, band.high) >= -band.error)) copyTime(come.time, come.timeUntilReached);
}

/**
 * Met when the band was crossed upward and its longest possible time is within the limit. Time inside adds up until
 * `to` was last reached; after the end the rest is the next stage's.
 */
export function judgeBandTimeSoFar(come: BandTimeSoFar, curveNotes: readonly Remark[], context: CurveContext): Verdict {
  const { limit } = come;
  if (!come.last || !come.first) return nothingUsableIn(curveNotes);
  const last = come.last.colder;
  const fault = limitFault(limit);
  if (fault) return { ...unusableLimit(fault), notes: [...curveNotes] };

  const passage = passageOf(come, come.first, come.last, context);
  const { longest, straight } = passage.time;
  const finding = findingOf(passage, millisecondsOf(limit.maxSeconds), last, context);
  return {
    notes: straight < longest ? [...curveNotes, byStraightLines('band', straight)] : [...curveNotes],
    ...bandTimeFound(finding, passage.time, limit, last, passage.isInside, context.now, come.band.error),
  };
}

export const copyOfBandTime = (come: BandTimeSoFar): BandTimeSoFar => ({
  limit: come.limit,
  band: come.band,
  time: copyOfTime(come.time),
  timeUntilReached: copyOfTime(come.timeUntilReached),
  wasReached: come.wasReached,
  isReached: come.isReached,
  first: come.first,
  last: come.last,
});

export function passageOf(come: BandTimeSoFar, first: Instant, last: Instant, { ended, startAt }: CurveContext): Passage {
  const { low, longestGap, error } = come.band;
  const isUntilReached = ended && come.wasReached;
  const time = isUntilReached ? come.timeUntilReached : come.time;
  const isStillOutside = warmOver(first, low) <= -error;
  const lead = isStillOutside ? undefined : leadIn(first.colder, startAt);
  return {
    time: lead === undefined ? time : withLead(time, lead, longestGap),
    lead,
    isUntilReached,
    isFinished: come.wasReached && (ended || come.isReached),
    isStartKnown: isStillOutside || lead !== undefined,
    isInside: !come.isReached && coldOver(last, low) > -error,
  };
}

function findingOf(
  { time, isFinished, isStartKnown, isInside }: Passage,
  most: number,
  last: CurveReading,
  { ended, now }: CurveContext,
): BandFinding {
  // Straight-line times are good to far less than the clock's millisecond; nothing closer is called.
  const sure = time.gap === undefined ? time.straight : time.straightOutsideGaps;
  if (sure - most >= 1) return 'too-long';
  if (!isFinished && ended) return 'ended-below';
  if (!isFinished) return isInside && (now ?? last.at) - last.at > most - time.longest ? 'overdue' : 'running';
  if (!isStartKnown) return 'start-unknown';
  if (time.gap !== undefined) return 'gap';
  return time.longest <= most ? 'in-time' : 'not-shown';
}

/** From the start of the step to a first reading in the band: possibly all inside. */
function leadIn({ at }: CurveReading, startAt: number | undefined): number | undefined {
  return startAt !== undefined && startAt <= at ? at - startAt : undefined;
}

function withLead(time: BandTime, lead: number, longestGap: number): BandTime {
  const gap = lead > longestGap ? Math.max(time.gap ?? 0, lead) : time.gap;
  return { ...time, longest: time.longest + lead, gap };
}
