import type { InputOf, Receipt, recordReceipt } from '@larderbook/contracts';
import { v7 } from 'uuid';
import type { Device } from '../support/device';
import { done } from './a-shop';
import { aSupplier } from './a-supplier';
import { anItem } from './an-item';

type Fields = Partial<InputOf<typeof recordReceipt>>;

/** 100 lb that came cold on the morning of the tests’ clock. */
export const receiptFields = (of: { itemId: string; supplierId: string }, fields: Fields = {}) => ({
  ...of,
  supplierLot: 'HH-4471',
  weight: { value: 100, unit: 'lb' as const },
  temperature: { value: 36, unit: '°F' as const },
  decision: 'accepted' as const,
  reason: '',
  takenAt: '2026-03-02T07:55:00Z',
  ...fields,
});

/** A delivery in the walk-in, of an item and a supplier of its own unless they are given. */
export async function aReceipt(by: Device, fields: Fields = {}): Promise<Receipt> {
  const itemId = fields.itemId ?? (await anItem(by)).itemId;
  const supplierId = fields.supplierId ?? (await aSupplier(by)).supplierId;
  return done(by.put(`/receipts/${v7()}`, receiptFields({ itemId, supplierId }, fields)));
}
