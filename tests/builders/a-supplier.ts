import type { InputOf, recordSupplier, ReplyOf } from '@larderbook/contracts';
import { v7 } from 'uuid';
import type { Device } from '../support/device';
import { done } from './a-shop';

export type Supplier = ReplyOf<typeof recordSupplier>;

export const supplierFields = (fields: Partial<InputOf<typeof recordSupplier>> = {}) => ({
  name: 'Hollow Holt Meats',
  establishmentNumber: 'Est. 00981-X',
  address: '18 Drover Road, Hollow Holt',
  contact: 'orders desk, extension 4',
  ...fields,
});

/** A supplier that the shop knows. */
export const aSupplier = (by: Device, fields: Partial<InputOf<typeof recordSupplier>> = {}): Promise<Supplier> =>
  done(by.put(`/suppliers/${v7()}`, supplierFields(fields)));
