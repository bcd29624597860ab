/*
 * The export: one JSON object a line, one line an entry, in order. Anyone can verify it without this program:
 *
 *   {"entry":{"at","digest","establishment","hash","kind","person","previousHash","seq","station","subject"},
 *    "records":[{"digest","id","row","table"}, …]}
 *
 * Canonical JSON is that of RFC 8785 (no spaces, members sorted by name); SHA-256 is of its UTF-8 bytes, in hex.
 * For each line, beginning with seq 1 and a previous hash of 64 zeros:
 *
 *   1. Every `row` is a flat object of texts; a column that is null is left out, so that a column added later changes
 *      no digest. SHA-256 of its canonical JSON is the `digest` beside it. A `row` that is null is gone from the book.
 *   2. SHA-256 of the canonical JSON of `records` without `row`, [{"digest","id","table"}, …], is the entry's `digest`.
 *   3. SHA-256 of the previous hash followed by the canonical JSON of the entry without `hash` and `previousHash` is
 *      the entry's `hash`; `previousHash` is the hash of the line before, and `seq` counts up by one.
 *
 * The texts are as PostgreSQL prints the values in UTC. A chain that only its owner holds could be rewritten as a
 * whole: compare a hash with the one printed on a paper of that day.
 */
import { canonicalJson } from '@larderbook/haccp';
import { canonicalRows, type CanonicalRows } from './canonical-rows';
import { entries, type ListedEntry, type Look } from './entries';
import { measureBook } from './measure-book';

/** Only one batch at a time is in memory. */
export async function* exportChain(look: Look, establishmentId: string): AsyncGenerator<string> {
  const { head } = await look((tx) => measureBook(tx, establishmentId));
  for await (const batch of entries(look, establishmentId, head)) {
    const rows = await look((tx) => canonicalRows(tx, establishmentId, batch));
    for (const entry of batch) yield lineOf(entry, rows);
  }
}

/** A row is the very text that was digested. */
function lineOf({ line, covers }: ListedEntry, rows: CanonicalRows): string {
  const records = covers.map((row) => `{"digest":"${row.digest}","id":"${row.id}","row":${rows(row) ?? 'null'},"table":"${row.table}"}`);
  return `{"entry":${canonicalJson(line)},"records":[${records.join(',')}]}\n`;
}
