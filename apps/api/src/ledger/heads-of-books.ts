import type pg from 'pg';
import { z } from 'zod';

/** Where the ledger of an establishment ends. */
export const Head = z.object({ establishment: z.string(), name: z.string(), seq: z.number(), hash: z.string() });
export type Head = z.infer<typeof Head>;

/**
 * Of every book, in the order they were set up. One whose establishment is gone is found by its lines and by who works
 * there.
 */
export async function headsOfBooks(client: pg.Client): Promise<Head[]> {
  const { rows: tables } = await client.query<{ made: boolean }>(`SELECT to_regclass('establishment') IS NOT NULL AS made`);
  if (!tables[0]?.made) return [];
  const { rows } = await client.query<Omit<Head, 'seq'> & { seq: string }>(`
    SELECT e.id AS establishment, coalesce(d.name, e.id::text) AS name, coalesce(l.seq, 0) AS seq, coalesce(encode(l.hash, 'hex'), '') AS hash
    FROM (SELECT id FROM establishment UNION SELECT establishment_id FROM ledger_entry
      UNION SELECT establishment_id FROM person UNION SELECT establishment_id FROM sign_in) e
    LEFT JOIN establishment made ON made.id = e.id
    LEFT JOIN LATERAL (SELECT x.name FROM establishment_details x WHERE x.establishment_id = e.id
      ORDER BY x.seq DESC LIMIT 1) d ON true
    LEFT JOIN LATERAL (SELECT x.seq, x.hash FROM ledger_entry x WHERE x.establishment_id = e.id ORDER BY x.seq DESC LIMIT 1) l ON true
    ORDER BY made.recorded_at, e.id`);
  return rows.map((row) => ({ ...row, seq: Number(row.seq) }));
}
