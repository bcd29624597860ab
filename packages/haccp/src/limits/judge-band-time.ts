import { above, boundOf, type Bound } from '../quantity/bound';
import { millisecondsOf, sayAbout } from '../quantity/duration';
import { prepareCurve, type Curve, type CurveReading } from '../thermal/curve';
import { timeInBand, type BandTime } from '../thermal/time-in-band';
import type { CurveContext } from './curve-context';
import type { BandTimeLimit } from './limit';
import { limitFault } from './limit-fault';
import { nothingUsableIn } from './nothing-usable';
import { sayBandTime, type BandFinding } from './say-band-time';
import { sayLimit } from './say-limit';
import { unusableLimit } from './unusable-limit';
import type { Verdict } from './verdict';

type Band = { low: Bound; high: Bound };
/** How a curve came through the band. */
type Passage = { time: BandTime; isFinished: boolean; isStartKnown: boolean; isInside: boolean };

/**
 * Met when the band was crossed from `from` up to `to` and the longest time the readings allow inside it is within the
 * limit. All time inside adds up until `to` was last reached; once the stage is ended, what follows belongs to the
 * next.
 */
export function judgeBandTime(readings: readonly CurveReading[], limit: BandTimeLimit, context: CurveContext): Verdict {
  const curve = prepareCurve(readings);
  const last = curve.colder[curve.colder.length - 1];
  if (!last) return nothingUsableIn(curve, limit);

  const shared = { limit: sayLimit(limit, last.temperature.unit), source: limit.source };
  const fault = limitFault(limit);
  if (fault) return { ...shared, ...unusableLimit(fault), notes: curve.notes };

  const passage = passageOf(curve, { low: boundOf(limit.from), high: boundOf(limit.to) }, limit, context);
  const { longest, straight } = passage.time;
  const finding = findingOf(passage, millisecondsOf(limit.maxSeconds), last, context);
  const note = `By straight lines between the readings: ${sayAbout(straight)}.`;
  return {
    ...shared,
    ...sayBandTime(finding, passage.time, limit, last, passage.isInside, context.now),
    notes: straight < longest ? [...curve.notes, note] : curve.notes,
  };
}

function passageOf(
  curve: Curve,
  { low, high }: Band,
  { longestGapSeconds }: BandTimeLimit,
  { ended, startAt }: CurveContext,
): Passage {
  const longestGap = millisecondsOf(longestGapSeconds);
  const end = curve.colder.length - 1;
  const reached = curve.colder.findLastIndex(({ temperature }) => above(temperature, high) >= 0);
  const time = timeInBand(curve, low, high, longestGap, ended && reached >= 0 ? reached : end);

  const isStillOutside = isAtOrBelow(curve.warmer[0], low);
  const lead = isStillOutside ? undefined : leadIn(curve.colder[0], startAt);
  return {
    time: lead === undefined ? time : withLead(time, lead, longestGap),
    isFinished: reached >= 0 && (ended || reached === end),
    isStartKnown: isStillOutside || lead !== undefined,
    isInside: reached !== end && !isAtOrBelow(curve.colder[end], low),
  };
}

function findingOf(
  { time, isFinished, isStartKnown, isInside }: Passage,
  most: number,
  last: CurveReading,
  { ended, now }: CurveContext,
): BandFinding {
  // A straight-line time is good to far less than the clock's own millisecond; nothing closer is called.
  const sure = time.gap === undefined ? time.straight : time.straightOutsideGaps;
  if (sure - most >= 1) return 'too long';
  if (!isFinished && ended) return 'ended below';
  if (!isFinished) return isInside && (now ?? last.at) - last.at > most - time.longest ? 'overdue' : 'running';
  if (!isStartKnown) return 'start unknown';
  if (time.gap !== undefined) return 'gap';
  return time.longest <= most ? 'in time' : 'not shown';
}

/** The time between the start of the step and a first reading already inside the band: it may all have been inside. */
function leadIn(first: CurveReading | undefined, startAt: number | undefined): number | undefined {
  return first !== undefined && startAt !== undefined && startAt <= first.at ? first.at - startAt : undefined;
}

function withLead(time: BandTime, lead: number, longestGap: number): BandTime {
  const gap = lead > longestGap ? Math.max(time.gap ?? 0, lead) : time.gap;
  return { ...time, longest: time.longest + lead, gap };
}

const isAtOrBelow = (reading: CurveReading | undefined, bound: Bound): boolean =>
  reading !== undefined && above(reading.temperature, bound) <= 0;
