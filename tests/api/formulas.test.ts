import type { Product } from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { aFormula, ingredient, meat } from '../builders/a-formula';
import { aProduct } from '../builders/a-product';
import { anotherShop, aShop, done, type Shop, type Worker } from '../builders/a-shop';
import { anIngredient, anItem, curingSalt, type Item } from '../builders/an-item';
import { code } from '../support/ask';
import { startApp, type TestApp } from '../support/start-app';

let larder: TestApp;
let shop: Shop;
let owner: Worker;
let stranger: Worker;
let pork: Item;
let beef: Item;
let salt: Item;
let cure: Item;

beforeAll(async () => {
  larder = await startApp();
  shop = await aShop(larder);
  owner = shop.owner;
  stranger = (await anotherShop(larder)).owner;
  pork = await anItem(owner);
  beef = await anItem(owner, { name: 'Beef chuck', species: 'beef' });
  salt = await anIngredient(owner);
  cure = await curingSalt(owner);
});
afterAll(() => larder.close());

const shown = async (productId: string) => (await owner.get(`/products/${productId}`)).body as Product;

describe('a formula', () => {
  test('is numbered, and the latest counts; the earlier ones stay', async () => {
    const { productId } = await aProduct(owner);
    const first = await aFormula(owner, productId, { lines: [meat(pork, 100), ingredient(salt, 1.8)] });
    const second = await aFormula(owner, productId, {
      lines: [meat(pork, 70), meat(beef, 30), ingredient(salt, 1.6), ingredient(cure, 0.25)],
    });
    expect([first.version, second.version]).toEqual([1, 2]);
    expect(second.lines).toEqual([
      { part: 'meat', itemId: pork.itemId, percent: 70, itemName: 'Pork shoulder', itemKind: 'meat' },
      { part: 'meat', itemId: beef.itemId, percent: 30, itemName: 'Beef chuck', itemKind: 'meat' },
      { part: 'ingredient', itemId: salt.itemId, percent: 1.6, itemName: 'Salt', itemKind: 'ingredient' },
      {
        part: 'ingredient',
        itemId: cure.itemId,
        percent: 0.25,
        itemName: 'Curing salt 6.25 %',
        itemKind: 'ingredient',
        substance: 'sodium nitrite',
        fractionPercent: 6.25,
      },
    ]);
    expect(second).toMatchObject({ usedByLots: 0, recordedBy: 'Odile Farrow', recordedAt: '2026-03-02T08:00:00.000Z' });
    expect(await shown(productId)).toMatchObject({ formulaVersion: 2, formulas: [second, first] });
  });

  test('sent by two tablets at once makes two versions, never the same one twice', async () => {
    const { productId } = await aProduct(owner);
    const made = await Promise.all([0, 1, 2].map(() => aFormula(owner, productId, { lines: [meat(pork, 100)] })));
    expect(made.map(({ version }) => version).sort()).toEqual([1, 2, 3]);
  });

  test('adds up to exactly 100 % of meat, to the last decimal', async () => {
    const { productId } = await aProduct(owner);
    const thirds = [meat(pork, 33.3333), meat(beef, 66.6667)];
    expect((await aFormula(owner, productId, { lines: thirds })).version).toBe(1);
  });

  test.each<[string, () => Parameters<typeof aFormula>[2], string]>([
    [
      'whose meats fall short',
      () => ({ lines: [meat(pork, 70), meat(beef, 29.9999)] }),
      'The meats add up to 99.9999 %; together they make 100 %.',
    ],
    [
      'whose meats are too many',
      () => ({ lines: [meat(pork, 70), meat(beef, 40)] }),
      'The meats add up to 110 %; together they make 100 %.',
    ],
    [
      'without meat',
      () => ({ lines: [ingredient(salt, 2)] }),
      'A formula needs at least one meat: the meat block is what everything is a percentage of.',
    ],
    [
      'with salt among the meats',
      () => ({ lines: [meat(pork, 98), meat(salt, 2)] }),
      'Salt is an ingredient; it cannot stand among the meats.',
    ],
    [
      'with pork among the ingredients',
      () => ({ lines: [meat(beef, 100), ingredient(pork, 10)] }),
      'Pork shoulder is a meat item; it cannot stand among the ingredients.',
    ],
    [
      'with the same item twice',
      () => ({ lines: [meat(pork, 100), ingredient(cure, 0.2), ingredient(cure, 0.05)] }),
      'Curing salt 6.25 % is listed twice.',
    ],
  ])('%s is no formula, and the sentence says why', async (_case, fields, sentence) => {
    const { productId } = await aProduct(owner);
    const reply = await owner.put(`/formulas/${v7()}`, { productId, expectedYieldPercent: 88, ...fields() });
    expect(code(reply)).toEqual([422, 'formula-incomplete']);
    expect(reply.body.detail).toBe(sentence);
    expect(reply.body.errors).toMatchObject([{ pointer: expect.stringMatching(/^#\/lines/), detail: sentence }]);
    expect((await shown(productId)).formulas).toEqual([]);
  });

  test('names only items of the shop', async () => {
    const { productId } = await aProduct(owner);
    const foreign = await anItem(stranger);
    const reply = await owner.put(`/formulas/${v7()}`, {
      productId,
      expectedYieldPercent: 88,
      lines: [meat(pork, 60), meat(foreign, 40)],
    });
    expect([reply.status, reply.body.detail]).toEqual([404, 'Line 2 names an item that is not in this shop.']);
  });

  test('knows at once that its curing salt is weaker than was thought', async () => {
    const strong = await curingSalt(owner);
    const { productId } = await aProduct(owner);
    await aFormula(owner, productId, { lines: [meat(pork, 100), ingredient(strong, 0.25)] });
    await done(owner.put(`/items/${v7()}`, { ...strong, fractionPercent: 5.88, amends: strong.itemId }));
    expect((await shown(productId)).formulas[0]?.lines[1]).toMatchObject({ itemId: strong.itemId, fractionPercent: 5.88 });
  });
});
