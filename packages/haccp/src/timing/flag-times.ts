/** Kept and shown, never a reason to refuse the entry. */
export type TimeFlag = 'in-the-future' | 'before-the-lot' | 'out-of-order' | 'recorded-late';

/** Epoch ms. `takenAt` is the device's word, `recordedAt` the server's. */
export type EntryTimes = {
  takenAt: number;
  recordedAt: number;
  lotStartedAt?: number;
  /** Latest of the earlier entries of the series. Left out for a correction, which is late by nature. */
  lastTakenAt?: number;
};

/** A tablet's clock may be this far ahead of the server's. Common practice, no source. */
export const clocksDiffer = 2 * 60_000;
/** Typed within a minute and sent in the other order, both are right. Common practice, no source. */
export const SAME_MINUTE = 60_000;
/**
 * An entry is made when the event occurs (9 CFR 417.5(b)); after a quarter of an hour it is late. Common practice, no
 * source.
 */
const STILL_PROMPT_MS = 15 * 60_000;

export function flagTimes({ takenAt, recordedAt, lotStartedAt, lastTakenAt }: EntryTimes): TimeFlag[] {
  const flags: TimeFlag[] = [];
  if (takenAt - recordedAt > clocksDiffer) flags.push('in-the-future');
  if (lotStartedAt !== undefined && takenAt < lotStartedAt) flags.push('before-the-lot');
  if (lastTakenAt !== undefined && lastTakenAt - takenAt > SAME_MINUTE) flags.push('out-of-order');
  if (recordedAt - takenAt > STILL_PROMPT_MS) flags.push('recorded-late');
  return flags;
}
