import type { Judged, Lot } from '@larderbook/contracts';
import { itemsNow } from '../plan/items-now';
import type { PersonNames } from '../people/person-names';
import type { Tx } from '../platform/database';
import { sayKeptWeight } from '../platform/kept-weight';
import { corrections } from './corrections';

/** Ingredients weighed into a lot, oldest first, each with what was judged when it was entered. */
export async function showWeighings(tx: Tx, lotId: string, names: PersonNames): Promise<Lot['weighings']> {
  const rows = await tx.weighing.findMany({
    where: { lotId },
    include: { receipt: { select: { id: true, code: true, supplierLot: true } } },
    orderBy: [{ takenAt: 'asc' }, { recordedAt: 'asc' }, { id: 'asc' }],
  });
  const items = await itemsNow(tx, [...new Set(rows.map(({ itemId }) => itemId))]);
  const correction = corrections(rows, names);
  return rows.map((row) => ({
    weighingId: row.id,
    item: { itemId: row.itemId, name: items.get(row.itemId)?.name ?? '' },
    receipt: row.receipt
      ? { receiptId: row.receipt.id, code: row.receipt.code, supplierLot: row.receipt.supplierLot }
      : undefined,
    weight: sayKeptWeight(row),
    fractionPercent: row.fractionPercent?.toNumber(),
    targetGrams: row.targetGrams?.toNumber(),
    controlPointId: row.controlPointId ?? undefined,
    judged: row.judged as unknown as Judged[],
    ...correction(row),
  }));
}
