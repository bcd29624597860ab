import { createHash } from 'node:crypto';
import type pg from 'pg';
import { bookTables, type BookTable } from './book-tables';
import { copyOut } from './copy-out';
import { endOfRows, type EndOfTable, type FirstLine, type LastLine, type Section } from './lines';
import type { z } from 'zod';

const newline = 10;

/** A book as text, from the snapshot of the client's transaction. No more of it is in memory than what was just read. */
export async function* bookText(client: pg.Client, first: FirstLine): AsyncGenerator<Buffer> {
  const whole = createHash('sha256');
  let all = 0;
  const line = (said: FirstLine | z.infer<typeof Section> | z.infer<typeof EndOfTable>): Buffer => noted(`${JSON.stringify(said)}\n`);
  const noted = (text: string | Buffer): Buffer => {
    whole.update(text);
    return Buffer.from(text);
  };

  yield line(first);
  for (const { name: table, columns } of await bookTables(client)) {
    yield line({ section: 'table', table, columns });
    const own = createHash('sha256');
    let rows = 0;
    for await (const chunk of copyOut(client, `COPY (${selectAll(client, { name: table, columns })}) TO STDOUT`) as AsyncIterable<Buffer>) {
      own.update(chunk);
      rows += rowsIn(chunk);
      yield noted(chunk);
    }
    yield noted(endOfRows);
    yield line({ end: 'table', table, rows, sha256: own.digest('hex') });
    all += rows;
  }
  const last: z.infer<typeof LastLine> = { end: 'backup', rows: all, sha256: whole.digest('hex') };
  yield Buffer.from(`${JSON.stringify(last)}\n`);
}

/** A line feed within a value is written as a backslash and a letter. */
export function rowsIn(chunk: Buffer): number {
  let rows = 0;
  for (let at = chunk.indexOf(newline); at !== -1; at = chunk.indexOf(newline, at + 1)) rows += 1;
  return rows;
}

const selectAll = (client: pg.Client, { name, columns }: BookTable) =>
  `SELECT ${columns.map((column) => client.escapeIdentifier(column)).join(', ')} FROM public.${client.escapeIdentifier(name)}`;
