import { resolve } from 'node:path';
import { backUp } from './backup/back-up';
import { sayMade } from './backup/say-made';
import { CannotStart } from './platform/cannot-start';
import { openBook } from './platform/open-book';
import { readSettings } from './settings';

/** Runs beside a running Larderbook or alone. Exit code 1 means that there is no backup. */
try {
  const [file] = process.argv.slice(2);
  if (!file) throw new CannotStart('Say where the backup goes: npm run backup -- FILE.');
  const settings = readSettings(process.env);
  const database = await openBook(settings);
  try {
    const made = await backUp(database.ownerUrl, resolve(file), settings.passphrase);
    for (const line of sayMade(made, resolve(file), settings.passphrase !== undefined)) console.log(line);
  } finally {
    await database.close();
  }
} catch (failure) {
  console.error(failure instanceof CannotStart ? failure.message : failure);
  process.exitCode = 1;
}
process.exit();
