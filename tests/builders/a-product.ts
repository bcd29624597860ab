import type { InputOf, recordProduct, ReplyOf } from '@larderbook/contracts';
import { v7 } from 'uuid';
import type { Device } from '../support/device';
import { done } from './a-shop';

export type ProductHead = ReplyOf<typeof recordProduct>;
type Fields = Partial<InputOf<typeof recordProduct>>;

export const productFields = (fields: Fields = {}) => ({
  name: 'Quarry smoked sausage',
  code: 'QSS',
  process: 'cured smoked cooked' as const,
  species: 'pork' as const,
  productClass: 'cooked sausage' as const,
  storage: 'Keep refrigerated at or below 40 °F',
  useByDays: 28,
  ...fields,
});

/** A product without formula or plan. */
export const aProduct = (owner: Device, fields: Fields = {}): Promise<ProductHead> =>
  done(owner.put(`/products/${v7()}`, productFields(fields)));
