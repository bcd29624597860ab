import { join } from 'node:path';
import pg from 'pg';
import { sayVerified, verifyEveryBook, type VerifiedBook } from '../ledger/verify-every-book';
import { bindApiRole } from '../platform/api-role';
import { CannotStart } from '../platform/cannot-start';
import { connected } from '../platform/connected';
import { migrate, migrationsIn } from '../platform/migrate';
import { projectRoot } from '../project-root';
import type { Settings } from '../settings';
import { faultsOf } from './faults';
import { loadBook } from './load-book';
import { databaseToRestore, folderToRestore, type PlaceToRestore } from './place-to-restore';
import { readBackup, type ReadBackup } from './read-backup';

export type Restored = ReadBackup & { books: VerifiedBook[] };
type Asked = { file: string; evenIfBroken?: boolean; prisma?: string };

/**
 * The file is read to its end before anything is made, and the book has its place only when every establishment was
 * verified in it; otherwise nothing is left. Throws CannotStart.
 */
export async function restoreBook(
  settings: Pick<Settings, 'database' | 'dataDir' | 'passphrase'>,
  { file, evenIfBroken = false, prisma = join(projectRoot, 'prisma') }: Asked,
): Promise<Restored> {
  const read = await readBackup(file, settings.passphrase);
  const last = await lastMigration(read, prisma, file);
  const place = settings.database ? await databaseToRestore(settings.database) : await folderToRestore(settings.dataDir);
  let isLoaded = false;
  try {
    await migrate(place.ownerUrl, prisma, last);
    await connected(place.ownerUrl, (owner) => loadBook(owner, file, settings.passphrase));
    isLoaded = true;
    await migrate(place.ownerUrl, prisma);
    await bindApiRole(place);
    const books = await verified(place, evenIfBroken);
    await place.keep();
    return { ...read, books };
  } catch (failure) {
    await place.discard(isLoaded);
    throw failure instanceof pg.DatabaseError ? refused(file, failure) : failure;
  }
}

/** A backup of an older version names the last migration that it knew. */
async function lastMigration({ first: { migrations } }: ReadBackup, prisma: string, file: string): Promise<string | undefined> {
  const known = await migrationsIn(prisma);
  const [last] = migrations.slice(-1);
  const later = migrations.find((name) => !known.includes(name));
  if (later) throw faultsOf(file).laterBook(later);
  const absent = known.find((name) => last === undefined || (name < last && !migrations.includes(name)));
  if (absent) throw faultsOf(file).otherTables(absent);
  return last;
}

async function verified(place: PlaceToRestore, evenIfBroken: boolean): Promise<VerifiedBook[]> {
  const books: VerifiedBook[] = [];
  for await (const book of verifyEveryBook(place)) books.push(book);
  const broken = books.find(({ sound }) => !sound);
  if (broken && !evenIfBroken) {
    throw new CannotStart(
      `${sayVerified(broken).join(' ')} Nothing was restored: take an earlier backup, or add --even-if-broken to look into this one.`,
    );
  }
  return books;
}

const refused = (file: string, failure: pg.DatabaseError) =>
  new CannotStart(`${file} could not be put into the database (${failure.message}): nothing was restored.`, { cause: failure });
