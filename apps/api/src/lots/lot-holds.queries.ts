import { massFromGrams, type SetAside } from '@larderbook/haccp';
import type { Tx } from '../platform/database';
import { nothingAside, setAsideIn } from './set-aside.queries';

/** What a lot holds by its records, in femtograms. Entries that a later one corrects do not count. */
export type LotHolds = {
  /** Meat as trimmed, and everything weighed in. */
  wentIn: bigint;
  /** Taken out with a record: losses, samples, waste. */
  removed: bigint;
  condemned: bigint;
  /** Of what was condemned: its destruction is recorded. */
  destroyed: bigint;
  /** Taken into later lots. */
  reworked: bigint;
  packed: bigint;
  shipped: bigint;
  /** What of it decisions keep from leaving. */
  aside: SetAside;
};
type Sums = Omit<LotHolds, 'aside'>;
type Row = Record<keyof Sums, string> & { lotId: string };

/** By lot; a lot that is not there is not in the answer. */
export async function lotsHold(tx: Tx, lotIds: readonly string[]): Promise<ReadonlyMap<string, LotHolds>> {
  const [rows, aside] = await Promise.all([sumsOf(tx, lotIds), setAsideIn(tx, lotIds)]);
  return new Map(rows.map(({ lotId, ...held }) => [lotId, { ...inFemtograms(held), aside: aside.get(lotId) ?? nothingAside }]));
}

const sumsOf = (tx: Tx, lotIds: readonly string[]) => tx.$queryRaw<Row[]>`
    SELECT l.id AS "lotId",
      ((SELECT coalesce(sum(i.trimmed_grams), 0) FROM lot_input_now i WHERE i.lot_id = l.id)
        + (SELECT coalesce(sum(w.grams), 0) FROM weighing_now w WHERE w.lot_id = l.id))::text AS "wentIn",
      (SELECT coalesce(sum(r.grams), 0) FROM removal_now r WHERE r.lot_id = l.id)::text AS removed,
      (SELECT coalesce(sum(p.grams), 0) FROM disposition_now p
        WHERE p.decision = 'condemn' AND p.lot_id = l.id)::text AS condemned,
      (SELECT coalesce(sum(p.grams), 0) FROM disposition_now p JOIN destruction_now x ON x.disposition_id = p.id
        WHERE p.decision = 'condemn' AND p.lot_id = l.id)::text AS destroyed,
      (SELECT coalesce(sum(i.grams), 0) FROM lot_input_now i WHERE i.source_lot_id = l.id)::text AS reworked,
      (SELECT coalesce(sum(p.count * p.net_grams), 0) FROM packing_now p WHERE p.lot_id = l.id)::text AS packed,
      (SELECT coalesce(sum(s.count * p.net_grams), 0) FROM packing_now p JOIN shipment_line_now s ON s.packing_id = p.id
        WHERE p.lot_id = l.id)::text AS shipped
    FROM lot l WHERE l.id = ANY(${lotIds}::uuid[])`;

/** One lot; a lot that is not there holds nothing. */
export const lotHolds = async (tx: Tx, lotId: string): Promise<LotHolds> => (await lotsHold(tx, [lotId])).get(lotId) ?? empty;

/**
 * What is loose in a lot: not packed, not taken into another, not removed, not condemned. Below zero when its records
 * contradict each other. What was condemned in packages, or reworked out of them, was packed and counts once.
 */
export const looseIn = ({ wentIn, removed, condemned, reworked, packed, aside }: LotHolds): bigint =>
  wentIn - removed - (condemned - aside.condemned) - (reworked - aside.opened) - packed;

/** What may be taken out of a lot into another: what is loose, and packages that were decided to be reworked. */
export const reworkableIn = (held: LotHolds): bigint => atLeastZero(looseIn(held)) + held.aside.toRework;

/** Loose product that was decided to be reworked: it may not be packed. */
export const looseToRework = ({ aside }: LotHolds): bigint => aside.pending - aside.toRework;

export const atLeastZero = (mass: bigint): bigint => (mass > 0n ? mass : 0n);

const empty: LotHolds = {
  wentIn: 0n,
  removed: 0n,
  condemned: 0n,
  destroyed: 0n,
  reworked: 0n,
  packed: 0n,
  shipped: 0n,
  aside: nothingAside,
};

const inFemtograms = (held: Record<keyof Sums, string>): Sums => ({
  wentIn: massFromGrams(held.wentIn),
  removed: massFromGrams(held.removed),
  condemned: massFromGrams(held.condemned),
  destroyed: massFromGrams(held.destroyed),
  reworked: massFromGrams(held.reworked),
  packed: massFromGrams(held.packed),
  shipped: massFromGrams(held.shipped),
});
