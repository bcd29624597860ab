import { canonicalJson } from './canonical-json';

/** `seq` counts from 1 within an establishment. */
export type LedgerEntry = {
  at: string;
  digest: string;
  establishment: string;
  kind: string;
  person: string;
  seq: number;
  station: string;
  subject: string;
  previousHash: string;
  hash: string;
};

/** Of UTF-8 bytes, as 64 lower-case hexadecimal digits; passed in, because the package uses no Node modules. */
export type Sha256 = (text: string) => string;

export const NO_PREVIOUS_HASH = '0'.repeat(64);

/** sha256(previous hash + canonical JSON of the entry's own eight fields). */
export function entryHash(entry: Omit<LedgerEntry, 'hash'>, sha256: Sha256): string {
  const { at, digest, establishment, kind, person, seq, station, subject } = entry;
  return sha256(entry.previousHash + canonicalJson({ at, digest, establishment, kind, person, seq, station, subject }));
}
