import * as contract from '@larderbook/contracts';
import type { ReplyOf } from '@larderbook/contracts';
import { v7 } from 'uuid';
import { describe, expect, test } from 'vitest';
import {
  aCustomer,
  aPackingRoom,
  code,
  customer,
  g,
  inspector,
  inStock,
  kg,
  kitchen,
  larder,
  pack,
  packed,
  said,
  shop,
  stock,
  stranger,
} from '../builders/a-packing-room';
import { aSausageLot } from '../builders/a-sausage-lot';
import { done } from '../builders/a-shop';
import { ask } from '../support/ask';

aPackingRoom();

describe('customers', () => {
  test('are listed by name, corrected ones as they are now and under the id they began with', async () => {
    const customerId = await aCustomer('Zeller Market');
    await aCustomer('Arbor Inn');
    expect((await customer({ name: 'Zeller & Daughter', contact: '555 0199', amends: customerId })).body).toMatchObject({
      customerId,
      contact: '555 0199',
    });
    const { customers } = await done<ReplyOf<typeof contract.listCustomers>>(ask(inspector, contract.listCustomers, {}));
    expect(customers.map(({ name }) => name)).toEqual(['Arbor Inn', 'Zeller & Daughter']);
  });

  test('are not added by the inspector, nor corrected by another shop', async () => {
    expect(code(await customer({}, inspector))).toEqual([403, 'not-allowed']);
    expect(code(await customer({ amends: await aCustomer() }, stranger))).toEqual([404, 'not-found']);
    expect((await done<ReplyOf<typeof contract.listCustomers>>(ask(stranger, contract.listCustomers, {}))).customers).toEqual([]);
  });
});

describe('packing', () => {
  test('numbers the runs of a lot and prints a use-by counted from the day in the shop', async () => {
    const { lotId, code: lotCode } = await aSausageLot(kitchen, larder, 'cured');
    expect(await packed(lotId, { takenAt: '2026-03-02T05:30:00Z' })).toMatchObject({
      code: `${lotCode}-P1`,
      useBy: '2026-03-22',
    }); // 23:30 on the 1st
    expect(await packed(lotId, { takenAt: '2026-03-02T06:00:00Z', count: 1 })).toMatchObject({
      code: `${lotCode}-P2`,
      useBy: '2026-03-23',
    });
    expect(await packed(lotId, { useBy: '2026-05-01', count: 1 })).toMatchObject({
      code: `${lotCode}-P3`,
      useBy: '2026-05-01',
    });
  });

  test('counts the use-by with the days the product has now', async () => {
    const products = await done<ReplyOf<typeof contract.listProducts>>(ask(shop.owner, contract.listProducts, {}));
    const product = products.products.find(({ productId }) => productId === kitchen.productId);
    if (!product) throw new Error('The kitchen makes one product');
    const { formulaVersion: _, planInForce: __, productId, ...fields } = product;
    const change = (useByDays: number) =>
      done(ask(shop.owner, contract.recordProduct, { ...fields, productId: v7(), useByDays, amends: productId }));
    await change(5);
    const { lotId } = await aSausageLot(kitchen, larder, 'cured');
    expect((await packed(lotId)).useBy).toBe('2026-03-07');
    await change(21);
  });

  test('no more than went in: 10 kg of meat and 25 g of cure make 20 packages of 500 g, not 21', async () => {
    const { lotId, code: lotCode } = await aSausageLot(kitchen, larder, 'cured');
    await packed(lotId, { count: 15 });
    expect(said(await pack(lotId, { count: 6 }))).toEqual([
      422,
      'more-than-there-is',
      `6 × 500 g are 3 kg; of lot ${lotCode} 2.525 kg can still be packed ` + '(10.025 kg went in, 0 kg left it, 7.5 kg are packed).',
    ]);
    await packed(lotId, { count: 5 });
    expect(code(await pack(lotId, { count: 1, net: g(25.001) }))).toEqual([422, 'more-than-there-is']);
    await packed(lotId, { count: 1, net: g(25) });
  });

  test('less what was lost, and nothing of a lot into which nothing went', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'cured');
    const loss = {
      removalId: v7(),
      lotId,
      kind: 'loss in cooking' as const,
      weight: kg(1),
      note: '',
      takenAt: kitchen.now(),
    };
    await done(ask(kitchen.operator, contract.recordRemoval, loss));
    expect(code(await pack(lotId, { count: 1, net: kg(9.026) }))).toEqual([422, 'more-than-there-is']);
    await packed(lotId, { count: 1, net: kg(9.025) });
    const empty = await kitchen.startLot();
    expect(code(await pack(empty.lotId, { count: 1 }))).toEqual([422, 'more-than-there-is']);
  });

  test('of two that would pack the rest at the same moment, one does', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'cured');
    const replies = await Promise.all([pack(lotId, { count: 12 }), pack(lotId, { count: 12 })]);
    expect(replies.map(({ status }) => status).sort()).toEqual([200, 422]);
  });

  test('sent twice lands once; with another count it is refused', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'cured');
    const run = { packingId: v7(), takenAt: kitchen.now() };
    const first = await packed(lotId, run);
    larder.clock.moveOn(60_000);
    expect(await packed(lotId, run)).toEqual(first);
    expect(code(await pack(lotId, { ...run, count: 9 }))).toEqual([409, 'sent-differently']);
    expect((await kitchen.showLot(lotId)).packings).toHaveLength(1);
  });

  test('keeps and flags what is odd about its time', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'cured');
    expect((await packed(lotId, { takenAt: '2026-02-01T08:00:00Z', count: 1 })).flags).toEqual(['before-the-lot', 'recorded-late']);
    expect(code(await pack(lotId, { takenAt: '2026-12-01T08:00:00Z', count: 1 }))).toEqual([422, 'in-the-future']);
  });

  test.each([
    ['none', { count: 0 }],
    ['half a package', { count: 1.5 }],
    ['no weight', { net: g(0) }],
    ['less than nothing', { net: g(-5) }],
    ['a day that is none', { useBy: '2026-02-30' }],
  ])('refuses %s beside its field', async (_case, fields) => {
    const { lotId } = await kitchen.startLot();
    expect(code(await pack(lotId, fields))).toEqual([400, 'invalid-input']);
  });

  test('refuses a use-by before the day of packing, and takes that day itself', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'cured');
    const on = (useBy: string) => pack(lotId, { count: 1, useBy, takenAt: '2026-03-02T05:30:00Z' }); // 23:30 on the 1st
    expect(said(await on('2026-02-28'))).toEqual([
      400,
      'invalid-input',
      'The use-by Feb 28, 2026 comes before the day of packing, Mar 1, 2026.',
    ]);
    expect((await on('2026-03-01')).body).toMatchObject({ useBy: '2026-03-01' });
  });

  test('is not for the inspector, nor of another shop’s lot', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'cured');
    expect(code(await pack(lotId, {}, inspector))).toEqual([403, 'not-allowed']);
    expect(code(await pack(lotId, {}, stranger))).toEqual([404, 'not-found']);
  });
});

describe('the stock', () => {
  test('says of each run whether it may ship, and why not', async () => {
    const { packingId } = await aSausageLot(kitchen, larder, 'packed');
    expect(await inStock(packingId)).toMatchObject({
      left: 10,
      standing: 'to-review',
      mayShip: false,
      because: [{ code: 'packed-and-settled' }, { code: 'next-review' }],
    });
    const cleared = await aSausageLot(kitchen, larder, 'reviewed');
    expect(await inStock(cleared.packingId)).toMatchObject({ left: 10, standing: 'cleared', mayShip: true });
  });

  test('leaves out what has gone, unless all are asked for; the oldest use-by comes first', async () => {
    const { packingId } = await aSausageLot(kitchen, larder, 'shipped');
    expect(await inStock(packingId)).toBeUndefined();
    const all = await stock('any', inspector);
    expect(all.find((one) => one.packingId === packingId)).toMatchObject({ left: 0, count: 10 });
    expect(all.map(({ useBy }) => useBy)).toEqual(all.map(({ useBy }) => useBy).sort());
    expect(await stock('any', stranger)).toEqual([]);
  });
});
