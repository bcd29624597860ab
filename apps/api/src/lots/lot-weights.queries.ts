import { massFromGrams, type SetAside } from '@larderbook/haccp';
import type { Tx } from '../platform/database';
import { nothingAside, setAsideIn } from './set-aside.queries';

/** Femtograms. Entries that a later one corrects do not count. */
export type LotWeights = {
  /** Meat as trimmed, and everything weighed in. */
  wentIn: bigint;
  /** Recorded losses, samples and waste. */
  removed: bigint;
  condemned: bigint;
  /** The condemned part whose destruction is recorded. */
  destroyed: bigint;
  reworked: bigint;
  packed: bigint;
  shipped: bigint;
  /** Decisions keep this from leaving. */
  aside: SetAside;
};
type Sums = Omit<LotWeights, 'aside'>;
type Row = Record<keyof Sums, string> & { lotId: string };

/** Unknown lots are left out. */
export async function weightsOfLots(tx: Tx, lotIds: readonly string[]): Promise<ReadonlyMap<string, LotWeights>> {
  const [rows, aside] = await Promise.all([sumsOf(tx, lotIds), setAsideIn(tx, lotIds)]);
  return new Map(rows.map(({ lotId, ...sums }) => [lotId, { ...inFemtograms(sums), aside: aside.get(lotId) ?? nothingAside }]));
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

/** An unknown lot weighs nothing. */
export const weightsOfLot = async (tx: Tx, lotId: string): Promise<LotWeights> => (await weightsOfLots(tx, [lotId])).get(lotId) ?? empty;

/**
 * Below zero when records contradict each other. What was condemned or reworked out of packages was packed and counts
 * once.
 */
export const looseIn = ({ wentIn, removed, condemned, reworked, packed, aside }: LotWeights): bigint =>
  wentIn - removed - (condemned - aside.condemned) - (reworked - aside.opened) - packed;

export const reworkableIn = (weights: LotWeights): bigint => atLeastZero(looseIn(weights)) + weights.aside.toRework;

/** Loose product decided to be reworked may not be packed. */
export const looseToRework = ({ aside }: LotWeights): bigint => aside.pending - aside.toRework;

export const atLeastZero = (mass: bigint): bigint => (mass > 0n ? mass : 0n);

const empty: LotWeights = {
  wentIn: 0n,
  removed: 0n,
  condemned: 0n,
  destroyed: 0n,
  reworked: 0n,
  packed: 0n,
  shipped: 0n,
  aside: nothingAside,
};

const inFemtograms = (sums: Record<keyof Sums, string>): Sums => ({
  wentIn: massFromGrams(sums.wentIn),
  removed: massFromGrams(sums.removed),
  condemned: massFromGrams(sums.condemned),
  destroyed: massFromGrams(sums.destroyed),
  reworked: massFromGrams(sums.reworked),
  packed: massFromGrams(sums.packed),
  shipped: massFromGrams(sums.shipped),
});
