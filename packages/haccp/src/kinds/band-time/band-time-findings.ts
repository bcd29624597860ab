import { millisecondsOf } from '../../quantity/duration';
import { printedAllowing } from '../../quantity/printed-allowing';
import { printedIn, timeOf } from '../../quantity/quantities';
import type { CurveReading } from '../../thermal/curve';
import type { BandTime } from '../../thermal/time-in-band';
import type { BandTimeLimit } from './band-time-limit';
import type { Figures, Found, Verdict, VerdictKind } from '../../limits/verdict';

export type BandFinding = 'in-time' | 'too-long' | 'not-shown' | 'gap' | 'start-unknown' | 'ended-below' | 'running' | 'overdue';

const kindOf = (finding: BandFinding): VerdictKind => (finding === 'in-time' ? 'met' : finding === 'too-long' ? 'missed' : 'undetermined');

/** @param isInside the last reading lies in the band: its time is running @param error of a reading, on the common scale */
export function bandTimeFound(
  finding: BandFinding,
  time: BandTime,
  limit: BandTimeLimit,
  last: CurveReading,
  isInside: boolean,
  now: number | undefined,
  error: number,
): Pick<Verdict, 'kind' | 'spare' | 'running'> & Found {
  const { unit } = last.temperature;
  const most = millisecondsOf(limit.maxSeconds);
  const spare = most - time.longest;
  const deadline = isInside ? last.at + spare : undefined;
  const to = printedAllowing(limit.to, unit, error);
  const band = { from: printedIn(limit.from, unit), to: printedIn(limit.to, unit) };
  const isGoingOn = finding === 'running' || finding === 'overdue';
  return {
    kind: kindOf(finding),
    finding: `band-${finding}`,
    measure: 'band',
    figures: {
      ...{ band, to, took: timeOf(time.longest), allowed: timeOf(most) },
      ...(time.gap !== undefined && { gap: timeOf(time.gap), tolerated: timeOf(millisecondsOf(limit.longestGapSeconds)) }),
      ...marginOf(finding, spare),
      ...(deadline !== undefined && finding === 'running' && { left: timeOf(deadline - (now ?? last.at)) }),
    },
    spare,
    ...(isGoingOn && { running: { code: 'band', figures: { band, to }, deadline, since: isInside ? last.at - time.longest : undefined } }),
  };
}

/** In doubt there is no margin; `past` is only what the worst case would be over. */
function marginOf(finding: BandFinding, spare: number): Figures {
  if (finding === 'too-long') return { over: timeOf(spare) };
  if (finding === 'in-time') return { spare: timeOf(spare) };
  if (finding !== 'running') return {};
  return spare < 0 ? { past: timeOf(spare) } : { toGo: timeOf(spare) };
}
