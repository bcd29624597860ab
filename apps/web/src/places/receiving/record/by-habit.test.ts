import { expect, test } from 'vitest';
import { aReceipt, madeAt } from '../deliveries/a-receipt.test-data';
import type { Item, Supplier } from '../known';
import { itemsByHabit, suppliersByHabit } from './by-habit';

const item = (itemId: string, name: string): Item => ({ itemId, name, kind: 'meat', allergens: [] });
const supplier = (supplierId: string, name: string): Supplier => ({ supplierId, name, address: '', contact: '' });
const came = (itemId: string, supplierId: string, at: string) =>
  aReceipt({ item: { itemId, name: '', kind: 'meat' }, supplier: { supplierId, name: '' }, ...madeAt(at) });

const receipts = [
  came('belly', 'holt', '2026-05-10T08:00:00Z'),
  came('shoulder', 'fernside', '2026-05-09T08:00:00Z'),
  came('belly', 'fernside', '2026-05-02T08:00:00Z'),
];

test('what was delivered last stands first, and what never came stands last, by name', () => {
  const items = [item('salt', 'Salt'), item('shoulder', 'Pork shoulder'), item('belly', 'Pork belly'), item('chuck', 'Beef chuck')];
  expect(itemsByHabit(items, receipts).map(({ itemId }) => itemId)).toEqual(['belly', 'shoulder', 'chuck', 'salt']);
});

test('who brought this item last stands first; who brought something else counts no more than anybody', () => {
  const suppliers = [supplier('acorn', 'Acorn Farm'), supplier('fernside', 'Fernside'), supplier('holt', 'Hollow Holt')];
  const ordered = suppliersByHabit(suppliers, 'belly', receipts);
  expect(ordered.map((each) => each.supplier.supplierId)).toEqual(['holt', 'fernside', 'acorn']);
  expect(ordered[0]?.lastBrought?.made.at).toBe('2026-05-10T08:00:00Z');
  expect(ordered[2]?.lastBrought).toBeUndefined();
});
