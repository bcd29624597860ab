import { receivedChilled } from '@larderbook/haccp';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { receiptFields } from '../builders/a-receipt';
import { aReceivingShop, type ReceivingShop } from '../builders/a-receiving-shop';
import { done } from '../builders/a-shop';
import { aSupplier, supplierFields } from '../builders/a-supplier';
import { curingSalt, itemFields, type Item } from '../builders/an-item';
import { code } from '../support/ask';
import { run } from '../support/database';
import { startApp, type TestApp } from '../support/start-app';

let larder: TestApp;
let shop: ReceivingShop['shop'];
let operator: ReceivingShop['operator'];
let stranger: ReceivingShop['stranger'];
let pork: ReceivingShop['pork'];
let holt: ReceivingShop['holt'];
let receive: ReceivingShop['receive'];

beforeAll(async () => {
  larder = await startApp();
  ({ shop, operator, stranger, pork, holt, receive } = await aReceivingShop(larder));
});
afterAll(() => larder.close());

describe('suppliers and items', () => {
  test('the floor adds them, and everyone sees them by name', async () => {
    const inspector = await shop.hire('inspector');
    const spice = await aSupplier(operator, { name: 'Dunmarrow Spice & Salt', establishmentNumber: undefined });
    const { suppliers } = (await inspector.get('/suppliers')).body;
    expect(suppliers).toEqual([spice, holt]);
    expect((await inspector.get('/items')).body.items).toContainEqual(pork);
  });

  test('the inspector adds none', async () => {
    const inspector = await shop.hire('inspector');
    expect(code(await inspector.put(`/suppliers/${v7()}`, supplierFields()))).toEqual([403, 'not-allowed']);
    expect(code(await inspector.put(`/items/${v7()}`, itemFields()))).toEqual([403, 'not-allowed']);
    expect(code(await receive({}, inspector))).toEqual([403, 'not-allowed']);
  });

  test('nobody of another shop sees or corrects them', async () => {
    expect((await stranger.get('/suppliers')).body.suppliers).toEqual([]);
    expect((await stranger.get('/items')).body.items).toEqual([]);
    expect(code(await stranger.put(`/suppliers/${v7()}`, { ...supplierFields(), amends: holt.supplierId }))).toEqual([404, 'not-found']);
    expect(code(await stranger.put(`/items/${v7()}`, { ...itemFields(), amends: pork.itemId }))).toEqual([404, 'not-found']);
  });

  test('sent twice they land once; sent with other content they are refused', async () => {
    const itemId = v7();
    const fields = itemFields({ name: 'Pork jowl' });
    const [one, two] = await Promise.all([0, 1].map(() => operator.put(`/items/${itemId}`, fields)));
    expect(one?.body).toEqual(two?.body);
    expect(code(await operator.put(`/items/${itemId}`, itemFields({ name: 'Pork cheek' })))).toEqual([409, 'sent-differently']);
    expect(code(await operator.put(`/suppliers/${itemId}`, supplierFields()))).toEqual([409, 'sent-differently']);
  });

  test('a corrected item keeps its id, so that what points at it sees the correction', async () => {
    const cure = await curingSalt(operator);
    const corrected = await operator.put(`/items/${v7()}`, {
      ...cure,
      fractionPercent: 5.88,
      name: 'Curing salt 5.88 %',
      amends: cure.itemId,
    });
    expect(corrected.body).toMatchObject({ itemId: cure.itemId, fractionPercent: 5.88 });
    const again = await operator.put(`/items/${v7()}`, { ...cure, fractionPercent: 6, name: 'Curing salt 6 %', amends: cure.itemId });
    expect(again.body).toMatchObject({ itemId: cure.itemId, fractionPercent: 6 });

    const { items } = (await operator.get('/items')).body as { items: Item[] };
    expect(items.filter(({ itemId }) => itemId === cure.itemId)).toEqual([again.body]);
    expect(items.some(({ name }) => name === 'Curing salt 5.88 %')).toBe(false);
    expect(await run(larder.database.ownerUrl, `SELECT FROM item WHERE name LIKE 'Curing salt%'`)).toHaveLength(3);
  });

  test('a correction that has been corrected itself cannot be corrected again', async () => {
    const { supplierId } = await aSupplier(operator, { name: 'Old Mill' });
    const between = v7();
    await done(operator.put(`/suppliers/${between}`, { ...supplierFields({ name: 'Old Mill Farm' }), amends: supplierId }));
    await done(operator.put(`/suppliers/${v7()}`, { ...supplierFields({ name: 'Old Mill Farms' }), amends: between }));
    expect(code(await operator.put(`/suppliers/${v7()}`, { ...supplierFields(), amends: between }))).toEqual([409, 'already-amended']);
  });

  test.each([
    ['no name', { name: ' ' }, '#/name'],
    ['a substance without its percentage', { substance: 'sodium nitrite' as const }, '#/fractionPercent'],
    ['meat with a restricted substance', { substance: 'phosphate' as const, fractionPercent: 2 }, '#/substance'],
    ['more of a substance than all', { substance: 'sodium nitrite' as const, fractionPercent: 100.1 }, '#/fractionPercent'],
    [
      'a receiving limit that is no range',
      { receivingLimit: { kind: 'attestation' as const, statement: 'It looks good', source: receivedChilled.source } },
      '#/receivingLimit',
    ],
    ['a receiving limit without a figure', { receivingLimit: { ...receivedChilled, max: undefined } }, '#/receivingLimit'],
    ['a receiving limit for pH', { receivingLimit: { ...receivedChilled, measured: 'pH' as const, max: 5800 } }, '#/receivingLimit'],
  ])('an item with %s is refused, and the field is named', async (_case, fields, pointer) => {
    const reply = await operator.put(`/items/${v7()}`, itemFields(fields));
    expect(code(reply)).toEqual([400, 'invalid-input']);
    expect(reply.body.errors).toContainEqual(expect.objectContaining({ pointer, detail: expect.any(String) }));
  });
});

test.each(nastyBodies())('a body of %s is refused politely everywhere', async (_case, body) => {
  const paths = [`/suppliers/${v7()}`, `/items/${v7()}`, `/receipts/${v7()}`];
  const replies = await Promise.all(paths.map((path) => operator.put(path, body)));
  for (const reply of replies) expect([reply.status, reply.body.code]).toEqual([400, 'invalid-input']);
});

function nastyBodies(): [string, object][] {
  const fields = { ...supplierFields(), ...itemFields(), ...receiptFields({ itemId: v7(), supplierId: v7() }) };
  return [
    ['nothing', {}],
    ['a list', [fields]],
    ['numbers where text belongs', { ...fields, name: 1, supplierLot: 2, address: 3 }],
    [
      'text where numbers belong',
      { ...fields, address: null, weight: { value: '12', unit: 'lb' }, fractionPercent: '6', substance: 'sodium nitrite' },
    ],
    ['NUL characters', { ...fields, name: 'Pork\u0000', supplierLot: '\u0000', address: '\u0000' }],
    ['half a character', { ...fields, name: '\ud83d', address: '\ud83d', supplierLot: '\ud83d' }],
    ['far too much text', { ...fields, name: 'x'.repeat(5000), address: 'x'.repeat(5000), supplierLot: 'x'.repeat(5000) }],
    ['dates that are none', { ...fields, name: '', takenAt: '2026-02-30T25:61:00Z', killDate: '2026-13-41' }],
    ['years far away', { ...fields, name: '', takenAt: '9999-01-01T00:00:00Z', packDate: '0001-01-01' }],
    ['units of another world', { ...fields, name: '', weight: { value: 1, unit: 'stone' }, temperature: { value: 290, unit: 'K' } }],
    ['numbers too large to keep', { ...fields, name: '', weight: { value: 1e300, unit: 'lb' }, temperature: { value: 1e300, unit: '°F' } }],
  ];
}
