import { sayVerified, verifyEveryBook } from './ledger/verify-every-book';
import { CannotStart } from './platform/cannot-start';
import { openBook } from './platform/open-book';
import { readSettings } from './settings';

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
