import * as contract from '@larderbook/contracts';
import type { InputOf } from '@larderbook/contracts';
import { receivedChilled } from '@larderbook/haccp';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { aLoadingDock, g, kg, type LoadingDock } from '../builders/a-loading-dock';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { act, close, decide, showDeviation } from '../builders/a-settlement';
import { aShop, done, type Shop } from '../builders/a-shop';
import { strike } from '../builders/correcting';
import { ask, code } from '../support/ask';
import { startApp, type TestApp } from '../support/start-app';

let larder: TestApp;
let shop: Shop;
let kitchen: SausageKitchen;
let standing: LoadingDock['standing'];
let made: LoadingDock['made'];

beforeAll(async () => {
  larder = await startApp();
  shop = await aShop(larder);
  kitchen = await aSausageKitchen(shop, larder);
  ({ standing, made } = await aLoadingDock(kitchen, shop));
});
afterAll(() => larder.close());

test('a deviation of a delivery that is voided still names it, has nothing to decide, and is closed by people', async () => {
  const itemId = v7();
  const pork = { itemId, name: 'Pork shank', kind: 'meat', species: 'pork', receivingLimit: receivedChilled } as const;
  await done(ask(shop.owner, contract.recordItem, { ...pork, allergens: [] }));
  const receiptId = await kitchen.receive('pork', { itemId, temperature: { value: 47, unit: '°F' }, reason: 'Short of meat.' });
  const { deviationId = '' } = await done<contract.Receipt>(ask(shop.owner, contract.showReceipt, { receiptId }));
  await done(strike(kitchen.operator, 'receipt', receiptId));
  expect(await showDeviation(kitchen.operator, deviationId)).toMatchObject({
    open: true,
    receipt: { receiptId, itemName: 'Pork shank' },
    atStake: { grams: 0 },
    products: [{ receiptId, what: 'Pork shank' }],
  });
  expect(code(await close(kitchen.reviewer, deviationId))).toEqual([409, 'actions-missing']);
  await act(kitchen.reviewer, deviationId, kitchen.now());
  await done(close(kitchen.reviewer, deviationId));
});

describe('a delivery that is held, of which meat is in three lots', () => {
  test('holds each until its own is decided, however little it is of the delivery', async () => {
    const itemId = v7();
    const pork = { itemId, name: 'Pork cheek', kind: 'meat', species: 'pork', receivingLimit: receivedChilled } as const;
    await done(ask(shop.owner, contract.recordItem, { ...pork, allergens: [] }));
    const warm = { itemId, weight: kg(40), temperature: { value: 47, unit: '°F' as const }, reason: 'Short of meat.' };
    const receiptId = await kitchen.receive('pork', warm);
    const { deviationId = '' } = await done<contract.Receipt>(ask(shop.owner, contract.showReceipt, { receiptId }));
    const lots: string[] = [];
    for (const weight of [20, 19.8, 0.2]) {
      const { lotId } = await kitchen.startLot();
      await kitchen.putIn(lotId, { receiptId, weight: kg(weight) });
      lots.push(lotId);
    }
    const [first = '', second = '', little = ''] = lots;
    await act(kitchen.reviewer, deviationId, kitchen.now());
    await made(deviationId, { decision: 'condemn', lotId: first, weight: kg(20) });
    await made(deviationId, { lotId: second, weight: kg(19.8), basis: 'test result' });
    expect(code(await close(kitchen.reviewer, deviationId))).toEqual([409, 'product-undecided']);
    expect(await standing(little)).toBe('on-hold');
    expect(code(await decide(kitchen.reviewer, deviationId, { receiptId, decision: 'condemn', weight: g(200) }))).toEqual([
      422,
      'more-than-there-is',
    ]);
    await made(deviationId, { lotId: little, decision: 'condemn', weight: g(200) });
    await done(close(kitchen.reviewer, deviationId));
    expect(await Promise.all(lots.map(standing))).toEqual(['condemned', 'in-work', 'condemned']);
    expect(code(await strike(kitchen.operator, 'receipt', receiptId))).toEqual([409, 'still-in-use']);
  });
});

describe('a hold that came with a delivery', () => {
  const held = async () => {
    const itemId = v7();
    const pork = { itemId, name: 'Pork belly', kind: 'meat', species: 'pork', receivingLimit: receivedChilled } as const;
    await done(ask(shop.owner, contract.recordItem, { ...pork, allergens: [] }));
    const warm = { itemId, temperature: { value: 47, unit: '°F' as const }, reason: 'Short of meat.' };
    const receiptId = await kitchen.receive('pork', warm);
    const { deviationId = '' } = await done<contract.Receipt>(ask(shop.owner, contract.showReceipt, { receiptId }));
    const [{ lotId }, inputId] = [await kitchen.startLot(), v7()];
    await kitchen.putIn(lotId, { inputId, receiptId, weight: kg(10) });
    return { receiptId, deviationId, lotId, inputId };
  };
  const correct = (lotId: string, amends: string, fields: Partial<InputOf<typeof contract.putIn>>) =>
    ask(kitchen.operator, contract.putIn, {
      ...{ inputId: v7(), lotId, weight: kg(10), takenAt: kitchen.now(), amends, reason: 'Another delivery.', ...fields },
    });

  test('does not end by saying that it was another delivery, nor by voiding that it went in', async () => {
    const { receiptId, deviationId, lotId, inputId } = await held();
    const clean = await kitchen.receive('pork');
    const after = await kitchen.startLot();
    const taken = await kitchen.putIn(after.lotId, { sourceLotId: lotId, weight: kg(2) });
    expect(code(await correct(lotId, inputId, { receiptId: clean }))).toEqual([409, 'still-in-use']);
    expect(code(await correct(after.lotId, taken.inputId, { receiptId: clean, weight: kg(2) }))).toEqual([409, 'still-in-use']);
    expect(code(await strike(kitchen.operator, 'input', taken.inputId))).toEqual([409, 'still-in-use']);
    expect(await Promise.all([lotId, after.lotId].map(standing))).toEqual(['on-hold', 'on-hold']);
    const { status, body } = await strike(kitchen.operator, 'input', inputId);
    expect([status, body.code]).toEqual([409, 'still-in-use']);

    // Its weight may be corrected, and the delivery once people have decided.
    const less = await done<contract.ReplyOf<typeof contract.putIn>>(correct(lotId, inputId, { receiptId, weight: kg(9) }));
    expect(await standing(lotId)).toBe('on-hold');
    await act(kitchen.reviewer, deviationId, kitchen.now());
    await made(deviationId, { receiptId, decision: 'condemn', weight: kg(91) });
    await made(deviationId, { lotId, weight: kg(7), basis: 'test result' });
    await made(deviationId, { lotId: after.lotId, weight: kg(2), basis: 'test result' });
    await done(close(kitchen.reviewer, deviationId));
    expect(code(await correct(lotId, less.inputId, { receiptId: clean, weight: kg(9) }))).toEqual([200, undefined]);
  });

  test('nor by saying that the cure was weighed from another', async () => {
    const [{ lotId }, weighingId] = [await kitchen.startLot(), v7()];
    await kitchen.putIn(lotId);
    const itemId = v7();
    const cure = { itemId, name: 'Curing salt 6.25 %, chilled', kind: 'ingredient', receivingLimit: receivedChilled } as const;
    await done(ask(shop.owner, contract.recordItem, { ...cure, substance: 'sodium nitrite', fractionPercent: 6.25, allergens: [] }));
    const from = (fahrenheit: number, reason: string) =>
      kitchen.receive('cure', { itemId, weight: kg(5), temperature: { value: fahrenheit, unit: '°F' }, reason });
    const [warm, cold] = [await from(47, 'Short of it.'), await from(36, '')];
    await kitchen.weighCure(lotId, { weighingId, itemId, receiptId: warm });
    expect(await standing(lotId)).toBe('on-hold');
    const again = { weighingId: v7(), lotId, itemId, receiptId: cold, weight: g(25), takenAt: kitchen.now() };
    const corrected = ask(kitchen.operator, contract.weighIn, { ...again, amends: weighingId, reason: 'The other bag.' });
    expect(code(await corrected)).toEqual([409, 'still-in-use']);
    expect(code(await strike(kitchen.operator, 'weighing', weighingId))).toEqual([409, 'still-in-use']);
  });
});
