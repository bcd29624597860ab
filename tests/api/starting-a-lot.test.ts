import * as contract from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { anotherShop, aShop, done, type Shop } from '../builders/a-shop';
import { ask, code, said } from '../support/ask';
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

describe('starting a lot', () => {
  const start = (fields: object = {}, by = kitchen.operator) =>
    ask(by, contract.startLot, {
      lotId: v7(),
      productId: kitchen.productId,
      note: '',
      takenAt: kitchen.now(),
      ...fields,
    });

  test('gives it the next code of the day by the pattern of the shop', async () => {
    const takenAt = '2026-02-10T15:00:00Z'; // the 41st day of the year
    expect((await done<{ code: string }>(start({ takenAt }))).code).toBe('26041-1');
    expect((await done<{ code: string }>(start({ takenAt }))).code).toBe('26041-2');
  });

  test('counts the day on the clock of the shop, not of Greenwich', async () => {
    const takenAt = '2026-02-12T05:59:00Z'; // one minute to midnight on the 11th in the shop
    expect((await done<{ code: string }>(start({ takenAt }))).code).toBe('26042-1');
  });

  test('goes past a code that was given by hand', async () => {
    const takenAt = '2026-02-14T15:00:00Z';
    await done(start({ takenAt, code: '26045-1' }));
    expect((await done<{ code: string }>(start({ takenAt, code: '26045-3' }))).code).toBe('26045-3');
    expect((await done<{ code: string }>(start({ takenAt }))).code).toBe('26045-4');
  });

  test('refuses a code that is taken', async () => {
    await done(start({ code: 'EASTER' }));
    expect(said(await start({ code: 'easter' }))).toEqual([409, 'lot-code-taken', 'There is a lot EASTER already.']);
  });

  test('two lots started at the same moment get two codes', async () => {
    const takenAt = '2026-02-16T15:00:00Z';
    const codes = await Promise.all([start({ takenAt }), start({ takenAt })].map((reply) => done<{ code: string }>(reply)));
    expect(codes.map((lot) => lot.code).sort()).toEqual(['26047-1', '26047-2']);
  });

  test('needs a formula and an adopted plan', async () => {
    const productId = v7();
    const product = {
      name: 'Brawn',
      code: 'BRW',
      process: 'other',
      species: 'pork',
      storage: '',
      useByDays: 5,
    } as const;
    await done(ask(shop.owner, contract.recordProduct, { productId, ...product }));
    expect(code(await start({ productId }))).toEqual([409, 'no-formula']);
    const lines = [{ part: 'meat' as const, itemId: kitchen.items.pork, percent: 100 }];
    await done(ask(shop.owner, contract.recordFormula, { formulaId: v7(), productId, expectedYieldPercent: 90, lines }));
    expect(code(await start({ productId }))).toEqual([409, 'no-plan-in-force']);
    expect(code(await start({ productId: v7() }))).toEqual([404, 'not-found']);
  });

  test('is not for the inspector, nor for another shop', async () => {
    expect(code(await start({}, await shop.hire('inspector')))).toEqual([403, 'not-allowed']);
    const other = await anotherShop(larder);
    expect(code(await start({}, other.owner))).toEqual([404, 'not-found']);
  });

  test('is not dated tomorrow', async () => {
    expect(code(await start({ takenAt: '2026-03-03T08:00:00Z' }))).toEqual([422, 'in-the-future']);
  });
});
