import type { Formula, InputOf, recordFormula } from '@larderbook/contracts';
import { v7 } from 'uuid';
import type { Device } from '../support/device';
import { done } from './a-shop';
import { anIngredient, anItem, curingSalt, type Item } from './an-item';

type Line = InputOf<typeof recordFormula>['lines'][number];

export const meat = (item: Item, percent: number): Line => ({ part: 'meat', itemId: item.itemId, percent });
export const ingredient = (item: Item, percent: number): Line => ({ part: 'ingredient', itemId: item.itemId, percent });

/** The next formula of a product; of pork, salt and curing salt unless lines are given. */
export async function aFormula(
  owner: Device,
  productId: string,
  fields: { lines?: Line[]; expectedYieldPercent?: number } = {},
): Promise<Formula> {
  const lines = fields.lines ?? [
    meat(await anItem(owner), 100),
    ingredient(await anIngredient(owner), 1.8),
    ingredient(await curingSalt(owner), 0.25),
  ];
  return done(owner.put(`/formulas/${v7()}`, { productId, expectedYieldPercent: 88, ...fields, lines }));
}
