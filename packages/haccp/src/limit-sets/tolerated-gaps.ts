/**
 * Longer without a reading, a verdict rests on a guess. Common practice, no source: a plan may set others. While a
 * temperature is held, a dip between readings is lost, so they must be close. Come-up and cooling are charged the whole
 * gap anyway, and a chill may be shown by its bounds alone: no gap up to all its time.
 */
export const LONGEST_GAP_SECONDS = {
  hold: 15 * 60,
  /** Each step is charged the fastest growth between its ends; a rise between them is not seen. */
  growth: 3600,
  comeUp: 2 * 3600,
  cooling: 6.5 * 3600,
  slowCooling: 15 * 3600,
} as const;
