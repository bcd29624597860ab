import type { InputOf, recordItem, ReplyOf } from '@larderbook/contracts';
import { receivedChilled } from '@larderbook/haccp';
import { v7 } from 'uuid';
import type { Device } from '../support/device';
import { done } from './a-shop';

export type Item = ReplyOf<typeof recordItem>;
type Fields = Partial<InputOf<typeof recordItem>>;

/** Pork shoulder, received chilled. */
export const itemFields = (fields: Fields = {}) => ({
  name: 'Pork shoulder',
  kind: 'meat' as const,
  species: 'pork' as const,
  allergens: [],
  receivingLimit: receivedChilled,
  ...fields,
});

/** An item that the shop buys. */
export const anItem = (by: Device, fields: Fields = {}): Promise<Item> => done(by.put(`/items/${v7()}`, itemFields(fields)));

/** An ingredient: no meat, no temperature at receipt. */
export const anIngredient = (by: Device, fields: Fields = {}): Promise<Item> =>
  anItem(by, { name: 'Salt', kind: 'ingredient', species: undefined, receivingLimit: undefined, ...fields });

export const curingSalt = (by: Device, fields: Fields = {}): Promise<Item> =>
  anIngredient(by, { name: 'Curing salt 6.25 %', substance: 'sodium nitrite', fractionPercent: 6.25, ...fields });
