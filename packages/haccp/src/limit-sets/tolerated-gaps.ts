/**
 * The longest time without a reading before a verdict rests on a guess. Common practice, no source: a plan may set
 * others.
 * While a temperature is held, a dip between two readings would be lost, so they must be close. Come-up and cooling are
 * charged the whole of a gap anyway. A chill may thus be shown by its bounds alone: no gap up to all the time it has.
 */
export const LONGEST_GAP_SECONDS = {
  hold: 15 * 60,
  /** Over each step the fastest growth between its ends is charged; a rise between them is not seen. */
  growth: 3600,
  comeUp: 2 * 3600,
  cooling: 6.5 * 3600,
  slowCooling: 15 * 3600,
} as const;
