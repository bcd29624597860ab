import * as contract from '@larderbook/contracts';
import type { Lot, ReplyOf } from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aCurve, aSausageLot, ship } from '../builders/a-sausage-lot';
import { anotherShop, aShop, done, type Shop, type Worker } from '../builders/a-shop';
import { correctReceipt, showReceipt, strike } from '../builders/correcting';
import { ask, code, said } from '../support/ask';
import { printed } from '../support/printed';
import { startApp, type TestApp } from '../support/start-app';

let larder: TestApp;
let shop: Shop;
let kitchen: SausageKitchen;
let stranger: Worker;
beforeAll(async () => {
  larder = await startApp();
  shop = await aShop(larder);
  kitchen = await aSausageKitchen(shop, larder);
  stranger = (await anotherShop(larder)).owner;
});
afterAll(() => larder.close());

const kg = (value: number) => ({ value, unit: 'kg' as const });
const point = (lot: Lot, name: keyof SausageKitchen['points']) =>
  lot.controlPoints.find(({ controlPoint }) => controlPoint.controlPointId === kitchen.points[name]);

/** A lot cured with 25 g out of a delivery of curing salt. */
async function aCuredLot() {
  const cureId = await kitchen.receive('cure');
  const { lotId } = await kitchen.startLot();
  await kitchen.putIn(lotId);
  await kitchen.weighCure(lotId, { receiptId: cureId });
  return { lotId, cureId };
}

describe('a delivery is corrected', () => {
  test('and keeps its number and its place; what it said before stays, with who, when and why', async () => {
    const receiptId = await kitchen.receive('pork');
    larder.clock.moveOn(3_600_000);
    await done(correctReceipt(kitchen.operator, receiptId, { weight: kg(90), supplierLot: 'ML-89' }));
    const shown = await showReceipt(kitchen.operator, receiptId);
    expect(shown).toMatchObject({ receiptId, weight: { value: 90 }, supplierLot: 'ML-89', leftGrams: 90_000 });
    expect(shown.corrections).toMatchObject([
      {
        ...{ about: 'receipt', id: receiptId, voided: false, reason: 'Typed wrongly.' },
        what: { code: 'entry-delivery', figures: { code: shown.code } },
        changes: [
          { what: { code: 'says-supplier-lot' }, before: 'ML-88', after: 'ML-89' },
          { what: { code: 'says-weight' }, before: { value: '100', unit: 'kg' }, after: { value: '90', unit: 'kg' } },
        ],
      },
    ]);
    expect(shown.corrections[0]?.made.recordedAt).toBe(larder.clock.now().toISOString());
    const { receipts } = await done<ReplyOf<typeof contract.listReceipts>>(ask(kitchen.operator, contract.listReceipts, { left: 'any' }));
    expect(receipts.filter((one) => one.code === shown.code)).toHaveLength(1);
  });

  test('and goes on under the name of whoever recorded it, when they did; a correction hours later makes nothing late', async () => {
    const receiptId = await kitchen.receive('pork');
    const recordedAt = kitchen.now();
    larder.clock.moveOn(3_600_000);
    await done(correctReceipt(kitchen.reviewer, receiptId, { weight: kg(90) }));
    expect(await showReceipt(kitchen.operator, receiptId)).toMatchObject({
      flags: [],
      made: { name: 'The operator', at: recordedAt, recordedAt },
      corrections: [{ made: { name: 'The reviewer', recordedAt: kitchen.now() } }],
    });
  });

  test('and is late where it was late when it was first recorded, by the time it is now said to have come', async () => {
    const ago = (minutes: number) => new Date(larder.clock.now().getTime() - minutes * 60_000).toISOString();
    const late = await kitchen.receive('pork', { takenAt: ago(40) });
    await done(correctReceipt(kitchen.operator, late, { weight: kg(90) }));
    expect((await showReceipt(kitchen.operator, late)).flags).toEqual(['recorded-late']);
    await done(correctReceipt(kitchen.operator, late, { takenAt: ago(10) }));
    expect((await showReceipt(kitchen.operator, late)).flags).toEqual([]);
    const prompt = await kitchen.receive('pork');
    await done(correctReceipt(kitchen.operator, prompt, { takenAt: ago(40) }));
    expect((await showReceipt(kitchen.operator, prompt)).flags).toEqual(['recorded-late']);
  });

  test('and the next delivery takes the next number', async () => {
    const before = await showReceipt(kitchen.operator, await kitchen.receive('pork'));
    await done(correctReceipt(kitchen.operator, before.receiptId, { weight: kg(90) }));
    const next = await showReceipt(kitchen.operator, await kitchen.receive('pork'));
    expect(Number(next.code.slice(2))).toBe(Number(before.code.slice(2)) + 1);
  });

  test('that held another curing salt: what was weighed from it is judged again, and the miss is found', async () => {
    const { lotId, cureId } = await aCuredLot();
    expect(point(await kitchen.showLot(lotId), 'cure')?.stands).toBe('met');
    await done(correctReceipt(kitchen.operator, cureId, { fractionPercent: 12.5 }));
    const lot = await kitchen.showLot(lotId);
    expect(point(lot, 'cure')?.stands).toBe('missed');
    expect(lot.standing).toBe('on-hold');
    expect(lot.weighings).toMatchObject([{ fractionPercent: 12.5, fractionBefore: 6.25 }]);
    expect(lot.corrections).toMatchObject([
      { about: 'receipt', changes: [{ what: { code: 'says-content' }, after: { value: '12.5', unit: '%' } }] },
    ]);
  });

  test('and the record of what was weighed from it prints what it was taken for, struck through, beside what counts', async () => {
    const { lotId, cureId } = await aCuredLot();
    await done(correctReceipt(kitchen.operator, cureId, { fractionPercent: 12.5 }));
    const { text } = await printed(shop.owner, `/lots/${lotId}/lot-record.pdf`);
    expect(text).toContain('Curing salt 6.25 % 6.25 % 12.5 % sodium nitrite, lot ML-88');
    expect(text).toContain('Content: nothing → 12.5 %. Typed wrongly.');
    const untouched = await aCuredLot();
    const other = await printed(shop.owner, `/lots/${untouched.lotId}/lot-record.pdf`);
    expect(other.text).toContain('Curing salt 6.25 % 6.25 % sodium nitrite');
  });

  test('after the review: the clearance is taken back, and the earlier review is shown as what it was', async () => {
    const other = await aSausageLot(kitchen, larder, 'reviewed');
    const [input] = (await kitchen.showLot(other.lotId)).inputs;
    await done(correctReceipt(kitchen.operator, input?.from.receiptId ?? '', { supplierLot: 'ML-90' }));
    const lot = await kitchen.showLot(other.lotId);
    expect(lot.standing).toBe('to-review');
    const corrected = { code: 'since-delivery', figures: { code: input?.from.code, did: 'corrected' } };
    expect(lot.because).toContainEqual(corrected);
    expect(lot.reviews).toMatchObject([{ counts: false, takenBack: { what: corrected, by: expect.any(String) } }]);
    expect(lot.reviews[0]?.covered).toEqual({ met: 5, settled: 0, closed: 0 });
  });

  test('after shipment, and it makes a miss: a possible recall', async () => {
    const cureId = await kitchen.receive('cure');
    const lot = await aSausageLot(kitchen, larder, 'cured');
    const cure = (await kitchen.showLot(lot.lotId)).weighings[0];
    await done(
      ask(kitchen.operator, contract.weighIn, {
        ...{ weighingId: v7(), lotId: lot.lotId, itemId: kitchen.items.cure, receiptId: cureId },
        ...{ weight: { value: 25, unit: 'g' }, takenAt: kitchen.now(), amends: cure?.weighingId, reason: 'Another bag.' },
      }),
    );
    await finishAndShip(lot.lotId);
    await done(correctReceipt(kitchen.operator, cureId, { fractionPercent: 12.5 }));
    const today = await done<ReplyOf<typeof contract.showToday>>(ask(kitchen.operator, contract.showToday, {}));
    expect(today.recalls.map((recall) => recall.lot?.lotId)).toContain(lot.lotId);
  });

  test('but not below what was taken from it, nor to refused, nor to another kind of item: it says what to do', async () => {
    const receiptId = await kitchen.receive('pork');
    const { lotId } = await kitchen.startLot();
    await kitchen.putIn(lotId, { receiptId, weight: kg(40) });
    const short = await correctReceipt(kitchen.operator, receiptId, { weight: kg(39.9) });
    expect(said(short).slice(0, 2)).toEqual([409, 'still-in-use']);
    expect(short.body.detail).toContain('40 kg of R-');
    expect(short.body.detail).toContain('Correct what was taken first');
    const refused = await correctReceipt(kitchen.operator, receiptId, { decision: 'refused', reason: 'Warm.' });
    expect(code(refused)).toEqual([409, 'still-in-use']);
    const salt = await correctReceipt(kitchen.operator, receiptId, { itemId: kitchen.items.salt });
    expect(code(salt)).toEqual([422, 'wrong-item']);
    await done(correctReceipt(kitchen.operator, receiptId, { weight: kg(40) }));
    expect((await showReceipt(kitchen.operator, receiptId)).leftGrams).toBe(0);
  });

  test('only once from what was seen: the second of two is told that there is a newer one', async () => {
    const receiptId = await kitchen.receive('pork');
    const { rowId } = await showReceipt(kitchen.operator, receiptId);
    const both = await Promise.all(
      [80, 70].map((value) => correctReceipt(kitchen.operator, receiptId, { weight: kg(value) }, { amends: rowId })),
    );
    expect(both.map(({ status }) => status).sort()).toEqual([200, 409]);
    expect((await showReceipt(kitchen.operator, receiptId)).corrections).toHaveLength(1);
  });

  test('not without a reason, not by the inspector, not by another shop, and a row that is none is not found', async () => {
    const receiptId = await kitchen.receive('pork');
    const inspector = await shop.hire('inspector');
    expect(code(await correct(kitchen.operator, receiptId, ''))).toEqual([400, 'invalid-input']);
    expect(code(await correct(inspector, receiptId, 'Typed wrongly.'))).toEqual([403, 'not-allowed']);
    expect(code(await ask(stranger, contract.correctReceipt, await bodyOf(receiptId, 'Typed wrongly.')))).toEqual([404, 'not-found']);
    expect(code(await correct(kitchen.operator, receiptId, 'Typed wrongly.', v7()))).toEqual([404, 'not-found']);
    expect((await showReceipt(kitchen.operator, receiptId)).corrections).toEqual([]);
  });

  test('sent twice, once; sent with other content, not', async () => {
    const receiptId = await kitchen.receive('pork');
    const sent = await bodyOf(receiptId, 'Typed wrongly.');
    const [first, again] = [
      await ask(kitchen.operator, contract.correctReceipt, sent),
      await ask(kitchen.operator, contract.correctReceipt, sent),
    ];
    expect([first.status, again.body]).toEqual([200, first.body]);
    const other = await ask(kitchen.operator, contract.correctReceipt, { ...sent, reason: 'Read wrongly.' });
    expect(code(other)).toEqual([409, 'sent-differently']);
  });
});

describe('a delivery is voided', () => {
  test('stays in the list, struck through, and nothing of it is left', async () => {
    const receiptId = await kitchen.receive('pork');
    const { rowId, code: number } = await showReceipt(kitchen.operator, receiptId);
    await done(strike(kitchen.operator, 'receipt', rowId, 'Entered twice.'));
    expect(await showReceipt(kitchen.operator, receiptId)).toMatchObject({
      ...{ voided: true, code: number, leftGrams: 0 },
      corrections: [{ voided: true, reason: 'Entered twice.' }],
    });
    const listed = (left: 'some' | 'any') =>
      done<ReplyOf<typeof contract.listReceipts>>(ask(kitchen.operator, contract.listReceipts, { left }));
    expect((await listed('any')).receipts.map((one) => one.receiptId)).toContain(receiptId);
    expect((await listed('some')).receipts.map((one) => one.receiptId)).not.toContain(receiptId);
    const { lotId } = await kitchen.startLot();
    const put = await ask(kitchen.operator, contract.putIn, {
      ...{ inputId: v7(), lotId, receiptId, weight: kg(1), takenAt: kitchen.now() },
    });
    expect(code(put)).toEqual([404, 'not-found']);
    const next = await showReceipt(kitchen.operator, await kitchen.receive('pork'));
    expect(next.code).not.toBe(number);
  });

  test('not while something of it is in a lot; with that voided, it can be', async () => {
    const receiptId = await kitchen.receive('pork');
    const { lotId } = await kitchen.startLot();
    const { inputId } = await kitchen.putIn(lotId, { receiptId });
    const { rowId } = await showReceipt(kitchen.operator, receiptId);
    expect(code(await strike(kitchen.operator, 'receipt', rowId))).toEqual([409, 'still-in-use']);
    await done(strike(kitchen.operator, 'input', inputId));
    await done(strike(kitchen.operator, 'receipt', rowId));
    expect(await kitchen.showLot(lotId)).toMatchObject({ meatBlockGrams: 0, inputs: [{ voided: { reason: 'Never happened.' } }] });
  });

  test('not twice, and not corrected afterwards', async () => {
    const receiptId = await kitchen.receive('pork');
    const { rowId } = await showReceipt(kitchen.operator, receiptId);
    await done(strike(kitchen.operator, 'receipt', rowId));
    expect(code(await strike(kitchen.operator, 'receipt', rowId))).toEqual([409, 'already-amended']);
    const now = await showReceipt(kitchen.operator, receiptId);
    expect(code(await correctReceipt(kitchen.operator, receiptId, {}, { amends: now.rowId }))).toEqual([409, 'already-amended']);
  });
});

async function bodyOf(receiptId: string, reason: string, amends?: string) {
  const { item, supplier, supplierLot, rowId } = await showReceipt(kitchen.operator, receiptId);
  const receipt = { itemId: item.itemId, supplierId: supplier.supplierId, supplierLot, weight: kg(50) };
  const rest = { decision: 'accepted', reason: '', takenAt: kitchen.now() } as const;
  return { correctionId: v7(), amends: amends ?? rowId, reason, receipt: { ...receipt, ...rest } };
}
const correct = async (by: Worker, receiptId: string, reason: string, amends?: string) =>
  ask(by, contract.correctReceipt, await bodyOf(receiptId, reason, amends));

/** The rest of the way of a cured lot, to its packages leaving. */
async function finishAndShip(lotId: string): Promise<void> {
  await aCurve(kitchen, larder, lotId, 'cook', [120, 140, 159, 160]);
  await aCurve(kitchen, larder, lotId, 'chill', [140, 100, 78, 55, 39]);
  await kitchen.read(lotId, 'coldRoom', { entered: { value: 36, unit: '°F' } });
  await kitchen.read(lotId, 'label', { entered: { answer: true, seen: 'Label 12.' } });
  const packingId = v7();
  const net = { value: 800, unit: 'g' } as const;
  await done(ask(kitchen.operator, contract.packLot, { packingId, lotId, count: 10, net, takenAt: kitchen.now() }));
  await done(ask(kitchen.reviewer, contract.signReview, { reviewId: v7(), lotId, statement: 'Complete.' }));
  await ship(kitchen, packingId, 10);
}
