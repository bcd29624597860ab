import type { z } from 'zod';
import type { customer } from '@larderbook/contracts';
import { Prisma } from '../generated/prisma/client';
import { rowsNow } from '../ledger/rows-that-count';
import type { Tx } from '../platform/database';

export type Customer = z.output<typeof customer>;

/** Keyed by lasting id. */
export async function customersNow(tx: Tx, customerIds?: readonly string[]): Promise<Map<string, Customer>> {
  const columns = Prisma.sql`now.name, now.address, now.contact`;
  const rows = await rowsNow<Omit<Customer, 'customerId'>>(tx, 'customer', columns, customerIds);
  return new Map(rows.map(({ first: customerId, ...row }) => [customerId, { customerId, ...row }]));
}

export async function listCustomers(tx: Tx): Promise<Customer[]> {
  const customers = await customersNow(tx);
  return [...customers.values()].sort((a, b) => a.name.localeCompare(b.name, 'en'));
}
