/*
 * The export: one JSON object a line, one line an entry, in order. Anyone can verify it without this program:
 *
 *   {"entry":{"answer","at","digest","establishment","hash","id","kind","person","previousHash","request","seq","station",
 *    "subject"},"reply":"…","texts":["…", …]}
 *
 * Canonical JSON is that of RFC 8785 (no spaces, members sorted by name); SHA-256 is of UTF-8 bytes, in hex unless said
 * otherwise. For each line, beginning with seq 1 and a previous hash of 64 zeros:
 *
 *   1. SHA-256 of the SHA-256 (32 bytes each) of its `texts`, one after the other, is the entry's `digest`. A text is the
 *      canonical JSON of the records that the write added, [{"id","row","table"}, …]; a column that is null is left out of
 *      its row. The values are as PostgreSQL prints them in UTC.
 *   2. SHA-256 of `reply`, what was answered, is the entry's `answer`; `request` is the SHA-256 of the canonical JSON of what
 *      was asked.
 *   3. SHA-256 of the previous hash followed by the canonical JSON of the entry without `hash` and `previousHash` is
 *      the entry's `hash`; `previousHash` is the hash of the line before, and `seq` counts up by one.
 *
 * A chain that only its owner holds could be rewritten as a whole: compare a hash with the one printed on a paper of that
 * day.
 */
import { entries, texts, type Look } from './entries';
import { ledgerHead } from './ledger-head';

/** Only one batch at a time is in memory. */
export async function* exportChain(look: Look, establishmentId: string): AsyncGenerator<string> {
  const head = await look(ledgerHead);
  for await (const listed of entries(look, establishmentId, BigInt(head?.seq ?? 0))) {
    const said = new Map<number, string[]>(listed.map(({ line }) => [line.seq, []]));
    for await (const page of texts(look, establishmentId, listed.at(0)?.line.seq ?? 0, listed.at(-1)?.line.seq ?? 0)) {
      for (const { seq, records } of page) said.get(seq)?.push(records);
    }
    for (const { line, reply } of listed) yield `${JSON.stringify({ entry: line, reply, texts: said.get(line.seq) })}\n`;
  }
}
