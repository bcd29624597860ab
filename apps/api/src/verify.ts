import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { sayVerified, verifyEveryBook } from './ledger/verify-every-book';
import { CannotStart } from './platform/cannot-start';
import { joinEmbeddedPostgres, type OpenDatabase } from './platform/embedded-postgres';
import { readSettings, type Settings } from './settings';

/** Runs beside a running Larderbook or alone. Exit code 1 means not sound. */
try {
  const database = await openBook(readSettings(process.env));
  try {
    let books = 0;
    for await (const book of verifyEveryBook(database)) {
      books += 1;
      for (const line of sayVerified(book)) console.log(line);
      if (!book.sound) process.exitCode = 1;
    }
    if (books === 0) console.log('No establishment has been set up yet: there is nothing to verify.');
  } finally {
    await database.close();
  }
} catch (failure) {
  console.error(failure instanceof CannotStart ? failure.message : failure);
  process.exitCode = 1;
}
process.exit();

/** Verifying never makes a database in an empty folder. */
async function openBook({ database, dataDir }: Settings): Promise<OpenDatabase> {
  if (database) return { ...database, close: async () => {} };
  if (existsSync(join(dataDir, 'postgres'))) return joinEmbeddedPostgres(dataDir);
  throw new CannotStart(`There is no record book in ${dataDir}: name the folder that holds it in DATA_DIR.`);
}
