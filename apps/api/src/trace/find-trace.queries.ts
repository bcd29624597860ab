import type { findTrace as contract, ReplyOf } from '@larderbook/contracts';
import type { Tx } from '../platform/database';
import { namesEver } from './names-ever';
import { describeNodes } from './nodes.queries';

type Reply = ReplyOf<typeof contract>;

const mostOfEach = 20;

/** Every word must occur in the code, the supplier's lot, or a name. */
export async function findTrace(tx: Tx, words: string): Promise<Reply> {
  const patterns = patternsOf(words);
  const found = await tx.$queryRaw<{ id: string }[]>`
    (SELECT r.id FROM receipt_now r
      JOIN (${namesEver('item')}) item ON item.id = r.item_id
      JOIN (${namesEver('supplier')}) supplier ON supplier.id = r.supplier_id
      WHERE concat_ws(' ', r.code, r.supplier_lot, item.ever, supplier.ever) ILIKE ALL (${patterns}::text[])
      ORDER BY r.taken_at DESC LIMIT ${mostOfEach})
    UNION ALL
    (SELECT l.id FROM lot l JOIN (${namesEver('product')}) product ON product.id = l.product_id
      WHERE concat_ws(' ', l.code, product.ever) ILIKE ALL (${patterns}::text[])
      ORDER BY l.taken_at DESC LIMIT ${mostOfEach})
    UNION ALL
    (SELECT p.id FROM packing_now p JOIN lot l ON l.id = p.lot_id
      JOIN (${namesEver('product')}) product ON product.id = l.product_id
      WHERE concat_ws(' ', p.code, product.ever) ILIKE ALL (${patterns}::text[])
      ORDER BY p.taken_at DESC LIMIT ${mostOfEach})`;

  const nodes = await describeNodes(
    tx,
    found.map(({ id }) => id),
  );
  return {
    supplierLots: await supplierLotsWith(tx, words),
    found: found.flatMap(({ id }) => {
      const node = nodes.get(id);
      return node && node.kind !== 'customer' ? [{ ...node, kind: node.kind }] : [];
    }),
  };
}

/** Words may stand in any order. Wildcards of LIKE are escaped. */
const patternsOf = (words: string): string[] => words.split(/\s+/).map(patternOf);
const patternOf = (word: string): string => `%${word.replace(/[\\%_]/g, '\\$&')}%`;

/** Blanks do not count. The latest delivered comes first. */
const supplierLotsWith = (tx: Tx, words: string): Promise<Reply['supplierLots']> =>
  tx.$queryRaw<Reply['supplierLots']>`
    SELECT min(r.supplier_lot) AS "supplierLot", r.supplier_id AS "supplierId", supplier.now AS supplier,
      count(*)::int AS deliveries
    FROM (SELECT *, upper(regexp_replace(supplier_lot, '[[:space:]]', '', 'g')) AS number FROM receipt_now) r
    JOIN (${namesEver('supplier')}) supplier ON supplier.id = r.supplier_id
    WHERE r.number LIKE ${patternOf(words.replace(/\s+/g, '').toUpperCase())}
    GROUP BY r.number, r.supplier_id, supplier.now
    ORDER BY max(r.taken_at) DESC LIMIT ${mostOfEach}`;
