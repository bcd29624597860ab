import { supplier } from '@larderbook/contracts';
import type { z } from 'zod';
import { rowsThatCount } from '../ledger/rows-that-count';
import type { Tx } from '../platform/database';

export type SupplierNow = z.output<typeof supplier>;

/** Suppliers as they are described now, by their lasting id. */
export async function suppliersNow(tx: Tx, supplierIds?: readonly string[]): Promise<Map<string, SupplierNow>> {
  const counting = await rowsThatCount(tx, 'supplier', supplierIds);
  const rows = await tx.supplier.findMany({ where: { id: { in: [...counting.values()] } } });
  const byRow = new Map(rows.map((row) => [row.id, row]));

  return new Map(
    [...counting].flatMap(([supplierId, rowId]) => {
      const row = byRow.get(rowId);
      if (!row) return [];
      const { name, address, contact } = row;
      return [
        [
          supplierId,
          { supplierId, name, address, contact, establishmentNumber: row.establishmentNumber ?? undefined },
        ] as const,
      ];
    }),
  );
}
