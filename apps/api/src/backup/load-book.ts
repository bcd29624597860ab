import { isDeepStrictEqual } from 'node:util';
import type pg from 'pg';
import { headsOfBooks } from '../ledger/heads-of-books';
import { CannotStart } from '../platform/cannot-start';
import { bookTables, type BookTable } from './book-tables';
import { copyIn } from './copy-in';
import { faultsOf } from './faults';
import { readBackup } from './read-backup';

/**
 * In one transaction, as the owner, into tables that are empty. The triggers that write the ledger rest meanwhile, because
 * the lines of these records come with them; the constraints do not.
 */
export async function loadBook(owner: pg.Client, file: string, passphrase?: string): Promise<void> {
  await owner.query('BEGIN; SET LOCAL row_security = off; SET LOCAL statement_timeout = 0');
  const tables = await bookTables(owner);
  const triggers = (what: 'DISABLE' | 'ENABLE') =>
    owner.query(tables.map(({ name }) => `ALTER TABLE public.${owner.escapeIdentifier(name)} ${what} TRIGGER USER`).join('; '));
  await triggers('DISABLE');
  await refuseRows(owner, tables);

  const awaited = new Map(tables.map((table) => [table.name, table]));
  const { first } = await readBackup(file, passphrase, async ({ name, columns }, rows) => {
    if (!isDeepStrictEqual(awaited.get(name)?.columns.toSorted(), columns.toSorted())) throw faultsOf(file).otherTables(name);
    awaited.delete(name);
    await copyIn(
      owner,
      `COPY public.${owner.escapeIdentifier(name)} (${columns.map((c) => owner.escapeIdentifier(c)).join(', ')}) FROM STDIN`,
      rows,
    );
  });
  const [absent] = awaited.keys();
  if (absent) throw faultsOf(file).otherTables(absent);
  if (!isDeepStrictEqual(await headsOfBooks(owner), first.establishments)) throw faultsOf(file).altered();

  await owner.query('SET CONSTRAINTS ALL IMMEDIATE');
  await triggers('ENABLE');
  await owner.query('COMMIT');
}

/** Throws CannotStart when anything is kept there. */
export async function refuseRows(owner: pg.Client, tables: BookTable[]): Promise<void> {
  for (const { name } of tables) {
    const { rowCount } = await owner.query(`SELECT FROM public.${owner.escapeIdentifier(name)} LIMIT 1`);
    if (rowCount) throw new CannotStart('The database of DATABASE_OWNER_URL holds records already: name an empty one.');
  }
}

/** Takes back what was loaded. */
export async function emptied(owner: pg.Client): Promise<void> {
  const tables = await bookTables(owner);
  if (tables.length > 0)
    await owner.query(`TRUNCATE ${tables.map(({ name }) => `public.${owner.escapeIdentifier(name)}`).join(', ')} CASCADE`);
}
