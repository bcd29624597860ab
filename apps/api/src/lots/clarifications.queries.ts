import type { ClarificationWord, ControlPointOnLot } from '@larderbook/contracts';
import type { Word } from '@larderbook/haccp';
import { madeBy, type PersonNames } from '../shop/person-names';
import type { Tx } from '../platform/database';

export type Clarification = {
  id: string;
  lotId: string;
  word: ClarificationWord;
  reason: string;
  station: string;
  takenAt: Date;
  recordedAt: Date;
  recordedBy: string;
  readingIds: string[];
};

/** Oldest first, by the ledger. */
export const clarificationsOf = (tx: Tx, lotIds: readonly string[]): Promise<Clarification[]> =>
  tx.$queryRaw<Clarification[]>`
    SELECT c.id, c.lot_id AS "lotId", c.word, c.reason, c.station, c.taken_at AS "takenAt",
      c.recorded_at AS "recordedAt", c.recorded_by AS "recordedBy",
      ARRAY(SELECT x.reading_id::text FROM clarified_reading x WHERE x.clarification_id = c.id) AS "readingIds"
    FROM clarification c
    WHERE c.lot_id = ANY(${lotIds}::uuid[]) ORDER BY c.seq`;

/** Only the last word counts; no entry where it takes the others back. */
export function wordsFrom(clarifications: readonly Pick<Clarification, 'word' | 'readingIds'>[]): ReadonlyMap<string, Word> {
  const words = new Map<string, Word>();
  for (const { word, readingIds } of clarifications) {
    for (const id of readingIds) {
      if (word === 'as recorded') words.delete(id);
      else words.set(id, word);
    }
  }
  return words;
}

type Said = NonNullable<ControlPointOnLot['readings'][number]['clarifications']>;

/** Oldest first. */
export function saidByReading(clarifications: readonly Clarification[], people: PersonNames): ReadonlyMap<string, Said> {
  const said = new Map<string, Said>();
  for (const row of clarifications) {
    const one = { clarificationId: row.id, word: row.word, reason: row.reason, made: madeBy(row, people) };
    for (const readingId of row.readingIds) said.set(readingId, [...(said.get(readingId) ?? []), one]);
  }
  return said;
}
