/** More readings than this are not judged at once: a second apart for eleven days. */
export const MOST_READINGS = 1_000_000;

/** Why a series cannot be taken as it is, and what to do. */
export type SeriesFault = { fault: 'too-many-readings'; because: string; next: string };

/** A fault instead of an exception or a machine out of memory; undefined when there are few enough. */
export const tooMany = (readings: number): SeriesFault | undefined =>
  readings > MOST_READINGS
    ? {
        fault: 'too-many-readings',
        because: `There are ${readings} readings; at most ${MOST_READINGS} are judged at once.`,
        next: 'Cut the series to the lot, or read the logger at longer steps.',
      }
    : undefined;
