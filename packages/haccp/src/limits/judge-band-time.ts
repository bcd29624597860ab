import { above, boundOf, sayPrinted, type Bound } from '../quantity/bound';
import { millisecondsOf, sayAbout, sayDuration } from '../quantity/duration';
import { prepareCurve, type Curve, type CurveReading } from '../thermal/curve';
import { timeInBand, type BandTime } from '../thermal/time-in-band';
import type { CurveContext } from './curve-context';
import type { BandTimeLimit } from './limit';
import { nothingUsableIn } from './nothing-usable';
import { sayFromTo, sayLimit } from './say-limit';
import type { Verdict } from './verdict';

type Said = Omit<Verdict, 'limit' | 'source' | 'notes'>;
/** The band seen in the direction the limit names: come-up rises from `from` to `to`, a chill falls. */
type Band = { low: Bound; high: Bound; rises: boolean };
type Passage = { time: BandTime; isFinished: boolean; isStartKnown: boolean; isInside: boolean; last: CurveReading };

/**
 * Met when the band was crossed and the longest time the readings allow inside it is within the limit.
 * All time inside adds up until `to` was last reached; once the stage is ended, what follows belongs to the next one.
 */
export function judgeBandTime(readings: readonly CurveReading[], limit: BandTimeLimit, context: CurveContext): Verdict {
  const curve = prepareCurve(readings);
  const last = curve.colder[curve.colder.length - 1];
  if (!last) return nothingUsableIn(curve, limit);

  const { unit } = last.temperature;
  const band = bandOf(limit);
  const passage = passageOf(curve, band, limit, last, context);
  const straight = `By straight lines between the readings: ${sayAbout(passage.time.straight)}.`;
  return {
    limit: sayLimit(limit, unit),
    ...decide(passage, limit, context),
    notes: [...curve.notes, ...(passage.time.straight < passage.time.longest ? [straight] : [])],
    source: limit.source,
  };
}

function bandOf({ from, to }: BandTimeLimit): Band {
  const start = boundOf(from);
  const end = boundOf(to);
  const rises = end['°F'] > start['°F'];
  return rises ? { low: start, high: end, rises } : { low: end, high: start, rises };
}

function passageOf(
  curve: Curve,
  band: Band,
  { longestGapSeconds }: BandTimeLimit,
  last: CurveReading,
  { ended, startAt }: CurveContext,
): Passage {
  const reached = curve.colder.findLastIndex((_, index) => isBeyond(curve, index, band));
  const end = curve.colder.length - 1;
  const longestGap = millisecondsOf(longestGapSeconds);
  const time = timeInBand(curve, band.low, band.high, longestGap, ended && reached >= 0 ? reached : end);

  const first = curve.colder[0] ?? last;
  const isBefore = isNotYetIn(curve, band);
  const lead = startAt !== undefined && startAt <= first.at ? first.at - startAt : undefined;
  if (!isBefore && lead !== undefined) {
    time.longest += lead;
    if (lead > longestGap) time.gap = Math.max(time.gap ?? 0, lead);
  }
  return {
    time,
    isFinished: reached >= 0 && (ended || reached === end),
    isStartKnown: isBefore || lead !== undefined,
    isInside: reached !== end && !isNotYetIn({ ...curve, colder: [last], warmer: [last] }, band),
    last,
  };
}

function decide({ time, isFinished, isStartKnown, isInside, last }: Passage, limit: BandTimeLimit, { ended, now }: CurveContext): Said {
  const { unit } = last.temperature;
  const most = millisecondsOf(limit.maxSeconds);
  const span = sayFromTo(limit.from, limit.to, unit);
  const bound = sayPrinted(limit.to, unit);
  const measured = `${span} in ${sayDuration(time.longest)}`;
  const spare = most - time.longest;
  const margin = spare >= 0 ? `${sayDuration(spare)} to spare` : `${sayDuration(spare)} too long`;
  const doubt = { kind: 'undetermined' as const, measured, spare };

  if (isSurelyLonger(time, most)) {
    const because = `The core was between ${span} for longer than ${sayDuration(most)}.`;
    return { kind: 'missed', measured, margin, spare, because, next: 'Hold the lot and follow the corrective action of the plan.' };
  }
  if (!isFinished && ended) {
    return { ...doubt, because: `${bound} was not reached, so the time is not complete.`, next: `Add the readings up to ${bound}, or hold the lot.` };
  }
  if (!isFinished) return sayRunning();
  if (!isStartKnown) {
    return { ...doubt, because: 'The first reading is already inside, so the start is not known.', next: 'Add an earlier reading, or the time the step began.' };
  }
  if (time.gap !== undefined) {
    const tolerated = sayDuration(millisecondsOf(limit.longestGapSeconds));
    return { ...doubt, because: `There is no reading for ${sayDuration(time.gap)}; at most ${tolerated} may lie between two readings.`, next: 'Add the readings in between from the logger, or hold the lot.' };
  }
  if (spare < 0) {
    return { ...doubt, margin, because: `The readings do not show that it took no longer than ${sayDuration(most)}.`, next: 'Add the readings in between from the logger, or hold the lot.' };
  }
  return { kind: 'met', measured, margin, spare, because: `It took at most ${sayDuration(time.longest)}; ${sayDuration(most)} are allowed.` };

  function sayRunning(): Said {
    const deadline = isInside ? last.at + spare : undefined;
    const isOverdue = deadline !== undefined && (now ?? last.at) > deadline;
    const left = deadline === undefined ? undefined : deadline - (now ?? last.at);
    return {
      ...doubt,
      because: isOverdue ? `${sayDuration(most)} may already be over and ${bound} has not been seen.` : `${bound} has not been reached yet.`,
      next: isOverdue ? 'Read the core temperature now.' : `Go on: reach ${bound}${left === undefined ? '' : ` within ${sayDuration(left)}`}.`,
      running: { stage: span, bound, deadline },
    };
  }
}

/** A straight-line time is good to far less than the clock's own millisecond; nothing closer is called. */
const isSurelyLonger = ({ straight, straightOutsideGaps, gap }: BandTime, most: number): boolean =>
  (gap === undefined ? straight : straightOutsideGaps) - most >= 1;

/** The reading has come through the band: at or beyond `to`. */
function isBeyond({ colder, warmer }: Curve, index: number, { low, high, rises }: Band): boolean {
  const reading = rises ? colder[index] : warmer[index];
  if (!reading) return false;
  return rises ? above(reading.temperature, high) >= 0 : above(reading.temperature, low) <= 0;
}

/** The first reading has not entered the band: at or before `from`. */
function isNotYetIn({ colder, warmer }: Curve, { low, high, rises }: Band): boolean {
  const reading = rises ? warmer[0] : colder[0];
  if (!reading) return false;
  return rises ? above(reading.temperature, low) <= 0 : above(reading.temperature, high) >= 0;
}
