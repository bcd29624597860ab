import type { z } from 'zod';
import type { customer } from '@larderbook/contracts';
import { rowsThatCount } from '../ledger/rows-that-count';
import type { Tx } from '../platform/database';

export type Customer = z.output<typeof customer>;

/** Customers as they are described now, by their lasting id. */
export async function customersNow(tx: Tx, customerIds?: readonly string[]): Promise<Map<string, Customer>> {
  const counting = await rowsThatCount(tx, 'customer', customerIds);
  const rows = await tx.customer.findMany({ where: { id: { in: [...counting.values()] } } });
  const byRow = new Map(rows.map((row) => [row.id, row]));
  return new Map(
    [...counting].flatMap(([customerId, rowId]) => {
      const row = byRow.get(rowId);
      return row
        ? [[customerId, { customerId, name: row.name, address: row.address, contact: row.contact }] as const]
        : [];
    }),
  );
}

export async function listCustomers(tx: Tx): Promise<Customer[]> {
  const customers = await customersNow(tx);
  return [...customers.values()].sort((a, b) => a.name.localeCompare(b.name, 'en'));
}
