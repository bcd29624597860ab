import { existsSync } from 'node:fs';
import { join } from 'node:path';
import type { Settings } from '../settings';
import { CannotStart } from './cannot-start';
import { joinEmbeddedPostgres, type OpenDatabase } from './embedded-postgres';

/** The database of a book that is there, beside a running Larderbook or alone. Never makes one in an empty folder. */
export async function openBook({ database, dataDir }: Settings): Promise<OpenDatabase> {
  if (database) return { ...database, close: async () => {} };
  if (existsSync(join(dataDir, 'postgres'))) return joinEmbeddedPostgres(dataDir);
  throw new CannotStart(`There is no record book in ${dataDir}: name the folder that holds it in DATA_DIR.`);
}
