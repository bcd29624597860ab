import { existsSync, readdirSync, renameSync, rmdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import type pg from 'pg';
import { CannotStart } from '../platform/cannot-start';
import { connected } from '../platform/connected';
import { lockDataFolder } from '../platform/data-folder-lock';
import { makeFolder, openEmbeddedPostgres, type DatabaseUrls } from '../platform/embedded-postgres';
import { closeLeftover } from '../platform/embedded-postgres/leftover';
import { bookTables } from './book-tables';
import { emptied, refuseRows } from './load-book';

/** An empty database, which becomes the book when it is kept and leaves nothing when it is discarded. */
export type PlaceToRestore = DatabaseUrls & { keep(): Promise<void>; discard(isLoaded: boolean): Promise<void> };

const parts = ['secrets.json', 'postgres'];

/** The database is made in a folder inside the data folder, where no start looks for one. Throws CannotStart. */
export async function folderToRestore(dataDir: string): Promise<PlaceToRestore> {
  const isOurs = !existsSync(dataDir);
  if (parts.some((part) => existsSync(join(dataDir, part)))) {
    throw new CannotStart(`There is a record book in ${dataDir} already: name an empty folder, or one that is not there yet, in DATA_DIR.`);
  }
  makeFolder(dataDir);
  const lock = await lockDataFolder(dataDir);
  const inside = join(dataDir, 'restoring');
  const clear = () => {
    rmSync(inside, { recursive: true, force: true });
    lock.release();
    if (isOurs && readdirSync(dataDir).length === 0) rmdirSync(dataDir);
  };
  try {
    await closeLeftover(join(inside, 'postgres'));
    rmSync(inside, { recursive: true, force: true });
    const { close, ...urls } = await openEmbeddedPostgres(inside);
    return {
      ...urls,
      keep: async () => {
        await close();
        for (const part of parts) renameSync(join(inside, part), join(dataDir, part));
        clear();
      },
      discard: () => close().finally(clear),
    };
  } catch (failure) {
    clear();
    throw failure;
  }
}

/** Nobody else may be connected, or what was loaded could not be taken back without taking what they wrote. */
export async function databaseToRestore(database: DatabaseUrls): Promise<PlaceToRestore> {
  await connected(database.ownerUrl, async (owner) => {
    if (await isShared(owner)) {
      throw new CannotStart('Somebody is connected to the database of DATABASE_OWNER_URL: stop Larderbook, and whatever else uses it.');
    }
    await refuseRows(owner, await bookTables(owner));
  });
  return {
    ...database,
    keep: async () => {},
    discard: async (isLoaded) => {
      if (isLoaded) await connected(database.ownerUrl, emptied);
    },
  };
}

/** A connection that was just closed may still be seen for a moment. PostgreSQL's own housekeeping has no user. */
async function isShared(owner: pg.Client, tries = 20): Promise<boolean> {
  const { rowCount } = await owner.query(`
    SELECT FROM pg_stat_activity WHERE datname = current_database() AND usesysid IS NOT NULL AND pid <> pg_backend_pid() LIMIT 1`);
  if (!rowCount || tries === 0) return Boolean(rowCount);
  await wait(100);
  return isShared(owner, tries - 1);
}
