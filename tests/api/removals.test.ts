import * as contract from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aShop, done, type Shop } from '../builders/a-shop';
import { ask, code } from '../support/ask';
import { startApp, type TestApp } from '../support/start-app';

let larder: TestApp;
let shop: Shop;
let kitchen: SausageKitchen;

beforeAll(async () => {
  larder = await startApp(); // 2 March 2026, 2 o'clock in the morning in the shop
  shop = await aShop(larder);
  kitchen = await aSausageKitchen(shop, larder);
});
afterAll(() => larder.close());

const kg = (value: number) => ({ value, unit: 'kg' as const });

describe('removing weight', () => {
  const remove = (fields: object) =>
    ask(kitchen.operator, contract.recordRemoval, {
      removalId: v7(),
      kind: 'waste',
      weight: kg(1),
      note: '',
      takenAt: kitchen.now(),
      ...fields,
    });

  test('from a lot or from a delivery, never more than is there', async () => {
    const { lotId } = await kitchen.startLot();
    const receiptId = await kitchen.receive('pork', { weight: kg(12) });
    await kitchen.putIn(lotId, { receiptId, weight: kg(10) });
    await done(remove({ lotId, weight: kg(4) }));
    expect(code(await remove({ lotId, weight: kg(6.001) }))).toEqual([422, 'more-than-there-is']);
    expect(code(await remove({ receiptId, weight: kg(2.001) }))).toEqual([422, 'more-than-there-is']);
    await done(remove({ receiptId, weight: kg(2) }));
    await done(remove({ lotId, weight: kg(6) }));
    expect(await kitchen.showLot(lotId)).toMatchObject({
      standing: 'ended',
      removals: [{ weight: { grams: 4000 } }, { weight: { grams: 6000 } }],
    });
  });

  test('names one of the two, and something that is there', async () => {
    expect(code(await remove({}))).toEqual([400, 'invalid-input']);
    expect(code(await remove({ lotId: v7() }))).toEqual([404, 'not-found']);
    expect(code(await remove({ receiptId: v7() }))).toEqual([404, 'not-found']);
  });
});
