import { Prisma } from '../generated/prisma/client';
import type { Tx } from '../platform/database';
import { recordsIn, texts, type Look } from './entries';
import type { MovedColumns } from './moved-columns';
import { ownRows } from './record-tables';
import { expectedNow } from './expected-rows';

type Row = { id: string; seq: bigint };

const page = 1000;

/** The first row of a table that the text of its line does not name. Walks both in the order of the lines. */
export async function firstRowBeside(
  look: Look,
  establishmentId: string,
  table: string,
  moved: MovedColumns,
): Promise<{ id: string; seq: number } | undefined> {
  let after: Row | undefined;
  for (;;) {
    const rows: Row[] = await look((tx) => rowsAfter(tx, establishmentId, table, after));
    const [first, last] = [rows.at(0), rows.at(-1)];
    if (!first || !last) return undefined;
    const named = new Set<string>();
    for await (const said of texts(look, establishmentId, Number(first.seq), Number(last.seq))) {
      for (const { seq, records } of said) {
        const expected = recordsIn(records).flatMap((record) => expectedNow(record, seq, moved));
        for (const row of expected) if (row.table === table) named.add(`${row.id} ${seq}`);
      }
    }
    const beside = rows.find(({ id, seq }) => !named.has(`${id} ${seq}`));
    if (beside) return { id: beside.id, seq: Number(beside.seq) };
    after = last;
  }
}

const rowsAfter = (tx: Tx, establishmentId: string, table: string, after: Row | undefined) => tx.$queryRaw<Row[]>`
  SELECT r.id::text AS id, r.seq FROM ${Prisma.raw(`"${table}"`)} r WHERE ${ownRows(table, establishmentId)}
    AND (${after?.seq ?? null}::bigint IS NULL OR (r.seq, r.id) > (${after?.seq ?? null}::bigint, ${after?.id ?? null}::uuid))
  ORDER BY r.seq, r.id LIMIT ${page}`;
