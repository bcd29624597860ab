/** What is odd about the moment an entry says it was taken. Kept and shown, never a reason to refuse it. */
export type TimeFlag = 'in-the-future' | 'before-the-lot' | 'out-of-order' | 'recorded-late';

/** Instants are epoch milliseconds. `takenAt` is the device's word, `recordedAt` the server's. */
export type EntryTimes = {
  takenAt: number;
  recordedAt: number;
  /** When the lot was started, for what is recorded on a lot. */
  lotStartedAt?: number;
  /**
   * The latest moment of the entries before it in the same series. Left out for a correction, which is late by nature.
   */
  lastTakenAt?: number;
};

/** A tablet's clock may be this much ahead of the server's before anybody is told. Common practice, no source. */
export const clocksDiffer = 2 * 60_000;
/** Typed within one minute and sent in the other order, nothing is wrong with either. Common practice, no source. */
export const SAME_MINUTE = 60_000;
/**
 * An entry is made when the event occurs (9 CFR 417.5(b)); a quarter of an hour later it is called late. Common
 * practice, no source.
 */
const STILL_PROMPT_MS = 15 * 60_000;

/** The flags of one entry, in a fixed order. */
export function flagTimes({ takenAt, recordedAt, lotStartedAt, lastTakenAt }: EntryTimes): TimeFlag[] {
  const flags: TimeFlag[] = [];
  if (takenAt - recordedAt > clocksDiffer) flags.push('in-the-future');
  if (lotStartedAt !== undefined && takenAt < lotStartedAt) flags.push('before-the-lot');
  if (lastTakenAt !== undefined && lastTakenAt - takenAt > SAME_MINUTE) flags.push('out-of-order');
  if (recordedAt - takenAt > STILL_PROMPT_MS) flags.push('recorded-late');
  return flags;
}
