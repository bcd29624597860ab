import type pg from 'pg';

/** Both as PostgreSQL knows them, not quoted. */
export type BookTable = { name: string; columns: string[] };

/** Sessions and what a sign-in tries end by themselves. Migrations are named in the first line, and applied anew. */
const leftOut = /^(sign_in_(session|verification|attempt)|_prisma_migrations)$/;

/** What is in a backup: every table but those, each after the tables that it refers to. */
export async function bookTables(client: pg.Client): Promise<BookTable[]> {
  const { rows } = await client.query<BookTable & { refers_to: string[] }>(`
    SELECT c.relname AS name,
      array(SELECT a.attname::text FROM pg_attribute a
        WHERE a.attrelid = c.oid AND a.attnum > 0 AND NOT a.attisdropped AND a.attgenerated = '' ORDER BY a.attnum) AS columns,
      array(SELECT DISTINCT r.relname::text FROM pg_constraint k JOIN pg_class r ON r.oid = k.confrelid
        WHERE k.conrelid = c.oid AND k.contype = 'f' AND k.confrelid <> c.oid) AS refers_to
    FROM pg_class c
    WHERE c.relnamespace = 'public'::regnamespace AND c.relkind IN ('r', 'p') AND NOT c.relispartition
    ORDER BY c.relname COLLATE "C"`);
  const kept = rows.filter(({ name }) => !leftOut.test(name));
  const ordered = new Set<(typeof kept)[number]>();
  const place = (table: (typeof kept)[number], above: string[]) => {
    for (const other of kept) {
      if (table.refers_to.includes(other.name) && !ordered.has(other) && !above.includes(other.name)) place(other, [...above, table.name]);
    }
    ordered.add(table);
  };
  for (const table of kept) place(table, []);
  return [...ordered].map(({ name, columns }) => ({ name, columns }));
}
