import { sayPrinted } from '../../quantity/bound';
import { millisecondsOf, sayDuration } from '../../quantity/duration';
import type { CurveReading } from '../../thermal/curve';
import type { BandTime } from '../../thermal/time-in-band';
import type { BandTimeLimit } from './band-time-limit';
import { sayFromTo } from '../../quantity/say-from-to';
import type { Verdict, VerdictKind } from '../../limits/verdict';

/** What was found about a come-up; each finding has one verdict. */
export type BandFinding = 'in time' | 'too long' | 'not shown' | 'gap' | 'start unknown' | 'ended below' | 'running' | 'overdue';

type Words = { band: string; to: string; took: string; allowed: string; gap: string; tolerated: string; left: string };
type Said = Pick<Verdict, 'kind' | 'measured' | 'margin' | 'spare' | 'because' | 'next' | 'running'>;

const FILL_IN = 'Add the readings in between from the logger, or hold the lot.';

const VERDICT_OF = (finding: BandFinding): VerdictKind =>
  finding === 'in time' ? 'met' : finding === 'too long' ? 'missed' : 'undetermined';

const SENTENCES: Record<BandFinding, (words: Words) => { because: string; next?: string }> = {
  'in time': ({ took, allowed }) => ({ because: `It took at most ${took}; ${allowed} are allowed.` }),
  'too long': ({ band, allowed }) => ({
    because: `The core was between ${band} for longer than ${allowed}.`,
    next: 'Hold the lot and follow the corrective action of the plan.',
  }),
  'not shown': ({ allowed }) => ({
    because: `The readings do not show that it took no longer than ${allowed}.`,
    next: FILL_IN,
  }),
  gap: ({ gap, tolerated }) => ({
    because: `There is no reading for ${gap}; at most ${tolerated} may lie between two readings.`,
    next: FILL_IN,
  }),
  'start unknown': () => ({
    because: 'The first reading is already inside, so the start is not known.',
    next: 'Add an earlier reading, or the time the step began.',
  }),
  'ended below': ({ to }) => ({
    because: `${to} was not reached, so the time is not complete.`,
    next: `Add the readings up to ${to}, or hold the lot.`,
  }),
  running: ({ to, left }) => ({ because: `${to} has not been reached yet.`, next: `Go on: reach ${to}${left}.` }),
  overdue: ({ allowed, to }) => ({
    because: `${allowed} may already be over and ${to} has not been seen.`,
    next: 'Read the core temperature now.',
  }),
};

/** A come-up in words. @param isInside the last reading lies in the band, so its time is being spent */
export function sayBandTime(
  finding: BandFinding,
  time: BandTime,
  limit: BandTimeLimit,
  last: CurveReading,
  isInside: boolean,
  now: number | undefined,
): Said {
  const { unit } = last.temperature;
  const most = millisecondsOf(limit.maxSeconds);
  const spare = most - time.longest;
  const deadline = isInside ? last.at + spare : undefined;
  const words = {
    band: sayFromTo(limit.from, limit.to, unit),
    to: sayPrinted(limit.to, unit),
    took: sayDuration(time.longest),
    allowed: sayDuration(most),
    gap: sayDuration(time.gap ?? NaN),
    tolerated: sayDuration(millisecondsOf(limit.longestGapSeconds)),
    left: deadline === undefined ? '' : ` within ${sayDuration(deadline - (now ?? last.at))}`,
  };
  const isGoingOn = finding === 'running' || finding === 'overdue';
  return {
    kind: VERDICT_OF(finding),
    measured: `${words.band} in ${words.took}`,
    margin: sayMargin(finding, spare),
    spare,
    ...SENTENCES[finding](words),
    ...(isGoingOn && {
      running: { stage: words.band, bound: words.to, deadline, since: sinceOf(time, last, isInside) },
    }),
  };
}

function sayMargin(finding: BandFinding, spare: number): string | undefined {
  if (spare < 0) return `${sayDuration(spare)} too long`;
  if (finding === 'in time') return `${sayDuration(spare)} to spare`;
  return finding === 'running' ? `${sayDuration(spare)} left at the last reading` : undefined;
}

/** With all the time inside laid end to end before the last reading. */
const sinceOf = ({ longest }: BandTime, last: CurveReading, isInside: boolean): number | undefined =>
  isInside ? last.at - longest : undefined;
