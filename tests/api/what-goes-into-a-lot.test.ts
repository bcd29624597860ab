import * as contract from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aSausageLot } from '../builders/a-sausage-lot';
import { anotherShop, aShop, done, type Shop } from '../builders/a-shop';
import { ask, code, said } from '../support/ask';
import { startApp, type TestApp } from '../support/start-app';
import { told } from '../support/told';

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
const g = (value: number) => ({ value, unit: 'g' as const });

describe('putting meat in', () => {
  const put = async (fields: object) =>
    ask(kitchen.operator, contract.putIn, {
      inputId: v7(),
      lotId: (await kitchen.startLot()).lotId,
      weight: kg(10),
      takenAt: kitchen.now(),
      ...fields,
    });

  test('the meat block is what went in after trimming, not what was bought', async () => {
    const { lotId } = await kitchen.startLot();
    const receiptId = await kitchen.receive('pork');
    expect(
      await kitchen.putIn(lotId, {
        receiptId,
        weight: { value: 22.5, unit: 'lb' },
        trimmed: { value: 20, unit: 'lb' },
      }),
    ).toMatchObject({ meatBlockGrams: 9071.8474 });
    expect(await kitchen.putIn(lotId, { receiptId, weight: kg(1) })).toMatchObject({ meatBlockGrams: 10071.8474 });
    expect((await kitchen.showLot(lotId)).targets).toMatchObject([
      { itemName: 'Pork shoulder', weighedGrams: 10071.8474 },
      { targetGrams: 161.1495584 },
      { targetGrams: 25.1, maxGrams: expect.closeTo(25.1796185, 6) },
    ]);
  });

  test('more than is left of a delivery is refused, with the figures in the unit that was entered', async () => {
    const receiptId = await kitchen.receive('pork', { weight: kg(15) });
    await done(put({ receiptId, weight: kg(12) }));
    const reply = await put({ receiptId, weight: { value: 7, unit: 'lb' } });
    expect(code(reply)).toEqual([422, 'more-than-there-is']);
    expect(reply.body.detail).toMatch(/^6\.613 lb are left of R-\d{4}, 7 lb were asked for\.$/);
    await done(put({ receiptId, weight: kg(3) }));
    expect(code(await put({ receiptId, weight: g(0.001) }))).toEqual([422, 'more-than-there-is']);
  });

  test('of two that would take the rest at the same moment, one gets it', async () => {
    const receiptId = await kitchen.receive('pork', { weight: kg(10) });
    const replies = await Promise.all([put({ receiptId, weight: kg(6) }), put({ receiptId, weight: kg(6) })]);
    expect(replies.map(({ status }) => status).sort()).toEqual([200, 422]);
    const { leftGrams } = await done<contract.Receipt>(ask(kitchen.operator, contract.showReceipt, { receiptId }));
    expect(leftGrams).toBe(4000);
  });

  test('a refused delivery may not be used', async () => {
    const receiptId = await kitchen.receive('pork', { decision: 'refused', reason: 'Torn bags.' });
    expect(code(await put({ receiptId }))).toEqual([422, 'receipt-refused']);
  });

  test('salt is no meat', async () => {
    const receiptId = await kitchen.receive('salt');
    const [, problem, detail] = said(await put({ receiptId }));
    expect([problem, detail]).toEqual(['wrong-item', expect.stringMatching(/^R-\d{4} is Salt, which is no meat\./)]);
  });

  test('more after trimming than was taken is refused', async () => {
    const reply = await put({
      receiptId: await kitchen.receive('pork'),
      weight: kg(4),
      trimmed: { value: 9, unit: 'lb' },
    });
    expect(said(reply)).toEqual([422, 'trimmed-exceeds-taken', '4 kg were taken, and 9 lb are said to be left after trimming.']);
  });

  test.each([
    ['a weight of zero', { weight: kg(0) }, '#/weight/value'],
    ['a weight below zero', { weight: kg(-1) }, '#/weight/value'],
    ['four decimals', { weight: kg(1.2345) }, '#/weight/value'],
    ['stones', { weight: { value: 2, unit: 'st' } }, '#/weight/unit'],
    ['a trimmed weight of zero', { trimmed: kg(0) }, '#/trimmed/value'],
    ['neither a delivery nor a lot', {}, '#/receiptId'],
    ['a day that is not on the calendar', { takenAt: '2026-02-30T08:00:00Z' }, '#/takenAt'],
  ])('%s is refused beside its field', async (_case, fields, pointer) => {
    const { lotId } = await kitchen.startLot();
    const reply = await kitchen.operator.put(`/inputs/${v7()}`, {
      lotId,
      weight: kg(1),
      takenAt: kitchen.now(),
      ...(pointer === '#/receiptId' ? {} : { receiptId: v7() }),
      ...fields,
    });
    expect(code(reply)).toEqual([400, 'invalid-input']);
    expect(reply.body.errors.map((error: { pointer: string }) => error.pointer)).toContain(pointer);
  });

  test('a correction needs its reason, gives back what it corrects, and is itself corrected only once', async () => {
    const receiptId = await kitchen.receive('pork', { weight: kg(10) });
    const { lotId } = await kitchen.startLot();
    const first = await kitchen.putIn(lotId, { receiptId, weight: kg(9) });
    const correct = (fields: object) =>
      put({ lotId, receiptId, weight: kg(10), amends: first.inputId, reason: 'Read the wrong line.', ...fields });

    expect(code(await correct({ reason: undefined }))).toEqual([422, 'reason-missing']);
    expect(code(await correct({ amends: v7() }))).toEqual([404, 'not-found']);
    expect(code(await correct({ weight: kg(10.001) }))).toEqual([422, 'more-than-there-is']);
    const second = await done<{ inputId: string; meatBlockGrams: number }>(correct({}));
    expect(second.meatBlockGrams).toBe(10_000);
    expect(code(await correct({}))).toEqual([409, 'already-amended']);

    const { inputs } = await kitchen.showLot(lotId);
    expect(inputs).toMatchObject([
      { inputId: first.inputId, amendedBy: second.inputId },
      { amends: first.inputId, reason: 'Read the wrong line.' },
    ]);
  });

  test('a lot of another shop cannot be found', async () => {
    const other = await anotherShop(larder);
    const { lotId } = await kitchen.startLot();
    const receiptId = await kitchen.receive('pork');
    const input = { inputId: v7(), lotId, receiptId, weight: kg(1), takenAt: kitchen.now() };
    expect(code(await ask(other.owner, contract.putIn, input))).toEqual([404, 'not-found']);
    expect(code(await ask(other.owner, contract.showLot, { lotId }))).toEqual([404, 'not-found']);
    expect(await done(ask(other.owner, contract.listLots, { standing: 'all' }))).toEqual({ lots: [], more: false });
  });
});

describe('rework', () => {
  const rework = async (sourceLotId: string, weight: object, lotId?: string) =>
    ask(kitchen.operator, contract.putIn, {
      inputId: v7(),
      lotId: lotId ?? (await kitchen.startLot()).lotId,
      sourceLotId,
      weight: weight as { value: number; unit: 'kg' },
      takenAt: kitchen.now(),
    });

  test('takes no more than is left of the earlier lot', async () => {
    const { lotId, code: sourceCode } = await kitchen.startLot();
    await kitchen.putIn(lotId);
    await done(rework(lotId, kg(4)));
    expect(said(await rework(lotId, kg(6.5)))).toEqual([
      422,
      'more-than-there-is',
      `6 kg are left of ${sourceCode}, 6.5 kg were asked for.`,
    ]);
  });

  test('never goes back into a lot that is already part of it', async () => {
    const first = await kitchen.startLot();
    await kitchen.putIn(first.lotId);
    expect(said(await rework(first.lotId, kg(1), first.lotId))).toEqual([422, 'into-itself', `${first.code} is the lot itself.`]);
    const second = await kitchen.startLot();
    const third = await kitchen.startLot();
    await done(rework(first.lotId, kg(2), second.lotId));
    await done(rework(second.lotId, kg(1), third.lotId));
    expect(said(await rework(third.lotId, kg(0.5), first.lotId))).toEqual([
      422,
      'into-itself',
      `${third.code} already contains ${first.code}.`,
    ]);
  });

  test('brings its cure along: what is weighed is judged with it', async () => {
    const earlier = await aSausageLot(kitchen, larder, 'cured'); // 156.25 ppm
    const { lotId } = await kitchen.startLot();
    await kitchen.putIn(lotId);
    await done(rework(earlier.lotId, kg(2), lotId));
    const lot = await kitchen.showLot(lotId);
    expect(lot.targets.find(({ itemName }) => itemName === 'Curing salt 6.25 %')).toMatchObject({
      targetGrams: 25,
      ppm: 25.99,
    }); // 2 kg of 10.025 kg with 1.5625 g of nitrite, on 11.995 kg of meat

    expect(told(await kitchen.weighCure(lotId))).toMatchObject({
      verdicts: [{ verdict: { kind: 'met', measured: expect.stringContaining('156.25 ppm') } }],
    });
    expect((await kitchen.weighCure(lotId, { weight: g(1) })).deviationId).toBeDefined();
  });

  test('of a lot on hold holds every lot it goes into', async () => {
    const earlier = await aSausageLot(kitchen, larder, 'cured');
    const { lotId } = await kitchen.startLot();
    await kitchen.putIn(lotId);
    await done(rework(earlier.lotId, kg(1), lotId));
    expect((await kitchen.showLot(lotId)).standing).toBe('in-work');
    await kitchen.read(earlier.lotId, 'coldRoom', { entered: { value: 55, unit: '°F' } });
    expect(await kitchen.showLot(lotId)).toMatchObject({
      standing: 'on-hold',
      openDeviations: 1,
      because: [{ code: 'deviation-open' }, { tells: 'because', point: 'Cold room' }, { code: 'next-record-action' }],
    });
  });
});
