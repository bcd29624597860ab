import { beginClock, clockDoubts, doubtOfClock, inOrderOfArrival, type ClockDoubt } from '../thermal/clock-doubt';
import { byProbe, isInstant, isSetAside } from '../thermal/curve';
import type { AsKept } from '../thermal/instant';
import type { Series } from './judge-series';
import type { SeriesLimit } from './limit';

type Read = AsKept & { at: number; probe?: string };

/** What is doubtful about the times of all that a limit is judged from; each probe and each piece by itself. */
export function clockOfSeries(series: Series, kind: SeriesLimit['kind'], now: number | undefined): ClockDoubt[] {
  return [...new Set(readFor(series, kind).flatMap((readings) => clocksOf(readings, now)))];
}

function readFor({ temperatures, acid, weights }: Series, kind: SeriesLimit['kind']): (readonly Read[])[] {
  if (kind === 'weightLoss') return [weights];
  return kind === 'degreeHours' ? [temperatures, acid] : [temperatures];
}

const clocksOf = (readings: readonly Read[], now: number | undefined): ClockDoubt[] =>
  [...byProbe(readings).values()].flatMap((own) => {
    const clock = beginClock();
    for (const reading of inOrderOfArrival(own)) {
      if (isInstant(reading?.at) && !isSetAside(reading)) doubtOfClock(clock, reading);
    }
    return clockDoubts(clock, now);
  });
