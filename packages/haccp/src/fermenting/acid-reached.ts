import { isUsable, type Plain } from '../limits/measurement';

/** One measurement of the meat's pH. `at` is epoch milliseconds. */
export type AcidReading = { at: number; pH: Plain };

export type Acid = {
  /** The first reading at or below the pH after which none is above it (epoch ms); undefined while there is none. */
  reachedAt?: number;
  usable: number;
  leftOut: number;
};

/** When the pH was surely down: at the reading that shows it, since nothing is known of the time before it. */
export function acidReached(readings: readonly AcidReading[], { thousandths }: Plain): Acid {
  const usable = readings
    .filter((reading) => Number.isFinite(reading?.at) && isUsable(reading.pH, 'pH'))
    .sort((a, b) => a.at - b.at);
  const lastAbove = usable.findLastIndex(({ pH }) => pH.thousandths > thousandths);
  const reached = usable.find(({ at }, index) => index > lastAbove && at !== usable[lastAbove]?.at);
  return { reachedAt: reached?.at, usable: usable.length, leftOut: readings.length - usable.length };
}
