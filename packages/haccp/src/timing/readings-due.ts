/** At least every so many minutes, or so many times in a lot. */
export type Frequency = { everyMinutes: number } | { timesInALot: number };

/** `longest` time without a reading, in milliseconds. */
export type ReadingsDue = { missing: number; longest: number };

/** Share of an interval; the excess is let pass. Common practice, no source. */
const LATE = 1.25;
const MINUTE = 60_000;

/**
 * One reading is missing for each interval without one; the limits judge what came before the first. @param taken epoch
 * milliseconds, in any order
 */
export function readingsDue(frequency: Frequency, taken: readonly number[]): ReadingsDue {
  const gaps = gapsIn([...taken].sort((a, b) => a - b));
  const longest = Math.max(0, ...gaps);
  if ('timesInALot' in frequency) return { missing: Math.max(0, frequency.timesInALot - taken.length), longest };
  const interval = frequency.everyMinutes * MINUTE * LATE;
  return { missing: gaps.reduce((sum, gap) => sum + Math.max(0, Math.ceil(gap / interval) - 1), 0), longest };
}

const gapsIn = (sorted: readonly number[]): number[] => sorted.slice(1).map((at, index) => at - (sorted[index] as number)); // index + 1 is there
