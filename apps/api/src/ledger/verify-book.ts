import type { ReplyOf, verifyLedger } from '@larderbook/contracts';
import { checkChain, coded, type Coded } from '@larderbook/haccp';
import { canonicalRows, type CanonicalRows } from './canonical-rows';
import { entries, type ListedEntry, type Look } from './entries';
import { firstUncovered, measureBook, type Book } from './measure-book';
import { sha256 } from './sha256';

export type Verification = ReplyOf<typeof verifyLedger>;
type Break = NonNullable<Verification['firstBreak']>;

/**
 * Finds the first line or row changed, removed, moved or added outside the ledger, or lines missing at the end. Leaves
 * out writes made meanwhile.
 */
export async function verifyBook(look: Look, establishmentId: string): Promise<Verification> {
  const book = await look((tx) => measureBook(tx, establishmentId));
  const chain = checkChain(sha256);
  const covered = new Map<string, number>();
  let rowBreak: Break | undefined;

  for await (const batch of entries(look, establishmentId, book.head)) {
    const rows = await look((tx) => canonicalRows(tx, establishmentId, batch));
    for (const entry of batch) {
      chain.next(entry.line);
      rowBreak ??= breakOfRows(entry, rows);
      for (const { table } of entry.covers) covered.set(table, (covered.get(table) ?? 0) + 1);
    }
  }

  const { entries: seen, firstBreak: chainBreak } = chain.finish();
  const firstBreak = earlier(chainBreak, rowBreak) ?? breakAtTheEnd(book) ?? (await breakBeside(look, establishmentId, book, covered));
  const records = [...covered.values()].reduce((sum, count) => sum + count, 0);
  return { entries: seen, records, sound: !firstBreak, firstBreak };
}

function breakOfRows({ line: { seq, digest }, records, covers }: ListedEntry, rows: CanonicalRows): Break | undefined {
  if (sha256(records) !== digest) return { seq, because: coded('records-list-altered', { seq: String(seq) }) };
  for (const row of covers) {
    const said = rows(row);
    if (said === undefined) return { seq, because: ofRecord('record-gone', row.table, row.id, seq) };
    if (sha256(said) !== row.digest) return { seq, because: ofRecord('record-altered', row.table, row.id, seq) };
  }
  return undefined;
}

const earlier = (one: Break | undefined, other: Break | undefined): Break | undefined =>
  one && other ? (one.seq <= other.seq ? one : other) : (one ?? other);

function breakAtTheEnd({ head, acknowledged }: Book): Break | undefined {
  if (acknowledged <= head) return undefined;
  return {
    seq: Number(head) + 1,
    because: coded('ends-before-acknowledged', { last: String(head), latest: String(acknowledged) }),
  };
}

async function breakBeside(
  look: Look,
  establishmentId: string,
  { rows, head }: Book,
  covered: Map<string, number>,
): Promise<Break | undefined> {
  for (const [table, count] of rows) {
    if (count <= (covered.get(table) ?? 0)) continue;
    const row = await look((tx) => firstUncovered(tx, establishmentId, table));
    const seq = Number(row?.after ?? head);
    return { seq, because: ofRecord('record-beside', table, row?.id ?? '', seq) };
  }
  return undefined;
}

const ofRecord = (code: string, table: string, id: string, seq: number): Coded =>
  coded(code, { table: table.replaceAll('_', ' '), id, seq: String(seq) });
