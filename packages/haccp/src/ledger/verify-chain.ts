import { entryHash, NO_PREVIOUS_HASH, type LedgerEntry, type Sha256 } from './entry-hash';
import { coded } from '../limits/coded';
import type { Coded } from '../limits/verdict';

export type ChainFault = 'content altered' | 'entry missing' | 'order changed' | 'hash altered';
export type ChainBreak = { seq: number; fault: ChainFault; because: Coded };

export type ChainHead = { seq: number; hash: string };
export type ChainReport = { entries: number; head?: ChainHead; firstBreak?: ChainBreak };

/** Entries come one by one, in order of their sequence; one is held at a time. */
export type ChainCheck = { next(entry: LedgerEntry): void; finish(): ChainReport };

/** @param printed heads seen on paper: the chain must pass through each of them */
export function verifyChain(entries: Iterable<LedgerEntry>, sha256: Sha256, printed: readonly ChainHead[] = []): ChainReport {
  const check = checkChain(sha256, printed);
  for (const entry of entries) check.next(entry);
  return check.finish();
}

export function checkChain(sha256: Sha256, printed: readonly ChainHead[] = []): ChainCheck {
  let entries = 0;
  let before: LedgerEntry | undefined;
  let suspect: { entry: LedgerEntry; recomputed: string } | undefined;
  let firstBreak: ChainBreak | undefined;

  const next = (entry: LedgerEntry) => {
    entries += 1;
    if (firstBreak) return;
    if (suspect) {
      firstBreak = breakOf(suspect.entry, suspect.recomputed, entry);
      return;
    }
    firstBreak = sequenceBreak(before, entry) ?? linkBreak(before, entry, sha256) ?? paperBreak(entry, printed);
    if (firstBreak) return;
    const recomputed = entryHash(entry, sha256);
    if (recomputed !== entry.hash) suspect = { entry, recomputed };
    before = entry;
  };

  const finish = (): ChainReport => {
    const head = before && { seq: before.seq, hash: before.hash };
    const unsettled = suspect && breakOf(suspect.entry, suspect.recomputed, undefined);
    firstBreak ??= unsettled ?? shortBreak(head, printed);
    return { entries, head, firstBreak };
  };
  return { next, finish };
}

function sequenceBreak(before: LedgerEntry | undefined, { seq }: LedgerEntry): ChainBreak | undefined {
  const expected = (before?.seq ?? 0) + 1;
  if (seq === expected) return undefined;
  if (seq < expected) {
    return { seq, fault: 'order changed', because: coded('entry-out-of-place', { seq: String(seq), expected: String(expected) }) };
  }
  const missing =
    seq - expected === 1
      ? coded('entry-missing', { seq: String(expected) })
      : coded('entries-missing', { first: String(expected), last: String(seq - 1) });
  return { seq: expected, fault: 'entry missing', because: missing };
}

function linkBreak(before: LedgerEntry | undefined, entry: LedgerEntry, sha256: Sha256): ChainBreak | undefined {
  const expected = before?.hash ?? NO_PREVIOUS_HASH;
  if (entry.previousHash === expected) return undefined;
  const { seq } = entry;
  const isOwnFieldAltered = entryHash({ ...entry, previousHash: expected }, sha256) === entry.hash;
  return isOwnFieldAltered
    ? { seq, fault: 'hash altered', because: ofEntry('previous-hash-altered', seq) }
    : { seq, fault: 'order changed', because: ofEntry('entry-exchanged', seq) };
}

/** The entry after still carries the hash as it was written, which tells what was altered. */
function breakOf(entry: LedgerEntry, recomputed: string, after: LedgerEntry | undefined): ChainBreak {
  const { seq } = entry;
  return after?.previousHash === recomputed
    ? { seq, fault: 'hash altered', because: ofEntry('hash-altered', seq) }
    : { seq, fault: 'content altered', because: ofEntry('content-altered', seq) };
}

function paperBreak(entry: LedgerEntry, printed: readonly ChainHead[]): ChainBreak | undefined {
  const { seq } = entry;
  const isOther = printed.some((head) => head.seq === seq && head.hash !== entry.hash);
  if (!isOther) return undefined;
  return { seq, fault: 'hash altered', because: ofEntry('hash-not-as-printed', seq) };
}

function shortBreak(head: ChainHead | undefined, printed: readonly ChainHead[]): ChainBreak | undefined {
  const last = head?.seq ?? 0;
  const latest = Math.max(0, ...printed.map(({ seq }) => seq));
  if (latest <= last) return undefined;
  const because = coded('ends-before-paper', { last: String(last), latest: String(latest) });
  return { seq: last + 1, fault: 'entry missing', because };
}

const ofEntry = (code: string, seq: number): Coded => coded(code, { seq: String(seq) });
