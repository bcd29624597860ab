import { beginClock, clockDoubts, doubtOfClock, inOrderOfArrival, type ClockDoubt } from '../thermal/clock-doubt';
import { byProbe, isInstant, isSetAside } from '../thermal/curve';
import type { AsKept } from '../thermal/instant';

type Read = AsKept & { at: number; probe?: string };

/** Each probe and each piece by itself. */
export const clockOfSeries = (read: readonly (readonly Read[])[], now: number | undefined): ClockDoubt[] => [
  ...new Set(read.flatMap((readings) => clocksOf(readings, now))),
];

const clocksOf = (readings: readonly Read[], now: number | undefined): ClockDoubt[] =>
  [...byProbe(readings).values()].flatMap((own) => {
    const clock = beginClock();
    for (const reading of inOrderOfArrival(own)) {
      if (isInstant(reading?.at) && !isSetAside(reading)) doubtOfClock(clock, reading);
    }
    return clockDoubts(clock, now);
  });
