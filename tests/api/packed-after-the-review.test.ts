import { Readable } from 'node:stream';
import * as contract from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { readBack } from '../../packages/documents/src/read-back.test-data';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aSausageLot, ship } from '../builders/a-sausage-lot';
import { aShop, done, type Shop } from '../builders/a-shop';
import { packingsOf, strike } from '../builders/correcting';
import { ask, code } from '../support/ask';
import { startApp, type TestApp } from '../support/start-app';

let larder: TestApp;
let shop: Shop;
let kitchen: SausageKitchen;
beforeAll(async () => {
  larder = await startApp();
  shop = await aShop(larder);
  kitchen = await aSausageKitchen(shop, larder);
});
afterAll(() => larder.close());

const minute = 60_000;
const packages = (count: number) => ({ count, net: { value: 100, unit: 'g' as const } });
const pack = async (lotId: string, fields: object = packages(2)) => {
  const packingId = v7();
  await done(ask(kitchen.operator, contract.packLot, { packingId, lotId, ...packages(2), takenAt: kitchen.now(), ...fields }));
  return packingId;
};
const sign = (lotId: string) => done(ask(kitchen.reviewer, contract.signReview, { reviewId: v7(), lotId, statement: 'Complete and met.' }));
const load = async (lines: { packingId: string; count: number }[], takenAt = kitchen.now()) => {
  const customerId = v7();
  await done(ask(kitchen.operator, contract.recordCustomer, { customerId, name: 'Fenwick Deli', address: '', contact: '' }));
  return ask(kitchen.operator, contract.recordShipment, { shipmentId: v7(), customerId, document: '', lines, takenAt });
};
const inStock = async (packingId: string) => (await packingsOf(kitchen.operator)).find((one) => one.packingId === packingId);

/** A reviewed lot of ten packages, of which two more were packed a minute later. */
async function twoMore() {
  const lot = await aSausageLot(kitchen, larder, 'reviewed');
  const later = await pack(lot.lotId);
  larder.clock.moveOn(minute);
  return { ...lot, later };
}

/** The review covers the records of the product it saw (9 CFR 417.5(c)). */
describe('packages that were packed after the review was signed', () => {
  test('are not covered: they may not ship, and the lot waits for a review of them', async () => {
    const { lotId, code: lotCode, later } = await twoMore();
    const because = [{ code: 'packed-since', figures: { count: 2 } }, { code: 'next-review-again' }];
    expect(await kitchen.showLot(lotId)).toMatchObject({
      standing: 'to-review',
      because: [{ code: 'packed-and-settled' }, ...because],
      review: { counts: true, packedSince: 2 },
    });
    expect(await inStock(later)).toMatchObject({ mayShip: false, because });
    const reply = await load([{ packingId: later, count: 1 }]);
    expect([...code(reply), reply.body.details]).toEqual([
      409,
      'not-cleared',
      [{ code: 'lot-may-not-ship', figures: { code: lotCode, because } }],
    ]);
    expect(reply.body.errors).toMatchObject([{ pointer: '#/lines/0' }]);
    const { toReview } = await done<contract.ReplyOf<typeof contract.showToday>>(ask(kitchen.operator, contract.showToday, {}));
    expect(toReview.map((one) => one.lotId)).toContain(lotId);
  });

  test('break nothing for those packed before, which ship as they did', async () => {
    const { lotId, packingId, later } = await twoMore();
    expect(await inStock(packingId)).toMatchObject({ mayShip: true });
    expect((await load([{ packingId, count: 4 }])).status).toBe(200);
    const mixed = await load([
      { packingId, count: 1 },
      { packingId: later, count: 1 },
    ]);
    expect(code(mixed)).toEqual([409, 'not-cleared']);
    expect(mixed.body.errors).toMatchObject([{ pointer: '#/lines/1' }]);
    expect(await kitchen.showLot(lotId)).toMatchObject({ packagesLeft: 8 });
  });

  test('ship once the review is signed for them', async () => {
    const { lotId, later } = await twoMore();
    await sign(lotId);
    expect(await kitchen.showLot(lotId)).toMatchObject({ standing: 'cleared', review: { counts: true, packedSince: 0 } });
    await ship(kitchen, later, 2);
  });

  test('that were shipped out to the last one are called back into review by those packed since', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'shipped');
    expect((await kitchen.showLot(lotId)).standing).toBe('shipped');
    await pack(lotId);
    expect((await kitchen.showLot(lotId)).standing).toBe('to-review');
  });

  test('count by the ledger: packed late, dated before the review, they were not seen by it', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'reviewed');
    larder.clock.moveOn(30 * minute);
    const later = await pack(lotId, { takenAt: new Date(larder.clock.now().getTime() - 40 * minute).toISOString() });
    expect(await inStock(later)).toMatchObject({ mayShip: false });
  });

  test('may be corrected and voided without taking the review back from those it covers', async () => {
    const { lotId, packingId, later } = await twoMore();
    await pack(lotId, { ...packages(3), amends: later, reason: 'Counted again.' });
    expect((await kitchen.showLot(lotId)).review).toMatchObject({ counts: true, packedSince: 3 });
    const { rowId = '' } = (await inStock(later)) ?? {};
    await done(strike(kitchen.operator, 'packing', rowId));
    expect(await kitchen.showLot(lotId)).toMatchObject({ standing: 'cleared', review: { counts: true, packedSince: 0 } });
    await ship(kitchen, packingId, 1);
  });

  test('a correction of those it covered takes it back from all', async () => {
    const { lotId, packingId, later } = await twoMore();
    await pack(lotId, { ...packages(9), amends: packingId, reason: 'Counted again.' });
    expect((await kitchen.showLot(lotId)).review).toMatchObject({ counts: false });
    for (const id of [packingId, later]) expect(await inStock(id)).toMatchObject({ mayShip: false });
  });

  test('a second review does not forbid what left under the first, entered late', async () => {
    const { lotId, packingId, later } = await twoMore();
    const leftAt = kitchen.now();
    larder.clock.moveOn(30 * minute);
    await sign(lotId);
    expect((await load([{ packingId, count: 2 }], leftAt)).status).toBe(200);
    expect(code(await load([{ packingId: later, count: 1 }], leftAt))).toEqual([409, 'not-cleared-then']);
  });

  test('nor after something was taken back in between', async () => {
    const { lotId, packingId } = await twoMore();
    const leftAt = kitchen.now();
    await pack(lotId, { ...packages(9), amends: packingId, reason: 'Counted again.' });
    larder.clock.moveOn(30 * minute);
    await sign(lotId);
    expect(code(await load([{ packingId, count: 2 }], leftAt))).toEqual([409, 'not-cleared-then']);
  });

  test('are named on the lot record', async () => {
    const { lotId } = await twoMore();
    const { body } = await shop.owner.get(`/lots/${lotId}/lot-record.pdf`);
    const { text } = await readBack(Readable.from([body as Buffer]));
    expect(text).toContain('2 packages were packed after the review was signed and may not ship.');
  });
});
