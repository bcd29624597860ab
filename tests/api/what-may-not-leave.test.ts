import * as contract from '@larderbook/contracts';
import type { InputOf } from '@larderbook/contracts';
import { receivedChilled } from '@larderbook/haccp';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aSausageLot } from '../builders/a-sausage-lot';
import { act, close, decide, settle, showDeviation, type Decided } from '../builders/a-settlement';
import { aShop, done, type Shop } from '../builders/a-shop';
import { packingsOf, strike } from '../builders/correcting';
import { ask, code } from '../support/ask';
import { startApp, type TestApp } from '../support/start-app';

let larder: TestApp;
let shop: Shop;
let kitchen: SausageKitchen;
let customerId: string;
beforeAll(async () => {
  larder = await startApp();
  shop = await aShop(larder);
  kitchen = await aSausageKitchen(shop, larder);
  customerId = v7();
  await done(ask(kitchen.operator, contract.recordCustomer, { customerId, name: 'Fenwick Deli', address: '', contact: '' }));
});
afterAll(() => larder.close());

type Shipment = contract.ReplyOf<typeof contract.recordShipment>;
const kg = (value: number) => ({ value, unit: 'kg' as const });
const g = (value: number) => ({ value, unit: 'g' as const });
const today = () => done<contract.ReplyOf<typeof contract.showToday>>(ask(kitchen.operator, contract.showToday, {}));
const standing = async (lotId: string) => (await kitchen.showLot(lotId)).standing;
const openOn = async (lotId: string) => {
  const seen = { deviationId: v7(), lotId, description: 'A glove tip is missing.', takenAt: kitchen.now() };
  return (await done<contract.Deviation>(ask(kitchen.operator, contract.openDeviation, seen))).deviationId;
};
const send = (packingId: string, count: number, fields: Partial<InputOf<typeof contract.recordShipment>> = {}) =>
  ask(kitchen.operator, contract.recordShipment, {
    ...{ shipmentId: v7(), customerId, document: '', lines: [{ packingId, count }], takenAt: kitchen.now(), ...fields },
  });
const pack = (lotId: string, count: number, net: InputOf<typeof contract.packLot>['net']) =>
  done<contract.ReplyOf<typeof contract.packLot>>(
    ask(kitchen.operator, contract.packLot, { packingId: v7(), lotId, count, net, takenAt: kitchen.now() }),
  );
const sign = (lotId: string, by = shop.owner) =>
  done(ask(by, contract.signReview, { reviewId: v7(), lotId, statement: 'Complete and met.' }));
const mayShip = async (packingId: string) => (await packingsOf(kitchen.operator)).find((one) => one.packingId === packingId)?.mayShip;
const made = async (deviationId: string, decided: Decided) =>
  (await done<contract.Deviation>(decide(kitchen.reviewer, deviationId, decided))).dispositions.at(-1)?.dispositionId ?? '';

describe('a hundredth that counts as nothing', () => {
  test('is never the whole of a small lot that some of it went into', async () => {
    const from = await kitchen.startLot();
    await kitchen.putIn(from.lotId, { weight: kg(100) });
    const deviationId = await openOn(from.lotId);
    const small = await kitchen.startLot();
    await kitchen.putIn(small.lotId, { sourceLotId: from.lotId, weight: kg(1) });
    await act(kitchen.reviewer, deviationId, kitchen.now());
    await done(decide(kitchen.reviewer, deviationId, { decision: 'condemn', weight: kg(99) }));
    expect(code(await close(kitchen.reviewer, deviationId))).toEqual([409, 'product-undecided']);
    expect(await standing(small.lotId)).toBe('on-hold');
    await done(decide(kitchen.reviewer, deviationId, { decision: 'condemn', lotId: small.lotId, weight: kg(1) }));
    await done(close(kitchen.reviewer, deviationId));
    expect(await standing(small.lotId)).toBe('condemned');
  });
});

describe('two holds on the same pounds', () => {
  test('what one condemns may be what the other released: as much is undecided', async () => {
    const { lotId } = await kitchen.startLot();
    await kitchen.putIn(lotId);
    const [first, second] = [await openOn(lotId), await openOn(lotId)];
    await act(kitchen.reviewer, first, kitchen.now());
    await done(decide(kitchen.reviewer, first, { weight: kg(5) }));
    await done(decide(kitchen.reviewer, second, { decision: 'condemn', weight: kg(5) }));
    expect(await showDeviation(kitchen.operator, first)).toMatchObject({ atStake: kg(5), undecided: kg(5) });
    expect(code(await close(kitchen.reviewer, first))).toEqual([409, 'product-undecided']);
    await done(decide(kitchen.reviewer, first, { weight: kg(5) }));
    await done(close(kitchen.reviewer, first));
    expect(await standing(lotId)).toBe('on-hold');
  });

  test('all that one released stays released when the other condemns some', async () => {
    const { lotId } = await kitchen.startLot();
    await kitchen.putIn(lotId);
    const [first, second] = [await openOn(lotId), await openOn(lotId)];
    await done(decide(kitchen.reviewer, first));
    await done(decide(kitchen.reviewer, second, { decision: 'condemn', weight: kg(5) }));
    expect(await showDeviation(kitchen.operator, first)).toMatchObject({ atStake: kg(5), undecided: { grams: 0 } });
  });
});

describe('a closed hold that a correction opens again', () => {
  test('is among the open ones of today, though the correction was in a lot two steps away', async () => {
    const first = await kitchen.startLot();
    await kitchen.putIn(first.lotId, { weight: kg(10) });
    const deviationId = await openOn(first.lotId);
    const second = await kitchen.startLot();
    await kitchen.putIn(second.lotId, { sourceLotId: first.lotId, weight: kg(10) });
    const third = await kitchen.startLot();
    await kitchen.putIn(third.lotId, { sourceLotId: second.lotId, weight: kg(10) });
    const { inputId } = await kitchen.putIn(third.lotId, { weight: kg(10) });
    await act(kitchen.reviewer, deviationId, kitchen.now());
    await done(decide(kitchen.reviewer, deviationId, { lotId: third.lotId, weight: kg(20) }));
    await done(close(kitchen.reviewer, deviationId));
    expect(await standing(third.lotId)).toBe('in-work');

    const [, pork] = (await kitchen.showLot(third.lotId)).inputs;
    await kitchen.putIn(third.lotId, {
      ...{ receiptId: pork?.from.receiptId, weight: kg(30), amends: inputId, reason: 'Read 10 for 30.' },
    });
    for (const { lotId } of [first, second, third]) expect(await standing(lotId)).toBe('on-hold');
    expect((await today()).openDeviations.map((one) => one.deviationId)).toContain(deviationId);
    await done(decide(kitchen.reviewer, deviationId, { lotId: third.lotId, weight: kg(20) }));
    expect((await today()).openDeviations.map((one) => one.deviationId)).not.toContain(deviationId);
    expect(await standing(third.lotId)).toBe('in-work');
  });

  test('takes the clearance of a lot back that was reviewed with the earlier decision', async () => {
    const from = await kitchen.startLot();
    await kitchen.putIn(from.lotId, { weight: kg(10) });
    const deviationId = await openOn(from.lotId);
    const early = kitchen.now();
    const lot = await aSausageLot(kitchen, larder, 'packed');
    await kitchen.putIn(lot.lotId, { sourceLotId: from.lotId, weight: kg(1), takenAt: early });
    await kitchen.weighCure(lot.lotId, { weight: g(2.5) });
    await settle(kitchen.reviewer, deviationId, kitchen.now());
    await sign(lot.lotId);
    expect(await mayShip(lot.packingId)).toBe(true);

    const [input] = (await kitchen.showLot(from.lotId)).inputs;
    await kitchen.putIn(from.lotId, {
      ...{ receiptId: input?.from.receiptId, weight: kg(15), amends: input?.inputId, reason: 'Read 10 for 15.' },
    });
    expect(await standing(lot.lotId)).toBe('on-hold');
    await done(decide(kitchen.reviewer, deviationId, { decision: 'condemn', weight: kg(5) }));
    expect(await standing(lot.lotId)).toBe('to-review');
    expect(code(await send(lot.packingId, 1))).toEqual([409, 'not-cleared']);
  });
});

describe('of a lot whose product is decided in parts', () => {
  test('only what was neither condemned nor to be reworked leaves, whatever is corrected afterwards', async () => {
    const { lotId, packingId } = await aSausageLot(kitchen, larder, 'packed');
    const deviationId = await openOn(lotId);
    await act(kitchen.reviewer, deviationId, kitchen.now());
    const condemned = await made(deviationId, { decision: 'condemn', weight: kg(2.4) });
    await made(deviationId, { decision: 'rework', weight: kg(1.6) });
    await made(deviationId, {});
    await done(close(kitchen.reviewer, deviationId));
    await sign(lotId);
    expect(code(await send(packingId, 6))).toEqual([422, 'more-than-there-is']);
    await done(send(packingId, 5));
    expect(code(await send(packingId, 1))).toEqual([409, 'not-cleared']);
    expect(await mayShip(packingId)).toBe(false);

    const into = await kitchen.startLot();
    const { inputId } = await kitchen.putIn(into.lotId, { sourceLotId: lotId, weight: kg(1.6) });
    await kitchen.putIn(into.lotId, { sourceLotId: lotId, weight: kg(1.5), amends: inputId, reason: 'Weighed again.' });
    expect(code(await send(packingId, 1))).toEqual([409, 'not-cleared']);
    const [now] = (await packingsOf(kitchen.operator)).filter((one) => one.packingId === packingId);
    const fewer = { packingId: v7(), lotId, count: 9, net: g(800), takenAt: kitchen.now(), amends: now?.rowId, reason: 'Counted wrongly.' };
    await done(ask(kitchen.operator, contract.packLot, fewer));
    await sign(lotId);
    expect(code(await send(packingId, 1))).toEqual([409, 'not-cleared']);
    expect(code(await strike(kitchen.reviewer, 'disposition', condemned))).toEqual([200, undefined]);
    expect(code(await send(packingId, 1))).toEqual([409, 'not-cleared']);
  });

  test('rework taken before it was decided, and corrected since, does not stand for what was decided', async () => {
    const { lotId, packingId } = await aSausageLot(kitchen, larder, 'packed');
    const into = await kitchen.startLot();
    const { inputId } = await kitchen.putIn(into.lotId, { sourceLotId: lotId, weight: kg(2) });
    const deviationId = await openOn(lotId);
    await act(kitchen.reviewer, deviationId, kitchen.now());
    await made(deviationId, { decision: 'rework', weight: kg(4) });
    await made(deviationId, {});
    await done(close(kitchen.reviewer, deviationId));
    await kitchen.putIn(into.lotId, { sourceLotId: lotId, weight: kg(1.9), amends: inputId, reason: 'Weighed again.' });
    await sign(lotId);
    expect(code(await send(packingId, 6))).toEqual([422, 'more-than-there-is']);
    await done(send(packingId, 5));
  });

  test('what was called back cannot be brought back into store by correcting or voiding its shipment', async () => {
    const { lotId, packingId } = await aSausageLot(kitchen, larder, 'reviewed');
    const shipment = await done<Shipment>(send(packingId, 5));
    const deviationId = await openOn(lotId);
    await act(kitchen.reviewer, deviationId, kitchen.now());
    const recall = await made(deviationId, { decision: 'recall', weight: kg(4) });
    expect(code(await strike(kitchen.operator, 'shipment', shipment.rowId))).toEqual([409, 'still-in-use']);
    const four = await send(packingId, 4, { amends: shipment.rowId, reason: 'Loaded four.' });
    expect([...code(four), four.body.detail]).toEqual([409, 'still-in-use', expect.stringContaining('Void that decision first')]);
    await done(strike(kitchen.reviewer, 'disposition', recall));
    await done(strike(kitchen.operator, 'shipment', shipment.rowId));
    expect(await showDeviation(kitchen.operator, deviationId)).toMatchObject({ open: true, products: [{ left: { grams: 0 } }] });
  });

  test('three who decide about all of it at once decide it once', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'packed');
    const deviationId = await openOn(lotId);
    await act(kitchen.reviewer, deviationId, kitchen.now());
    const replies = await Promise.all([
      decide(kitchen.reviewer, deviationId, { decision: 'condemn', weight: kg(10.025) }),
      decide(shop.owner, deviationId, { weight: kg(10.025) }),
      decide(shop.owner, deviationId, { decision: 'rework', weight: kg(10.025) }),
    ]);
    expect(replies.map(({ status }) => status).sort()).toEqual([200, 409, 409]);
    await done(close(kitchen.reviewer, deviationId));
  });
});

describe('a shipment', () => {
  test('is not dated before its packages were packed', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'reviewed');
    const between = kitchen.now();
    larder.clock.moveOn(3_600_000);
    const { packingId } = await pack(lotId, 1, g(800));
    const early = await send(packingId, 1, { takenAt: between });
    expect(code(early)).toEqual([409, 'not-cleared']);
    await done(ask(kitchen.reviewer, contract.signReview, { reviewId: v7(), lotId, statement: 'Complete and met.' }));
    expect(code(await send(packingId, 1, { takenAt: between }))).toEqual([409, 'not-cleared-then']);
    await done(send(packingId, 1));
  });

  test('a replay of an old load with other content is refused, and of the same lands once', async () => {
    const { packingId } = await aSausageLot(kitchen, larder, 'reviewed');
    const shipmentId = v7();
    const takenAt = kitchen.now();
    await done(send(packingId, 5, { shipmentId, takenAt }));
    await done(send(packingId, 5, { shipmentId, takenAt }));
    expect(code(await send(packingId, 6, { shipmentId, takenAt }))).toEqual([409, 'sent-differently']);
    expect((await packingsOf(kitchen.operator)).find((one) => one.packingId === packingId)).toMatchObject({ left: 5 });
  });
});

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

describe('product that had left before its deviation was found', () => {
  test('is called back or let go, and only what is still here ships after another review', async () => {
    const { lotId, packingId } = await aSausageLot(kitchen, larder, 'reviewed');
    await done(send(packingId, 4));
    const deviationId = await openOn(lotId);
    expect((await today()).recalls.map((one) => one.deviationId)).toContain(deviationId);
    await act(kitchen.reviewer, deviationId, kitchen.now());
    expect(code(await decide(kitchen.reviewer, deviationId, { decision: 'recall', weight: kg(3.3) }))).toEqual([422, 'more-than-there-is']);
    await made(deviationId, { decision: 'recall', weight: kg(3.2) });
    await made(deviationId, { decision: 'condemn', weight: kg(4.8) });
    expect(code(await send(packingId, 1))).toEqual([409, 'not-cleared']);
    await made(deviationId, {});
    await done(close(kitchen.reviewer, deviationId));
    expect(code(await send(packingId, 1))).toEqual([409, 'not-cleared']);
    await sign(lotId);
    expect(code(await send(packingId, 1))).toEqual([409, 'not-cleared']);
    expect(await mayShip(packingId)).toBe(false);
    expect((await today()).toDestroy.filter((one) => one.lotId === lotId).map(({ decision }) => decision)).toEqual(['recall', 'condemn']);
  });
});

test.each([
  ['nothing', { value: 0, unit: 'kg' }],
  ['less than nothing', { value: -1, unit: 'kg' }],
  ['less than a scale can show', { value: 0.0001, unit: 'kg' }],
] as const)('a decision about %s is refused', async (_case, weight) => {
  const { lotId } = await kitchen.startLot();
  await kitchen.putIn(lotId);
  const reply = await decide(kitchen.reviewer, await openOn(lotId), { weight });
  expect(code(reply)).toEqual([400, 'invalid-input']);
});

test('a decision about a gram decides a gram, and 28.7 lb are as good as 13.018 kg', async () => {
  const { lotId } = await kitchen.startLot();
  await kitchen.putIn(lotId, { weight: { value: 28.7, unit: 'lb' } });
  const deviationId = await openOn(lotId);
  await act(kitchen.reviewer, deviationId, kitchen.now());
  await made(deviationId, { decision: 'condemn', weight: g(1) });
  expect(code(await close(kitchen.reviewer, deviationId))).toEqual([409, 'product-undecided']);
  await made(deviationId, { weight: kg(13.017) });
  expect(await showDeviation(kitchen.operator, deviationId)).toMatchObject({ undecided: { grams: 0 }, covered: true });
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
