import type { Receipt } from '@larderbook/contracts';
import { receivedChilled } from '@larderbook/haccp';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { aReceipt, receiptFields } from '../builders/a-receipt';
import { anotherShop, aShop, done, type Shop, type Worker } from '../builders/a-shop';
import { aSupplier, supplierFields, type Supplier } from '../builders/a-supplier';
import { anIngredient, anItem, curingSalt, itemFields, type Item } from '../builders/an-item';
import { code } from '../support/ask';
import { run } from '../support/database';
import { startApp, type TestApp } from '../support/start-app';
import { told } from '../support/told';

describe('receiving', () => {
  let larder: TestApp;
  let shop: Shop;
  let operator: Worker;
  let stranger: Worker;
  let pork: Item;
  let salt: Item;
  let holt: Supplier;

  beforeAll(async () => {
    larder = await startApp();
    shop = await aShop(larder);
    operator = await shop.hire('operator');
    stranger = (await anotherShop(larder)).owner;
    pork = await anItem(operator);
    salt = await anIngredient(operator);
    holt = await aSupplier(operator);
  });
  afterAll(() => larder.close());

  const delivery = (fields: Parameters<typeof receiptFields>[1] = {}) =>
    receiptFields({ itemId: pork.itemId, supplierId: holt.supplierId }, fields);
  const receive = (fields: Parameters<typeof receiptFields>[1] = {}, by = operator) => by.put(`/receipts/${v7()}`, delivery(fields));
  const deviations = () => run(larder.database.ownerUrl, 'SELECT * FROM deviation ORDER BY number');

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

  describe('a delivery', () => {
    test('that came cold is accepted, judged, and keeps the weight as it was entered', async () => {
      const fields = delivery({
        supplierEstablishmentNumber: 'Est. 00981-X',
        killDate: '2026-02-24',
        packDate: '2026-02-26',
        weight: { value: 61.25, unit: 'lb' },
      });
      const receiptId = v7();
      const { body } = await operator.put(`/receipts/${receiptId}`, fields);
      expect(body).toEqual({
        receiptId,
        rowId: receiptId,
        corrections: [],
        voided: false,
        code: expect.stringMatching(/^R-\d{4}$/),
        item: { itemId: pork.itemId, name: 'Pork shoulder', kind: 'meat' },
        supplier: { supplierId: holt.supplierId, name: 'Hollow Holt Meats' },
        supplierLot: 'HH-4471',
        supplierEstablishmentNumber: 'Est. 00981-X',
        killDate: '2026-02-24',
        packDate: '2026-02-26',
        weight: { value: 61.25, unit: 'lb', grams: 27782.5326625 },
        temperature: { value: 36, unit: '°F' },
        limit: receivedChilled,
        verdict: expect.objectContaining({
          ...{ kind: 'met', finding: 'value-within' },
          figures: { read: { value: '36', unit: '°F' }, spare: { value: '4', unit: '°F' } },
        }),
        decision: 'accepted',
        reason: '',
        leftGrams: 27782.5326625,
        flags: [],
        made: {
          personId: operator.personId,
          name: operator.name,
          at: '2026-03-02T07:55:00.000Z',
          recordedAt: '2026-03-02T08:00:00.000Z',
          station: 'tablet by the smoker',
        },
      });
      expect((await operator.get(`/receipts/${receiptId}`)).body).toEqual(body);
    });

    test('gets the next number of its shop', async () => {
      const numbers = await Promise.all([1, 2, 3].map(async () => Number(((await receive()).body as Receipt).code.slice(2))));
      const [first = 0] = numbers.sort((a, b) => a - b);
      expect(numbers).toEqual([first, first + 1, first + 2]);
      expect((await aReceipt(stranger)).code).toBe('R-0001');
    });

    test('sent twice is one delivery', async () => {
      const receiptId = v7();
      const replies = await Promise.all([0, 1, 2].map(() => operator.put(`/receipts/${receiptId}`, delivery())));
      expect(replies.map(({ body }) => body.code)).toEqual(Array(3).fill(replies[0]?.body.code));
      expect(code(await operator.put(`/receipts/${receiptId}`, delivery({ supplierLot: 'HH-4472' })))).toEqual([409, 'sent-differently']);
    });

    test('exactly at the printed figure meets the limit, in either unit', async () => {
      expect((await receive({ temperature: { value: 40, unit: '°F' } })).body.verdict.kind).toBe('met');
      expect((await receive({ temperature: { value: 4.4, unit: '°C' } })).body.verdict.kind).toBe('met');
    });

    test('of an item received by temperature has to be measured', async () => {
      expect(code(await receive({ temperature: undefined }))).toEqual([422, 'temperature-missing']);
    });

    test('of salt needs no temperature, and is not judged by one', async () => {
      const { body } = await receive({ itemId: salt.itemId, temperature: undefined });
      expect(body).not.toHaveProperty('verdict');
      expect((await receive({ itemId: salt.itemId, temperature: { value: 72, unit: '°F' } })).body).not.toHaveProperty('verdict');
    });

    test('that came too warm is not accepted without saying why', async () => {
      const reply = await receive({ temperature: { value: 45, unit: '°F' } });
      expect(code(reply)).toEqual([422, 'reason-missing']);
      expect(reply.body.detail).toBe(
        'Pork shoulder at 45 °F does not meet the limit it is received by. Say why it is accepted all the same.',
      );
    });

    test('that was accepted although it came too warm opens one deviation, even when the tablet sends twice', async () => {
      const before = await deviations();
      const receiptId = v7();
      const warm = delivery({ temperature: { value: 45, unit: '°F' }, reason: 'Surface only; the core was 38 °F.' });
      const [reply] = await Promise.all([0, 1].map(() => operator.put(`/receipts/${receiptId}`, warm)));
      const opened = (await deviations()).slice(before.length);
      expect(opened).toMatchObject([
        {
          id: reply?.body.deviationId,
          receipt_id: receiptId,
          subject_id: receiptId,
          description: `Delivery ${reply?.body.code} of Pork shoulder was accepted. 45 °F is 5 °F above 40 °F.`,
        },
      ]);
      expect(reply?.body.verdict.kind).toBe('missed');
    });

    test('that is refused needs a reason, opens no deviation, and leaves nothing to use', async () => {
      const before = await deviations();
      const warm = { temperature: { value: 51.5, unit: '°F' as const }, decision: 'refused' as const };
      expect(code(await receive(warm))).toEqual([422, 'reason-missing']);
      const { body } = await receive({ ...warm, reason: 'Sent back with the driver.' });
      expect(told(body)).toMatchObject({ decision: 'refused', leftGrams: 0, verdict: { kind: 'missed', margin: '11.5 °F over' } });
      expect(body).not.toHaveProperty('deviationId');
      expect(await deviations()).toEqual(before);
    });

    test('refused at the door, unopened, needs no temperature', async () => {
      expect((await receive({ temperature: undefined, decision: 'refused', reason: 'The boxes were torn.' })).status).toBe(200);
    });

    test('with °F typed where °C is set is asked about, not swallowed; kept and flagged when the person is sure', async () => {
      const reply = await receive({ temperature: { value: 38, unit: '°C' } });
      expect(code(reply)).toEqual([422, 'implausible-value']);
      expect(reply.body.detail).toBe('38 °C is unusual for Pork shoulder at receipt. Did you mean 38 °F?');
      const sure = await receive({
        temperature: { value: 38, unit: '°C' },
        sure: true,
        decision: 'refused',
        reason: 'The cooling had failed.',
      });
      expect(sure.body).toMatchObject({ temperature: { value: 38, unit: '°C' }, flags: ['unusual-value'], verdict: { kind: 'missed' } });
    });

    test('whose temperature no meat can have is not met, however sure the person is', async () => {
      const reply = await receive({ temperature: { value: -90, unit: '°C' }, sure: true, reason: 'The display said so.' });
      expect(reply.body).toMatchObject({ verdict: { kind: 'undetermined' }, deviationId: expect.any(String) });
    });

    test('written down late is kept and flagged; dated ahead it is asked for again', async () => {
      expect((await receive({ takenAt: '2026-03-02T07:30:00Z' })).body.flags).toEqual(['recorded-late']);
      expect(code(await receive({ takenAt: '2026-03-02T09:00:00Z' }))).toEqual([422, 'in-the-future']);
    });

    test('of curing salt may be stronger or weaker than usual; of pork there is nothing to be strong', async () => {
      const cure = await curingSalt(operator);
      const weak = await receive({ itemId: cure.itemId, temperature: undefined, fractionPercent: 5.88 });
      expect(weak.body).toMatchObject({ fractionPercent: 5.88, item: { substance: 'sodium nitrite' } });
      const reply = await receive({ fractionPercent: 5.88 });
      expect(reply.body).toMatchObject({
        status: 400,
        errors: [{ pointer: '#/fractionPercent', detail: 'Pork shoulder holds no restricted substance.' }],
      });
    });

    test.each([
      ['killed after it came', { killDate: '2026-03-09' }, { pointer: '#/killDate', detail: 'The kill date is after the delivery.' }],
      ['packed after it came', { packDate: '2027-02-26' }, { pointer: '#/packDate', detail: 'The pack date is after the delivery.' }],
      [
        'packed before it was killed',
        { killDate: '2026-02-24', packDate: '2026-02-23' },
        { pointer: '#/packDate', detail: 'The pack date is before the kill date.' },
      ],
      ['of no weight', { weight: { value: 0, unit: 'lb' as const } }, { pointer: '#/weight/value', detail: 'A weight is more than zero.' }],
      [
        'of less than nothing',
        { weight: { value: -2, unit: 'kg' as const } },
        { pointer: '#/weight/value', detail: 'A weight is more than zero.' },
      ],
      [
        'weighed finer than any scale',
        { weight: { value: 1.0005, unit: 'kg' as const } },
        { pointer: '#/weight/value', detail: 'At most 3 decimals.' },
      ],
      [
        'without the supplier’s lot',
        { supplierLot: '  ' },
        { pointer: '#/supplierLot', detail: 'Copy the supplier’s lot number from the label.' },
      ],
    ])('%s is refused, and the field is named', async (_case, fields, error) => {
      const reply = await receive(fields);
      expect(code(reply)).toEqual([400, 'invalid-input']);
      expect(reply.body.errors).toContainEqual(expect.objectContaining(error));
    });

    test('of an item or a supplier that this shop does not have is refused', async () => {
      expect((await receive({ itemId: v7() })).body.detail).toBe('There is no such item in this shop.');
      expect((await receive({ supplierId: v7() })).body.detail).toBe('There is no such supplier in this shop.');
      const foreign = await anItem(stranger);
      expect(code(await receive({ itemId: foreign.itemId }))).toEqual([404, 'not-found']);
    });

    test('is seen by everyone in the shop and by nobody of another', async () => {
      const { receiptId } = await aReceipt(operator);
      const inspector = await shop.hire('inspector');
      expect((await inspector.get(`/receipts/${receiptId}`)).body.receiptId).toBe(receiptId);
      expect(code(await stranger.get(`/receipts/${receiptId}`))).toEqual([404, 'not-found']);
    });

    test('is kept for good: the API’s role can neither change nor remove it', async () => {
      const name = `SELECT set_config('larderbook.establishment', '${shop.establishmentId}', false)`;
      await expect(run(larder.database.apiUrl, `${name}; UPDATE receipt SET grams = 1`)).rejects.toThrow(
        'permission denied for table receipt',
      );
      await expect(run(larder.database.apiUrl, `${name}; DELETE FROM receipt`)).rejects.toThrow('permission denied for table receipt');
    });
  });

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

  test.each(nastyBodies())('a body of %s is refused politely everywhere', async (_case, body) => {
    const paths = [`/suppliers/${v7()}`, `/items/${v7()}`, `/receipts/${v7()}`];
    const replies = await Promise.all(paths.map((path) => operator.put(path, body)));
    for (const reply of replies) expect([reply.status, reply.body.code]).toEqual([400, 'invalid-input']);
  });
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
