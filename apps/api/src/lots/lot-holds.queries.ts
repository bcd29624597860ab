import { massFromGrams } from '@larderbook/haccp';
import type { Tx } from '../platform/database';

/** What a lot holds by its records, in femtograms. Entries that a later one corrects do not count. */
export type LotHolds = {
  /** Meat as trimmed, and everything weighed in. */
  wentIn: bigint;
  /** Taken out with a record: losses, samples, waste. */
  removed: bigint;
  condemned: bigint;
  /** Taken into later lots. */
  reworked: bigint;
  packed: bigint;
  shipped: bigint;
};
type Row = Record<keyof LotHolds, string> & { lotId: string };

/** By lot; a lot that is not there is not in the answer. */
export async function lotsHold(tx: Tx, lotIds: readonly string[]): Promise<ReadonlyMap<string, LotHolds>> {
  const rows = await tx.$queryRaw<Row[]>`
    SELECT l.id AS "lotId",
      ((SELECT coalesce(sum(i.trimmed_grams), 0) FROM lot_input_now i WHERE i.lot_id = l.id)
        + (SELECT coalesce(sum(w.grams), 0) FROM weighing_now w WHERE w.lot_id = l.id))::text AS "wentIn",
      (SELECT coalesce(sum(r.grams), 0) FROM removal_now r WHERE r.lot_id = l.id)::text AS removed,
      (SELECT coalesce(sum(p.grams), 0) FROM deviation d JOIN disposition p ON p.deviation_id = d.id
        WHERE p.decision = 'condemn' AND d.lot_id = l.id)::text AS condemned,
      (SELECT coalesce(sum(i.grams), 0) FROM lot_input_now i WHERE i.source_lot_id = l.id)::text AS reworked,
      (SELECT coalesce(sum(p.count * p.net_grams), 0) FROM packing_now p WHERE p.lot_id = l.id)::text AS packed,
      (SELECT coalesce(sum(s.count * p.net_grams), 0) FROM packing_now p JOIN shipment_line_now s ON s.packing_id = p.id
        WHERE p.lot_id = l.id)::text AS shipped
    FROM lot l WHERE l.id = ANY(${lotIds}::uuid[])`;
  return new Map(rows.map(({ lotId, ...held }) => [lotId, inFemtograms(held)]));
}

/** One lot; a lot that is not there holds nothing. */
export const lotHolds = async (tx: Tx, lotId: string): Promise<LotHolds> =>
  (await lotsHold(tx, [lotId])).get(lotId) ?? empty;

/** What is still loose in a lot: not packed, not taken into another, not removed, not condemned. Never below zero. */
export function looseIn({ wentIn, removed, condemned, reworked, packed }: LotHolds): bigint {
  const loose = wentIn - removed - condemned - reworked - packed;
  return loose > 0n ? loose : 0n;
}

const empty: LotHolds = { wentIn: 0n, removed: 0n, condemned: 0n, reworked: 0n, packed: 0n, shipped: 0n };

const inFemtograms = (held: Record<keyof LotHolds, string>): LotHolds => ({
  wentIn: massFromGrams(held.wentIn),
  removed: massFromGrams(held.removed),
  condemned: massFromGrams(held.condemned),
  reworked: massFromGrams(held.reworked),
  packed: massFromGrams(held.packed),
  shipped: massFromGrams(held.shipped),
});
