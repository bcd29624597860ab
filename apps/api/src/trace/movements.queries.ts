import { massFromGrams } from '@larderbook/haccp';
import type { Tx } from '../platform/database';

/**
 * What the records say became of the weight of a delivery or a lot.
 * `wentIn`: received; or put and weighed in, before trimming. `used`: taken into lots. `removed`: trimmed off, lost, sampled,
 * thrown away, sent back. `counted`: written off because a count found less, which explains nothing.
 */
export type Movement = 'wentIn' | 'used' | 'removed' | 'condemned' | 'counted';
/** Femtograms; what did not happen is zero. */
export type Moved = (what: Movement) => bigint;

/** Of deliveries and lots, by id. Entries that a later one corrects do not count; a refused delivery went back whole. */
export async function movements(tx: Tx, ids: readonly string[]): Promise<ReadonlyMap<string, Moved>> {
  const rows = await tx.$queryRaw<{ id: string; what: Movement; grams: string }[]>`
    WITH chosen AS (SELECT unnest(${ids}::uuid[]) AS id), moved(id, what, grams) AS (
      SELECT c.id, 'wentIn', r.grams FROM chosen c JOIN receipt r ON r.id = c.id
      UNION ALL
      SELECT c.id, 'removed', r.grams FROM chosen c JOIN receipt r ON r.id = c.id WHERE r.decision = 'refused'
      UNION ALL
      SELECT c.id, what, g FROM chosen c JOIN lot_input i ON i.lot_id = c.id,
        LATERAL (VALUES ('wentIn', i.grams), ('removed', i.grams - i.trimmed_grams)) AS parts(what, g)
        WHERE NOT EXISTS (SELECT FROM lot_input a WHERE a.amends_id = i.id)
      UNION ALL
      SELECT c.id, 'wentIn', w.grams FROM chosen c JOIN weighing w ON w.lot_id = c.id
        WHERE NOT EXISTS (SELECT FROM weighing a WHERE a.amends_id = w.id)
      UNION ALL
      SELECT c.id, 'used', i.grams FROM chosen c JOIN lot_input i ON i.receipt_id = c.id
        WHERE NOT EXISTS (SELECT FROM lot_input a WHERE a.amends_id = i.id)
      UNION ALL
      SELECT c.id, 'used', i.grams FROM chosen c JOIN lot_input i ON i.source_lot_id = c.id
        WHERE NOT EXISTS (SELECT FROM lot_input a WHERE a.amends_id = i.id)
      UNION ALL
      SELECT c.id, 'used', w.grams FROM chosen c JOIN weighing w ON w.receipt_id = c.id
        WHERE NOT EXISTS (SELECT FROM weighing a WHERE a.amends_id = w.id)
      UNION ALL
      SELECT c.id, CASE m.kind WHEN 'counted difference' THEN 'counted' ELSE 'removed' END, m.grams
        FROM chosen c JOIN removal m ON m.lot_id = c.id
      UNION ALL
      SELECT c.id, CASE m.kind WHEN 'counted difference' THEN 'counted' ELSE 'removed' END, m.grams
        FROM chosen c JOIN removal m ON m.receipt_id = c.id
      UNION ALL
      SELECT c.id, 'condemned', p.grams FROM chosen c JOIN deviation d ON d.lot_id = c.id
        JOIN disposition p ON p.deviation_id = d.id AND p.decision = 'condemn'
      UNION ALL
      SELECT c.id, 'condemned', p.grams FROM chosen c JOIN deviation d ON d.receipt_id = c.id
        JOIN disposition p ON p.deviation_id = d.id AND p.decision = 'condemn'
    )
    SELECT id, what, sum(grams)::text AS grams FROM moved GROUP BY id, what`;

  const byId = new Map<string, Map<Movement, bigint>>(ids.map((id) => [id, new Map()]));
  for (const { id, what, grams } of rows) byId.get(id)?.set(what, massFromGrams(grams));
  return new Map([...byId].map(([id, moved]) => [id, (what: Movement) => moved.get(what) ?? 0n]));
}
