import type { Receipt } from '@larderbook/contracts';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { aReceipt } from '../builders/a-receipt';
import { aReceivingShop, type ReceivingShop } from '../builders/a-receiving-shop';
import { done } from '../builders/a-shop';
import { anItem } from '../builders/an-item';
import { startApp, type TestApp } from '../support/start-app';

let larder: TestApp;
let operator: ReceivingShop['operator'];
let holt: ReceivingShop['holt'];
let receive: ReceivingShop['receive'];

beforeAll(async () => {
  larder = await startApp();
  ({ operator, holt, receive } = await aReceivingShop(larder));
});
afterAll(() => larder.close());

describe('the list of deliveries', () => {
  const at = (minutes: number) => new Date(Date.parse('2026-02-01T06:00:00Z') + minutes * 60_000).toISOString();

  test('is newest first, in pages that neither lose nor repeat one taken at the same moment', async () => {
    const { itemId } = await anItem(operator, { name: 'Pork belly' });
    for (let n = 0; n < 54; n += 1) await done(receive({ itemId, takenAt: at(n < 6 ? 0 : n) }));

    const first = (await operator.get(`/receipts?itemId=${itemId}`)).body as { receipts: Receipt[]; more: boolean };
    expect(first.more).toBe(false);
    expect(first.receipts).toHaveLength(54);

    for (let n = 0; n < 3; n += 1) await done(receive({ itemId, takenAt: at(-10 - n) }));
    const page = (await operator.get(`/receipts?itemId=${itemId}`)).body as { receipts: Receipt[]; more: boolean };
    expect(page).toMatchObject({ more: true, receipts: first.receipts });
    const last = page.receipts.at(-1)?.made.at ?? '';
    const rest = (await operator.get(`/receipts?itemId=${itemId}&before=${last}`)).body as { receipts: Receipt[]; more: boolean };
    expect(rest.more).toBe(false);
    expect(rest.receipts.map(({ made }) => made.at)).toEqual([at(-10), at(-11), at(-12)]);
  });

  test('can leave out what is used up or was refused', async () => {
    const { itemId } = await anItem(operator, { name: 'Pork cheek' });
    const kept = await aReceipt(operator, { itemId, supplierId: holt.supplierId });
    const refused = (await receive({ itemId, decision: 'refused', reason: 'Torn boxes.' })).body as Receipt;
    const listed = async (query: string) =>
      ((await operator.get(`/receipts?itemId=${itemId}${query}`)).body.receipts as Receipt[]).map(({ receiptId }) => receiptId);
    expect(await listed('')).toEqual([refused.receiptId, kept.receiptId]);
    expect(await listed('&left=some')).toEqual([kept.receiptId]);
  });
});
