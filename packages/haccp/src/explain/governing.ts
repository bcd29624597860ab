import type { Verdict } from '../limits/verdict';

/** Of the probe that the verdict is about; all of them where there is only one. */
export const governing = <Reading extends { probe?: string }>(readings: readonly Reading[], { probe }: Pick<Verdict, 'probe'>): Reading[] =>
  readings.filter((reading) => probe === undefined || (reading.probe ?? '') === probe);
