import type { Lot } from '@larderbook/contracts';
import { itemsNow } from '../plan/items-now';
import { productsNow } from '../plan/products-now';
import type { PersonNames } from '../people/person-names';
import type { Tx } from '../platform/database';
import { femtograms, sayKeptWeight } from '../platform/kept-weight';
import { suppliersNow } from '../receiving/suppliers-now';
import { corrections } from './corrections';

type Input = Lot['inputs'][number];

/** Meat and rework put into a lot, oldest first, and the trimmed femtograms of each item that count. */
export async function showInputs(tx: Tx, lotId: string, names: PersonNames) {
  const rows = await tx.lotInput.findMany({
    where: { lotId },
    include: {
      receipt: { select: { id: true, code: true, itemId: true, supplierId: true, supplierLot: true } },
      sourceLot: { select: { id: true, code: true, productId: true } },
    },
    orderBy: [{ takenAt: 'asc' }, { recordedAt: 'asc' }, { id: 'asc' }],
  });
  const receipts = rows.flatMap(({ receipt }) => receipt ?? []);
  const items = await itemsNow(
    tx,
    receipts.map(({ itemId }) => itemId),
  );
  const suppliers = await suppliersNow(
    tx,
    receipts.map(({ supplierId }) => supplierId),
  );
  const products = await productsNow(
    tx,
    rows.flatMap(({ sourceLot }) => sourceLot?.productId ?? []),
  );
  const correction = corrections(rows, names);

  const from = ({ receipt, sourceLot }: (typeof rows)[number]): Input['from'] => {
    if (sourceLot)
      return { lotId: sourceLot.id, code: sourceLot.code, what: products.get(sourceLot.productId)?.name ?? '' };
    const [item, supplier] = [items.get(receipt?.itemId ?? ''), suppliers.get(receipt?.supplierId ?? '')];
    return {
      receiptId: receipt?.id,
      code: receipt?.code ?? '',
      what: item?.name ?? '',
      supplier: supplier?.name,
      supplierLot: receipt?.supplierLot,
    };
  };
  const shown = rows.map((row): Input => ({
    inputId: row.id,
    from: from(row),
    weight: sayKeptWeight(row),
    trimmed: sayKeptWeight({ weightValue: row.trimmedValue, weightUnit: row.trimmedUnit, grams: row.trimmedGrams }),
    ...correction(row),
  }));
  const counted = rows.filter((row) => correction(row).amendedBy === undefined);
  const trimmedOf = (itemId: string): bigint =>
    counted
      .filter(({ receipt }) => receipt?.itemId === itemId)
      .reduce((sum, { trimmedGrams }) => sum + femtograms(trimmedGrams), 0n);
  return { shown, trimmedOf };
}
