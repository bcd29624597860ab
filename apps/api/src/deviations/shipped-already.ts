import type { Tx } from '../platform/database';
import { reachedLots } from './reached-lots';

/** Product that left before the deviation was opened is a possible recall. */
export async function shippedAlready(tx: Tx, deviationIds: readonly string[]): Promise<ReadonlySet<string>> {
  const found = await tx.$queryRaw<{ id: string }[]>`
    ${reachedLots(deviationIds)}
    SELECT DISTINCT c.id FROM chosen c
    JOIN reached r ON r.deviation_id = c.id
    JOIN packing_now p ON p.lot_id = r.lot_id
    JOIN shipment_line_now l ON l.packing_id = p.id
    JOIN shipment s ON s.id = l.shipment_id AND s.seq <= c.seq`;
  return new Set(found.map(({ id }) => id));
}
