import { canonicalJson } from './canonical-json';

/** `seq` counts from 1 within an establishment. `answer` and `request` are digests of what was answered and asked. */
export type LedgerEntry = {
  answer: string;
  at: string;
  digest: string;
  establishment: string;
  id: string;
  kind: string;
  person: string;
  request: string;
  seq: number;
  station: string;
  subject: string;
  previousHash: string;
  hash: string;
};

/** Of UTF-8 bytes, as 64 lower-case hexadecimal digits; passed in, because the package uses no Node modules. */
export type Sha256 = (text: string) => string;

export const NO_PREVIOUS_HASH = '0'.repeat(64);

/** sha256(previous hash + canonical JSON of the entry's own fields). */
export function entryHash(entry: Omit<LedgerEntry, 'hash'>, sha256: Sha256): string {
  const { answer, at, digest, establishment, id, kind, person, previousHash, request, seq, station, subject } = entry;
  const own = { answer, at, digest, establishment, id, kind, person, request, seq, station, subject };
  return sha256(previousHash + canonicalJson(own));
}
