import { roundedMass, massFromGrams } from '@larderbook/haccp';
import type { Tx } from '../platform/database';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';

/**
 * A correction must not return called-back product to store, where it would be free to leave. Called after it is
 * written. Throws `still-in-use`.
 */
export async function checkStillCalledBack(tx: Tx, packingIds: readonly string[]): Promise<void> {
  const lots = await tx.$queryRaw<{ code: string; unit: string; recalled: string; shipped: string }[]>`
    SELECT l.code, max(p.weight_unit) AS unit, sum(p.grams)::text AS recalled,
      (SELECT coalesce(sum(s.count * k.net_grams), 0) FROM packing_now k JOIN shipment_line_now s ON s.packing_id = k.id
        WHERE k.lot_id = l.id)::text AS shipped
    FROM lot l JOIN disposition_now p ON p.lot_id = l.id AND p.decision = 'recall'
    WHERE l.id IN (SELECT lot_id FROM packing WHERE id = ANY(${packingIds}::uuid[]))
    GROUP BY l.establishment_id, l.id, l.code`;
  const short = lots.find(({ recalled, shipped }) => massFromGrams(shipped) < massFromGrams(recalled));
  if (!short) return;
  const weight = roundedMass(massFromGrams(short.recalled), short.unit === 'lb' || short.unit === 'oz' ? 'lb' : 'kg');
  throw new Problem('still-in-use', told('weight-called-back', { weight, code: short.code }));
}
