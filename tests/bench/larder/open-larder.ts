import { join } from 'node:path';
import { openEmbeddedPostgres, type DatabaseUrls } from '../../../apps/api/src/platform/embedded-postgres';
import { startProgram } from '../../support/program';
import { inTemporaryFolder } from './temporary-folder';

/** Larderbook as a person starts it, in a process of its own, and the database under it. */
export type Larder = { url: string; database: DatabaseUrls };

/** The embedded database with every commit on disk before it is answered, and the built program on it. */
export const withLarder = <T>(work: (larder: Larder) => Promise<T>): Promise<T> =>
  inTemporaryFolder(async (folder) => {
    const database = await openEmbeddedPostgres(join(folder, 'data'));
    const program = startProgram({ DATABASE_URL: database.apiUrl, DATABASE_OWNER_URL: database.ownerUrl });
    try {
      return await work({ url: await program.open, database });
    } finally {
      await program.stop();
      await database.close();
    }
  });
