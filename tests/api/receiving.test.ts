import type { Receipt } from '@larderbook/contracts';
import { receivedChilled } from '@larderbook/haccp';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { aReceipt } from '../builders/a-receipt';
import { aReceivingShop, type ReceivingShop } from '../builders/a-receiving-shop';
import { anItem, curingSalt } from '../builders/an-item';
import { code } from '../support/ask';
import { run } from '../support/database';
import { startApp, type TestApp } from '../support/start-app';
import { told } from '../support/told';

let larder: TestApp;
let shop: ReceivingShop['shop'];
let operator: ReceivingShop['operator'];
let stranger: ReceivingShop['stranger'];
let pork: ReceivingShop['pork'];
let salt: ReceivingShop['salt'];
let holt: ReceivingShop['holt'];
let delivery: ReceivingShop['delivery'];
let receive: ReceivingShop['receive'];

beforeAll(async () => {
  larder = await startApp();
  ({ shop, operator, stranger, pork, salt, holt, delivery, receive } = await aReceivingShop(larder));
});
afterAll(() => larder.close());

const deviations = () => run(larder.database.ownerUrl, 'SELECT * FROM deviation ORDER BY number');

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
    expect(reply.body.details).toEqual([
      { code: 'not-met-at-receipt', figures: { name: 'Pork shoulder', read: { value: '45', unit: '°F' } } },
      { code: 'say-why-accepted' },
    ]);
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
        description: null,
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
    expect(reply.body.details).toEqual([
      { code: 'unusual-at-receipt', figures: { entered: { value: '38', unit: '°C' }, item: 'Pork shoulder' } },
      { code: 'did-you-mean', figures: { meant: { value: '38', unit: '°F' } } },
    ]);
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
