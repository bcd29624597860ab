import type { Receipt } from '@larderbook/contracts';
import type { Item, Supplier } from '../known';

export function itemsByHabit(items: Item[], receipts: Receipt[]): Item[] {
  const last = newest(receipts, ({ item }) => item.itemId);
  return [...items].sort((a, b) => latest(last, b.itemId) - latest(last, a.itemId) || a.name.localeCompare(b.name));
}

/** Who brought this item last comes first. */
export function suppliersByHabit(
  suppliers: Supplier[],
  itemId: string,
  receipts: Receipt[],
): { supplier: Supplier; lastBrought?: Receipt }[] {
  const last = newest(
    receipts.filter(({ item }) => item.itemId === itemId),
    ({ supplier }) => supplier.supplierId,
  );
  return [...suppliers]
    .sort((a, b) => latest(last, b.supplierId) - latest(last, a.supplierId) || a.name.localeCompare(b.name))
    .map((supplier) => ({ supplier, lastBrought: last.get(supplier.supplierId) }));
}

const momentOf = ({ made }: Receipt): number => Date.parse(made.at);
const latest = (last: Map<string, Receipt>, id: string): number => {
  const receipt = last.get(id);
  return receipt ? momentOf(receipt) : 0;
};

function newest(receipts: Receipt[], key: (receipt: Receipt) => string): Map<string, Receipt> {
  const last = new Map<string, Receipt>();
  for (const receipt of receipts) {
    const known = last.get(key(receipt));
    if (!known || momentOf(receipt) > momentOf(known)) last.set(key(receipt), receipt);
  }
  return last;
}
