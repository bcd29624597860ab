/** One reading a second for eleven days. */
export const MOST_READINGS = 1_000_000;

export type SeriesFault = { fault: 'too-many-readings' };

/** A fault instead of an exception or a machine out of memory. */
export const tooMany = (readings: number): SeriesFault | undefined =>
  readings > MOST_READINGS ? { fault: 'too-many-readings' } : undefined;
