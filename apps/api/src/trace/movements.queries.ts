import { massFromGrams } from '@larderbook/haccp';
import { Prisma } from '../generated/prisma/client';
import type { Tx } from '../platform/database';

/**
 * `wentIn`: received, or put and weighed in before trimming. `removed`: trimmed off, lost, sampled, thrown away, sent
 * back. `counted`: a count found less, which explains nothing.
 */
export type Movement = 'wentIn' | 'used' | 'removed' | 'condemned' | 'counted';
/** Femtograms; zero when nothing happened. */
export type Moved = (what: Movement) => bigint;
type Movements = ReadonlyMap<string, Moved>;

/** Entries that a later one corrects do not count. */
export const movementsOfLots = (tx: Tx, lotIds: readonly string[]): Promise<Movements> =>
  sums(
    tx,
    lotIds,
    Prisma.sql`
    SELECT i.lot_id, what, g
      FROM lot_input_now i, LATERAL (VALUES ('wentIn', i.grams), ('removed', i.grams - i.trimmed_grams)) AS parts(what, g)
      WHERE i.lot_id = ANY(${lotIds}::uuid[])
    UNION ALL
    SELECT w.lot_id, 'wentIn', w.grams FROM weighing_now w
      WHERE w.lot_id = ANY(${lotIds}::uuid[])
    UNION ALL
    SELECT i.source_lot_id, 'used', i.grams FROM lot_input_now i
      WHERE i.source_lot_id = ANY(${lotIds}::uuid[])
    UNION ALL
    SELECT m.lot_id, ${kindOfRemoval}, m.grams FROM removal_now m WHERE m.lot_id = ANY(${lotIds}::uuid[])
    UNION ALL
    SELECT p.lot_id, 'condemned', p.grams FROM disposition_now p
      WHERE p.lot_id = ANY(${lotIds}::uuid[]) AND p.decision = 'condemn'`,
  );

/** A refused delivery went back whole. */
export const movementsOfReceipts = (tx: Tx, receiptIds: readonly string[]): Promise<Movements> =>
  sums(
    tx,
    receiptIds,
    Prisma.sql`
    SELECT r.id, what, r.grams
      FROM receipt_now r, LATERAL (VALUES ('wentIn', true), ('removed', r.decision = 'refused')) AS parts(what, happened)
      WHERE r.id = ANY(${receiptIds}::uuid[]) AND happened
    UNION ALL
    SELECT i.receipt_id, 'used', i.grams FROM lot_input_now i
      WHERE i.receipt_id = ANY(${receiptIds}::uuid[])
    UNION ALL
    SELECT w.receipt_id, 'used', w.grams FROM weighing_now w
      WHERE w.receipt_id = ANY(${receiptIds}::uuid[])
    UNION ALL
    SELECT m.receipt_id, ${kindOfRemoval}, m.grams FROM removal_now m WHERE m.receipt_id = ANY(${receiptIds}::uuid[])
    UNION ALL
    SELECT p.receipt_id, CASE p.decision WHEN 'condemn' THEN 'condemned' ELSE 'removed' END, p.grams FROM disposition_now p
      WHERE p.receipt_id = ANY(${receiptIds}::uuid[]) AND p.decision IN ('condemn', 'return')`,
  );

const kindOfRemoval = Prisma.sql`CASE m.kind WHEN 'counted difference' THEN 'counted' ELSE 'removed' END`;

async function sums(tx: Tx, ids: readonly string[], moved: Prisma.Sql): Promise<Movements> {
  const rows = await tx.$queryRaw<{ id: string; what: Movement; grams: string }[]>`
    SELECT id, what, sum(grams)::text AS grams FROM (${moved}) AS moved(id, what, grams) GROUP BY id, what`;
  const byId = new Map<string, Map<Movement, bigint>>(ids.map((id) => [id, new Map()]));
  for (const { id, what, grams } of rows) byId.get(id)?.set(what, massFromGrams(grams));
  return new Map([...byId].map(([id, happened]) => [id, (what: Movement) => happened.get(what) ?? 0n]));
}
