import type { supplier } from '@larderbook/contracts';
import type { z } from 'zod';
import { Prisma } from '../generated/prisma/client';
import { rowsNow } from '../ledger/rows-that-count';
import type { Tx } from '../platform/database';

export type SupplierNow = z.output<typeof supplier>;

type Row = Omit<SupplierNow, 'supplierId' | 'establishmentNumber'> & { establishmentNumber: string | null };
const columns = Prisma.sql`now.name, now.address, now.contact, now.establishment_number AS "establishmentNumber"`;

/** Keyed by lasting id. */
export async function suppliersNow(tx: Tx, supplierIds?: readonly string[]): Promise<Map<string, SupplierNow>> {
  const rows = await rowsNow<Row>(tx, 'supplier', columns, supplierIds);
  return new Map(
    rows.map(({ first: supplierId, establishmentNumber, ...row }) => [
      supplierId,
      { supplierId, ...row, establishmentNumber: establishmentNumber ?? undefined },
    ]),
  );
}
