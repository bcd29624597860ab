import type { Judged, Lot } from '@larderbook/contracts';
import { sayKeptWeight } from '../platform/kept-weight';
import { corrections } from './corrections';
import type { Shown } from './read-shown';

/** Ingredients weighed into a lot, oldest first, each with what was judged when it was entered. */
export function showWeighings({ weighings, people, names }: Shown): Lot['weighings'] {
  const correction = corrections(weighings, people);
  return weighings.map((row) => ({
    weighingId: row.id,
    item: { itemId: row.itemId, name: names.get(row.itemId) ?? '' },
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
