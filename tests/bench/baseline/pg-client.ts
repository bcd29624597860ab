import pg from 'pg';
import { v7 } from 'uuid';
import { asFastAsAnswered, asManyASecond, type Client, type Load } from '../load/load';
import { readingSql, type ReadingParameters } from './reading-sql';

/** The bare SQL by the database driver in this process, with prepared statements; where there is no pgbench. */
export async function byPgClient(
  url: string,
  shops: readonly ReadingParameters[],
  count: number,
  seconds: number,
  perSecond?: number,
): Promise<Load> {
  const connections = Array.from({ length: count }, () => new pg.Client({ connectionString: url }));
  try {
    await Promise.all(connections.map((connection) => connection.connect()));
    const clients = connections.map(
      (connection, index): Client =>
        () =>
          recordOne(connection, shops[index % shops.length]),
    );
    return await (perSecond ? asManyASecond(perSecond, clients, seconds) : asFastAsAnswered(clients, seconds));
  } finally {
    await Promise.all(connections.map((connection) => connection.end()));
  }
}

async function recordOne(connection: pg.Client, shop: ReadingParameters | undefined): Promise<void> {
  const given = new Map(Object.entries({ ...shop, id: v7() }));
  for (const [step, statement] of prepared.entries()) {
    await connection.query({ ...statement, name: `step ${step}`, values: statement.names.map((name) => given.get(name)) });
  }
}

/** The driver numbers its parameters. */
const prepared = readingSql.map((sql) => {
  const names = [...new Set([...sql.matchAll(/(?<!:):([a-z]+)/g)].map(([, name]) => name ?? ''))];
  return { names, text: sql.replace(/(?<!:):([a-z]+)/g, (_whole, name: string) => `$${names.indexOf(name) + 1}`) };
});
