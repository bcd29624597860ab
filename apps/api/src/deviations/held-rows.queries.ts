import { Prisma } from '../generated/prisma/client';
import type { Tx } from '../platform/database';
import { reachedLots } from './reached-lots';

/** `grams` are as taken from the source, `counted` as they went in. */
export type EntryRow = {
  id: string;
  lotId: string;
  sourceId: string | null;
  grams: string;
  counted: string;
  unit: string;
  amendsId: string | null;
  /** A later row corrects or voids it. */
  isCorrected: boolean;
  seq: bigint;
};
export type ProductRow = {
  id: string;
  kind: 'lot' | 'receipt';
  code: string;
  what: string;
  unit: string | null;
  /** Only of an accepted delivery. */
  received: string | null;
  shipped: string;
};
type DispositionRow = { productId: string; decision: string; grams: string; speaksFor: string[] };
type DeviationRow = { id: string; productId: string; closedSeq: bigint | null; reached: string[] };

/** In the order of the ledger. */
export type HeldRows = {
  deviations: DeviationRow[];
  products: ReadonlyMap<string, ProductRow>;
  entries: EntryRow[];
  removals: { productId: string; grams: string }[];
  dispositions: DispositionRow[];
  /** The ledger line of the first row, before corrections. */
  rootSeq: (entry: EntryRow) => bigint;
};

/** The number of statements is fixed, however many deviations. `without` leaves out one decision. */
export async function readHeld(tx: Tx, deviationIds: readonly string[], without?: string): Promise<HeldRows> {
  const deviations = await whatTheyReached(tx, deviationIds);
  const ids = [...new Set(deviations.flatMap(({ productId, reached }) => [productId, ...reached]))];
  const [products, entries, removals, dispositions] = await Promise.all([
    productsOf(tx, ids),
    entriesOf(tx, ids),
    removalsOf(tx, ids),
    dispositionsOf(tx, ids, without),
  ]);
  return {
    deviations,
    products: new Map(products.map((product) => [product.id, product])),
    entries,
    removals,
    dispositions,
    rootSeq: rootsIn(entries),
  };
}

/**
 * The last decision, when one was corrected or voided after the closing: what was put in until then belongs to the
 * deviation too.
 */
const decidedSince = Prisma.sql`
  SELECT max(x.seq) FROM decided_deviation s
  JOIN LATERAL (
    SELECT s.seq, false AS voids
    UNION ALL
    SELECT v.seq, true FROM disposition v WHERE v.amends_id = s.disposition_id
  ) x ON true
  WHERE s.deviation_id = c.id HAVING max(x.seq) FILTER (WHERE x.voids) IS NOT NULL`;

const whatTheyReached = (tx: Tx, deviationIds: readonly string[]) => tx.$queryRaw<DeviationRow[]>`
  ${reachedLots(deviationIds)}
  SELECT c.id, coalesce(c.lot_id, c.receipt_id) AS "productId",
    (SELECT greatest(k.seq, (${decidedSince})) FROM deviation_closing_now k WHERE k.deviation_id = c.id) AS "closedSeq",
    ARRAY(SELECT r.lot_id FROM reached r WHERE r.deviation_id = c.id) AS reached
  FROM chosen c`;

/** A voided delivery has nothing received. */
const productsOf = (tx: Tx, ids: readonly string[]) => tx.$queryRaw<ProductRow[]>`
  SELECT l.id, 'lot' AS kind, l.code, p.name AS what, NULL AS unit, NULL AS received,
    (SELECT coalesce(sum(s.count * k.net_grams), 0) FROM packing_now k JOIN shipment_line_now s ON s.packing_id = k.id
      WHERE k.lot_id = l.id)::text AS shipped
  FROM lot l JOIN product p ON p.id = l.product_id WHERE l.id = ANY(${ids}::uuid[])
  UNION ALL
  SELECT f.id, 'receipt', f.code, i.name, coalesce(r.weight_unit, f.weight_unit),
    CASE r.decision WHEN 'accepted' THEN r.grams::text END, '0'
  FROM receipt f LEFT JOIN receipt_now r ON r.id = f.id
  JOIN item i ON i.id = coalesce(r.item_id, f.item_id) WHERE f.id = ANY(${ids}::uuid[])`;

/** Includes what other lots took from these lots and deliveries. */
const entriesOf = (tx: Tx, ids: readonly string[]) => tx.$queryRaw<EntryRow[]>`
  SELECT e.* FROM (
    SELECT i.id, i.seq, i.lot_id AS "lotId", coalesce(i.receipt_id, i.source_lot_id) AS "sourceId", i.grams::text AS grams,
      i.trimmed_grams::text AS counted, i.weight_unit AS unit, i.amends_id AS "amendsId",
      i.voided IS TRUE OR EXISTS (SELECT FROM lot_input x WHERE x.amends_id = i.id) AS "isCorrected"
    FROM lot_input i WHERE i.lot_id = ANY(${ids}::uuid[])
    UNION ALL
    SELECT w.id, w.seq, w.lot_id, w.receipt_id, w.grams::text, w.grams::text, w.weight_unit, w.amends_id,
      w.voided IS TRUE OR EXISTS (SELECT FROM weighing x WHERE x.amends_id = w.id)
    FROM weighing w WHERE w.lot_id = ANY(${ids}::uuid[])
  ) e ORDER BY e.seq`;

const removalsOf = (tx: Tx, ids: readonly string[]) => tx.$queryRaw<HeldRows['removals']>`
  SELECT lot_id AS "productId", grams::text AS grams FROM removal_now WHERE lot_id = ANY(${ids}::uuid[])
  UNION ALL
  SELECT receipt_id, grams::text FROM removal_now WHERE receipt_id = ANY(${ids}::uuid[])`;

const dispositionsOf = (tx: Tx, ids: readonly string[], without?: string) => tx.$queryRaw<DispositionRow[]>`
  SELECT p."productId", p.decision, p.grams::text AS grams,
    ARRAY(SELECT s.deviation_id FROM decided_deviation s WHERE s.disposition_id = p.id) AS "speaksFor"
  FROM (
    SELECT id, seq, lot_id AS "productId", decision, grams FROM disposition_now WHERE lot_id = ANY(${ids}::uuid[])
    UNION ALL
    SELECT id, seq, receipt_id, decision, grams FROM disposition_now WHERE receipt_id = ANY(${ids}::uuid[])
  ) p WHERE p.id IS DISTINCT FROM ${without ?? null}::uuid ORDER BY p.seq`;

function rootsIn(entries: readonly EntryRow[]): (entry: EntryRow) => bigint {
  const byId = new Map(entries.map((entry) => [entry.id, entry]));
  return (entry) => {
    let root = entry;
    for (let before = byId.get(root.amendsId ?? ''); before; before = byId.get(root.amendsId ?? '')) root = before;
    return root.seq;
  };
}
