import { existsSync, readFileSync } from 'node:fs';
import { open, rename, rm, stat, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { createGzip } from 'node:zlib';
import type pg from 'pg';
import { headsOfBooks } from '../ledger/heads-of-books';
import { CannotStart } from '../platform/cannot-start';
import { connected } from '../platform/connected';
import { appliedTo } from '../platform/migrate';
import { projectRoot } from '../project-root';
import { bookText } from './book-text';
import { formatName, formatVersion, type FirstLine } from './lines';
import { readBackup, type ReadBackup } from './read-backup';
import { sealed } from './seal';

export type MadeBackup = ReadBackup & { bytes: number };

/**
 * One moment of the whole book, while others write. The file has its name only when it is whole, on disk, and was read
 * back. Throws CannotStart.
 */
export async function backUp(ownerUrl: string, file: string, passphrase?: string): Promise<MadeBackup> {
  const part = `${file}.part`;
  checkPlace(file);
  const made = await open(part, 'wx', 0o600).catch((failure: unknown) => {
    throw unwritable(failure, part);
  });
  try {
    await connected(ownerUrl, async (owner) => {
      const text = Readable.from(bookText(owner, await beginSnapshot(owner)));
      const packed = pipedThroughGzip(text);
      await writeFile(made, passphrase ? sealed(passphrase, packed) : packed);
    });
    await made.sync();
    await made.close();
    const read = await readBackup(part, passphrase);
    await rename(part, file);
    await syncFolder(dirname(file));
    return { ...read, bytes: (await stat(file)).size };
  } catch (failure) {
    await made.close();
    await rm(part, { force: true });
    throw unwritable(failure, file);
  }
}

function checkPlace(file: string): void {
  if (existsSync(file)) throw new CannotStart(`${file} is there already, and no backup is written over another: name a new file.`);
  if (!existsSync(dirname(file)))
    throw new CannotStart(`There is no folder ${dirname(file)}: make it, or name another place for the backup.`);
}

function pipedThroughGzip(text: Readable): AsyncIterable<Buffer> {
  const packed = createGzip();
  pipeline(text, packed).catch(() => {}); // whoever reads what is packed is told
  return packed;
}

/** Row security that hid a row would make the backup fail instead. Text is the same whatever the server is set to. */
async function beginSnapshot(owner: pg.Client): Promise<FirstLine> {
  await owner.query(`
    BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY;
    SET LOCAL row_security = off; SET LOCAL statement_timeout = 0; SET LOCAL idle_in_transaction_session_timeout = 0;
    SET LOCAL timezone = 'UTC'; SET LOCAL datestyle = 'ISO, YMD'; SET LOCAL intervalstyle = 'postgres';
    SET LOCAL extra_float_digits = 1; SET LOCAL bytea_output = 'hex'`);
  const establishments = await headsOfBooks(owner);
  if (establishments.length === 0) throw new CannotStart('No establishment has been set up yet: there is nothing to back up.');
  const { rows } = await owner.query<{ postgres: string; at: Date }>(`SELECT current_setting('server_version') AS postgres, now() AS at`);
  const applied = (await appliedTo(owner)).filter(({ finished_at }) => finished_at !== null);
  return {
    format: formatName,
    version: formatVersion,
    madeAt: (rows[0]?.at ?? new Date()).toISOString(),
    larderbook: ownVersion(),
    postgres: rows[0]?.postgres ?? '',
    migrations: applied.map(({ migration_name }) => migration_name).sort(),
    establishments,
  };
}

const ownVersion = () => (JSON.parse(readFileSync(join(projectRoot, 'package.json'), 'utf8')) as { version: string }).version;

/** A new name is on disk when its folder is. Windows opens no folder. */
async function syncFolder(folder: string): Promise<void> {
  if (process.platform === 'win32') return;
  const handle = await open(folder);
  await handle.sync().finally(() => handle.close());
}

function unwritable(failure: unknown, file: string): unknown {
  const why: Record<string, string> = {
    EEXIST: 'is there already: another backup is being written, or one was cut off, whose part may be deleted',
    EACCES: 'may not be written by this user: name another place for the backup',
    EPERM: 'may not be written by this user: name another place for the backup',
    EROFS: 'is on a disk that can only be read: name another place for the backup',
    ENOSPC: 'does not fit on its disk: name another place for the backup',
    ENOTDIR: 'does not lie in a folder: name another place for the backup',
  };
  const code = failure instanceof Error && 'code' in failure ? String(failure.code) : '';
  return why[code] ? new CannotStart(`${file} ${why[code]}.`, { cause: failure }) : failure;
}
