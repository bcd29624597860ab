import type { Product } from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { aFormula, meat } from '../builders/a-formula';
import { anAdoptedPlan, aPlan, planContent } from '../builders/a-plan';
import { aProduct, productFields } from '../builders/a-product';
import { anotherShop, aShop, type Shop, type Worker } from '../builders/a-shop';
import { anItem, type Item } from '../builders/an-item';
import { code } from '../support/ask';
import { startApp, type TestApp } from '../support/start-app';

let larder: TestApp;
let shop: Shop;
let owner: Worker;
let stranger: Worker;
let pork: Item;

beforeAll(async () => {
  larder = await startApp();
  shop = await aShop(larder);
  owner = shop.owner;
  stranger = (await anotherShop(larder)).owner;
  pork = await anItem(owner);
});
afterAll(() => larder.close());

const shown = async (productId: string) => (await owner.get(`/products/${productId}`)).body as Product;

describe('a product', () => {
  test('is made by the owner and seen by everyone', async () => {
    const productId = v7();
    const reply = await owner.put(`/products/${productId}`, productFields({ name: 'Quarry links', code: 'qln' }));
    expect(reply.body).toEqual({ productId, ...productFields({ name: 'Quarry links', code: 'QLN' }) });
    const inspector = await shop.hire('inspector');
    expect((await inspector.get('/products')).body.products).toContainEqual(reply.body);
    expect((await inspector.get(`/products/${productId}`)).body).toEqual({ ...reply.body, formulas: [], plans: [] });
  });

  test.each(['operator', 'reviewer', 'inspector'] as const)('is not made, nor its formula or plan, by the %s', async (role) => {
    const worker = await shop.hire(role);
    const { productId } = await aProduct(owner);
    const { planId } = await aPlan(owner, productId);
    const replies = await Promise.all([
      worker.put(`/products/${v7()}`, productFields()),
      worker.put(`/formulas/${v7()}`, { productId, expectedYieldPercent: 88, lines: [meat(pork, 100)] }),
      worker.put(`/plans/${v7()}`, { productId, content: planContent() }),
      worker.put(`/plan-adoptions/${v7()}`, { planId, statement: 'I accept it.' }),
    ]);
    expect(replies.map(code)).toEqual(Array(4).fill([403, 'not-allowed']));
  });

  test('of another shop is neither seen, nor corrected, nor given a formula or a plan', async () => {
    const { productId } = await aProduct(owner);
    const { formulaId } = await aFormula(owner, productId);
    const { planId } = await aPlan(owner, productId);
    const foreign = await anItem(stranger);
    const replies = await Promise.all([
      stranger.get(`/products/${productId}`),
      stranger.get(`/plans/${planId}`),
      stranger.put(`/products/${v7()}`, { ...productFields(), amends: productId }),
      stranger.put(`/formulas/${v7()}`, { productId, expectedYieldPercent: 88, lines: [meat(foreign, 100)] }),
      stranger.put(`/plans/${v7()}`, { productId, content: planContent() }),
      stranger.put(`/plan-adoptions/${v7()}`, { planId, statement: 'I accept it.' }),
      stranger.post(`/formulas/${formulaId}/scaled`, { trimmedMeat: { value: 10, unit: 'kg' } }),
    ]);
    expect(replies.map(code)).toEqual(Array(7).fill([404, 'not-found']));
    expect((await stranger.get('/products')).body.products).toEqual([]);
  });

  test('keeps its id, its formula and its plan when it is corrected', async () => {
    const { productId } = await aProduct(owner, { name: 'Quary sausage' });
    await aFormula(owner, productId);
    await anAdoptedPlan(owner, productId);
    const corrected = await owner.put(`/products/${v7()}`, {
      ...productFields({ name: 'Quarry sausage', useByDays: 21 }),
      amends: productId,
    });
    expect(corrected.body).toMatchObject({ productId, name: 'Quarry sausage', useByDays: 21, formulaVersion: 1, planInForce: 1 });
    expect((await shown(productId)).plans).toHaveLength(1);
  });

  test('sent twice lands once, sent with other content is refused', async () => {
    const productId = v7();
    const replies = await Promise.all([0, 1].map(() => owner.put(`/products/${productId}`, productFields())));
    expect(replies[0]?.body).toEqual(replies[1]?.body);
    expect(code(await owner.put(`/products/${productId}`, productFields({ useByDays: 7 })))).toEqual([409, 'sent-differently']);
  });
});
