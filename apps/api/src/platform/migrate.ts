import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import pg from 'pg';
import { CannotStart } from './cannot-start';
import { connected } from './connected';
import { schemaEngine } from './schema-engine';

type Applied = { migration_name: string; finished_at: Date | null };

/** Any number that no other program on the database uses for its advisory lock. */
const migrating = 4180_0001;

/**
 * Of several processes one migrates while the others wait. `last` is the migration at which to stop, when not at the
 * newest. Throws CannotStart for a newer database or a migration cut short.
 */
export async function migrate(ownerUrl: string, prismaFolder: string, last?: string): Promise<void> {
  const known = (await migrationsIn(prismaFolder)).filter((name) => last === undefined || name <= last);
  await connected(ownerUrl, async (owner) => {
    if (await isUpToDate(owner, known)) return;
    await owner.query('SELECT pg_advisory_lock($1)', [migrating]);
    if ((await pending(owner, known)).length > 0) await apply(ownerUrl, prismaFolder, known);
  });
}

/** A migration that looks unfinished here may be another process at work. */
async function isUpToDate(owner: pg.Client, known: string[]): Promise<boolean> {
  const applied = await appliedTo(owner);
  const finished = applied.filter(({ finished_at }) => finished_at !== null).map(({ migration_name }) => migration_name);
  return applied.length === known.length && known.every((name) => finished.includes(name));
}

export async function migrationsIn(prismaFolder: string): Promise<string[]> {
  const entries = await readdir(join(prismaFolder, 'migrations'), { withFileTypes: true });
  return entries
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name)
    .sort();
}

async function pending(owner: pg.Client, known: string[]): Promise<string[]> {
  const applied = await appliedTo(owner);
  const unfinished = applied.find((migration) => migration.finished_at === null);
  if (unfinished) {
    throw new CannotStart(
      `The migration ${unfinished.migration_name} was cut short on this database: bring the database back from your backup, ` +
        'or have someone who knows its tables finish it, then start again.',
    );
  }
  const unknown = applied.find((migration) => !known.includes(migration.migration_name));
  if (unknown) {
    throw new CannotStart(
      `The database is newer than this Larderbook (it has ${unknown.migration_name}, which this version does not know): ` +
        'start the version that was used last, or a later one.',
    );
  }
  return known.filter((name) => !applied.some((migration) => migration.migration_name === name));
}

/** Also one that was cut short, which has no end. */
export async function appliedTo(owner: pg.Client): Promise<Applied[]> {
  try {
    const { rows } = await owner.query<Applied>('SELECT migration_name, finished_at FROM _prisma_migrations WHERE rolled_back_at IS NULL');
    return rows;
  } catch (failure) {
    if (failure instanceof pg.DatabaseError && failure.code === '42P01') return []; // undefined_table: the database was never used
    throw failure;
  }
}

async function apply(ownerUrl: string, prismaFolder: string, known: string[]): Promise<void> {
  const folder = join(prismaFolder, 'migrations');
  const schemaPath = join(prismaFolder, 'schema.prisma');
  const text = (path: string) => readFile(path, 'utf8');
  const pool = new pg.Pool({ connectionString: ownerUrl });
  const engine = await schemaEngine(pool, { path: schemaPath, text: await text(schemaPath) });
  try {
    await engine.applyMigrations({
      migrationsList: {
        baseDir: folder,
        lockfile: { path: 'migration_lock.toml', content: await text(join(folder, 'migration_lock.toml')) },
        shadowDbInitScript: '',
        migrationDirectories: await Promise.all(
          known.map(async (path) => ({
            path,
            migrationFile: {
              path: 'migration.sql',
              content: { tag: 'ok' as const, value: await text(join(folder, path, 'migration.sql')) },
            },
          })),
        ),
      },
      filters: { externalTables: [], externalEnums: [] },
    });
  } finally {
    engine.free();
    await pool.end();
  }
}
