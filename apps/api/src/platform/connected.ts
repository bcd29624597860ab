import pg from 'pg';
import { CannotStart } from './cannot-start';

/** Throws CannotStart when the database cannot be reached; the message holds no password. */
export async function connected<T>(url: string, work: (client: pg.Client) => Promise<T>): Promise<T> {
  const client = new pg.Client({ connectionString: url, connectionTimeoutMillis: 10_000 });
  client.on('error', () => {}); // the query that waits on a broken connection fails with the same message
  try {
    await client.connect();
  } catch (failure) {
    throw new CannotStart(
      `The database ${client.database} at ${client.host}:${client.port} does not let ${client.user} in (${reason(failure)}): ` +
        'see that it is running and that DATABASE_URL and DATABASE_OWNER_URL are right.',
      { cause: failure },
    );
  }
  return work(client).finally(() => client.end());
}

function reason(failure: unknown): string {
  const first = failure instanceof AggregateError ? (failure.errors[0] as unknown) : failure;
  return first instanceof Error ? first.message : String(first);
}
