import { resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { restoreBook } from './backup/restore-book';
import { sayVerified } from './ledger/verify-every-book';
import { CannotStart } from './platform/cannot-start';
import { readSettings } from './settings';

/** Into an empty place alone. Exit code 1 means that nothing was restored. */
try {
  const { values, positionals } = parseArgs({ allowPositionals: true, options: { 'even-if-broken': { type: 'boolean' } } });
  const [file] = positionals;
  if (!file) throw new CannotStart('Say which backup: npm run restore -- FILE.');
  const settings = readSettings(process.env);
  const { first, books } = await restoreBook(settings, { file: resolve(file), evenIfBroken: values['even-if-broken'] });
  for (const line of books.flatMap(sayVerified)) console.log(line);
  const where = settings.database ? 'the database of DATABASE_OWNER_URL' : settings.dataDir;
  console.log(`The book of ${first.madeAt} is in ${where}: npm start opens it. Everybody signs in anew, with the same password.`);
} catch (failure) {
  console.error(failure instanceof CannotStart ? failure.message : failure);
  process.exitCode = 1;
}
process.exit();
