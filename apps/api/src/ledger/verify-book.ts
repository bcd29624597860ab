import type { ReplyOf, verifyLedger } from '@larderbook/contracts';
import { checkChain, coded, type Coded, type LedgerEntry } from '@larderbook/haccp';
import { createHash, type Hash } from 'node:crypto';
import { credentialBreaks } from './credential';
import { entries, recordsIn, texts, type Look } from './entries';
import { measureBook, type Book } from './measure-book';
import { movedColumns, type MovedColumns } from './moved-columns';
import { firstRowBeside } from './row-beside';
import { expectedNow, lookUpRows, type Expected, type LookUp } from './expected-rows';
import { sha256 } from './sha256';

export type Verification = ReplyOf<typeof verifyLedger>;
type Break = Verification['breaks'][number];

/** As many as a person can look into; the rest is counted. */
const told = 100;

/**
 * Finds every line, text, row and sign-in that was changed, removed, moved or put in outside the ledger, and lines missing
 * at the end. Of the chain only the first break is told: all after it hangs on it. Leaves out writes made meanwhile.
 */
export async function verifyBook(look: Look, establishmentId: string, moved: MovedColumns = movedColumns): Promise<Verification> {
  const book = await look((tx) => measureBook(tx, establishmentId));
  const chain = checkChain(sha256);
  const covered = new Map<string, number>();
  const found = noted();
  const ranBack: number[] = [];
  let before = '';
  let records = 0;

  for await (const listed of entries(look, establishmentId, book.head)) {
    const lines = listed.map(({ line }) => line);
    for (const line of lines) {
      chain.next(line);
      if (line.at < before) ranBack.push(line.seq);
      before = line.at;
    }
    const digests = digestsOf(lines);
    for await (const page of texts(look, establishmentId, lines.at(0)?.seq ?? 0, lines.at(-1)?.seq ?? 0)) {
      const added = page.flatMap(({ seq, records }) => recordsIn(records).map((record) => ({ seq, record })));
      const expected = added.flatMap(({ seq, record }) => expectedNow(record, seq, moved));
      for (const text of page) digests.add(text.seq, text.records);
      for (const { table } of expected) covered.set(table, (covered.get(table) ?? 0) + 1);
      records += added.length;
      found.note(breaksOfRows(expected, await look((tx) => lookUpRows(tx, establishmentId, expected, book.tables))));
    }
    found.note(digests.breaks());
  }

  const { entries: seen, firstBreak } = chain.finish();
  if (firstBreak) found.note([{ seq: firstBreak.seq, because: firstBreak.because }]);
  found.note(breaksAtTheEnd(book));
  found.note(await breaksBeside(look, establishmentId, book, covered, moved));
  found.note(await breaksOfSignIns(look, establishmentId, book));
  return { entries: seen, records, ranBack: ranBack.slice(0, told), ...found.all() };
}

/** Keeps the earliest; of a book damaged from end to end the rest is only counted. */
function noted() {
  const kept: Break[] = [];
  let broken = 0;
  const note = (breaks: readonly Break[]) => {
    broken += breaks.length;
    for (const each of breaks.slice(0, told)) kept.push(each);
    kept.sort((one, other) => one.seq - other.seq).splice(told);
  };
  return { note, all: () => ({ sound: broken === 0, breaks: kept, broken }) };
}

/** Holds the texts of these lines against their digests. A text of no line is found by the record that it names. */
function digestsOf(lines: readonly LedgerEntry[]) {
  const hashes = new Map<number, Hash>(lines.map(({ seq }) => [seq, createHash('sha256')]));
  return {
    add: (seq: number, text: string) => hashes.get(seq)?.update(createHash('sha256').update(text, 'utf8').digest()),
    breaks: (): Break[] =>
      lines
        .filter(({ seq, digest }) => hashes.get(seq)?.digest('hex') !== digest)
        .map(({ seq }) => ({ seq, because: coded('records-list-altered', { seq: String(seq) }) })),
  };
}

const breaksOfRows = (expected: readonly Expected[], lookUp: LookUp): Break[] =>
  expected.flatMap((row) => {
    const found = lookUp(row);
    if (found === 'as written') return [];
    return [{ seq: row.seq, because: ofRecord(found === 'gone' ? 'record-gone' : 'record-altered', row.table, row.id, row.seq) }];
  });

function breaksAtTheEnd({ head, added }: Book): Break[] {
  if (added <= head) return [];
  const because = coded('ends-before-acknowledged', { last: String(head), latest: String(added) });
  return [{ seq: Number(head) + 1, because }];
}

/** The first of each table. */
async function breaksBeside(
  look: Look,
  establishmentId: string,
  { rows, head }: Book,
  covered: ReadonlyMap<string, number>,
  moved: MovedColumns,
): Promise<Break[]> {
  const breaks: Break[] = [];
  for (const [table, count] of rows) {
    if (count <= (covered.get(table) ?? 0)) continue;
    const row = await firstRowBeside(look, establishmentId, table, moved);
    const seq = Math.min(row?.seq ?? Number(head), Number(head));
    breaks.push({ seq, because: ofRecord('record-beside', table, row?.id ?? '', seq) });
  }
  return breaks;
}

async function breaksOfSignIns(look: Look, establishmentId: string, { head }: Book): Promise<Break[]> {
  const found = await look((tx) => credentialBreaks(tx, establishmentId));
  return found.map(({ person, seq }) => {
    const at = seq ?? Number(head);
    return { seq: at, because: coded(seq === undefined ? 'sign-in-beside' : 'sign-in-altered', { person, seq: String(at) }) };
  });
}

const ofRecord = (code: string, table: string, id: string, seq: number): Coded =>
  coded(code, { table: table.replaceAll('_', ' '), id, seq: String(seq) });
