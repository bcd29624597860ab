import * as contract from '@larderbook/contracts';
import type { InputOf, ReplyOf } from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aSausageLot } from '../builders/a-sausage-lot';
import { anotherShop, aShop, done, type Worker } from '../builders/a-shop';
import { packingsOf, strike } from '../builders/correcting';
import { ask, code } from '../support/ask';
import { startApp, type TestApp } from '../support/start-app';

let larder: TestApp;
let kitchen: SausageKitchen;
let stranger: Worker;
let customerId: string;
beforeAll(async () => {
  larder = await startApp();
  kitchen = await aSausageKitchen(await aShop(larder), larder);
  stranger = (await anotherShop(larder)).owner;
  customerId = v7();
  await done(ask(kitchen.operator, contract.recordCustomer, { customerId, name: 'Fenwick Deli', address: '', contact: '' }));
});
afterAll(() => larder.close());

type Shipment = ReplyOf<typeof contract.recordShipment>;
const g = (value: number) => ({ value, unit: 'g' as const });
const packing = async (packingId: string) => (await packingsOf(kitchen.operator)).find((one) => one.packingId === packingId);

const pack = (lotId: string, fields: Partial<InputOf<typeof contract.packLot>> = {}, by = kitchen.operator) =>
  ask(by, contract.packLot, { packingId: v7(), lotId, count: 10, net: g(800), takenAt: kitchen.now(), ...fields });
const send = (lines: { packingId: string; count: number }[], fields: Partial<InputOf<typeof contract.recordShipment>> = {}) =>
  ask(kitchen.operator, contract.recordShipment, {
    ...{ shipmentId: v7(), customerId, document: '', lines, takenAt: kitchen.now(), ...fields },
  });
const sent = (packingId: string, count: number) => done<Shipment>(send([{ packingId, count }]));

describe('packages are corrected', () => {
  test('under the code they have; what they were stays, and their weight is there again', async () => {
    const { lotId, packingId } = await aSausageLot(kitchen, larder, 'packed');
    const now = await packing(packingId);
    await done(pack(lotId, { count: 9, amends: now?.rowId, reason: 'Counted wrongly.' }));
    expect(await packing(packingId)).toMatchObject({ code: now?.code, count: 9, left: 9 });
    const lot = await kitchen.showLot(lotId);
    expect(lot.packings).toHaveLength(1);
    expect(lot.corrections).toMatchObject([
      {
        about: 'packing',
        id: packingId,
        reason: 'Counted wrongly.',
        changes: [{ what: { code: 'says-packages' }, before: '10', after: '9' }, { what: { code: 'says-time' } }],
      },
    ]);
    const next = await done<ReplyOf<typeof contract.packLot>>(pack(lotId, { count: 1 }));
    expect(next.code).toMatch(/-P2$/);
  });

  test('but not to more than went in, nor below what was shipped, nor of another lot or shop', async () => {
    const { lotId, packingId } = await aSausageLot(kitchen, larder, 'reviewed');
    await sent(packingId, 4);
    const amends = (await packing(packingId))?.rowId ?? '';
    const no = (fields: Partial<InputOf<typeof contract.packLot>>, of = lotId, by = kitchen.operator) =>
      pack(of, { amends, reason: 'Counted wrongly.', ...fields }, by);
    expect(code(await no({ count: 13 }))).toEqual([422, 'more-than-there-is']);
    const fewer = await no({ count: 3 });
    expect(code(fewer)).toEqual([409, 'still-in-use']);
    expect(fewer.body.detail).toContain('Correct or void the shipment first.');
    expect(code(await no({ reason: '' }))).toEqual([422, 'reason-missing']);
    const other = await aSausageLot(kitchen, larder, 'cured');
    expect(code(await no({}, other.lotId))).toEqual([404, 'not-found']);
    expect(code(await no({}, lotId, stranger))).toEqual([404, 'not-found']);
    await done(no({ count: 4 }));
    expect(await packing(packingId)).toMatchObject({ count: 4, left: 0 });
  });

  test('after the review, which is taken back', async () => {
    const { lotId, packingId } = await aSausageLot(kitchen, larder, 'reviewed');
    const now = await packing(packingId);
    await done(pack(lotId, { count: 9, amends: now?.rowId, reason: 'Counted wrongly.' }));
    expect(await kitchen.showLot(lotId)).toMatchObject({
      ...{
        standing: 'to-review',
        review: { counts: false, takenBack: { what: { code: 'since-packing', figures: { code: now?.code, did: 'corrected' } } } },
      },
    });
    expect(code(await send([{ packingId, count: 1 }]))).toEqual([409, 'not-cleared']);
  });
});

describe('packages are voided', () => {
  test('and their weight is free again; the code is not given a second time', async () => {
    const { lotId, packingId } = await aSausageLot(kitchen, larder, 'packed');
    await done(strike(kitchen.operator, 'packing', (await packing(packingId))?.rowId ?? ''));
    expect(await kitchen.showLot(lotId)).toMatchObject({
      ...{ packings: [], packages: 0, corrections: [{ about: 'packing', voided: true, reason: 'Never happened.' }] },
    });
    const again = await done<ReplyOf<typeof contract.packLot>>(pack(lotId, { count: 12 }));
    expect(again.code).toMatch(/-P2$/);
  });

  test('not while some were shipped; with the shipment voided, they can be', async () => {
    const { packingId } = await aSausageLot(kitchen, larder, 'reviewed');
    const { rowId } = await sent(packingId, 4);
    const amends = (await packing(packingId))?.rowId ?? '';
    const no = await strike(kitchen.operator, 'packing', amends);
    expect(code(no)).toEqual([409, 'still-in-use']);
    expect(no.body.detail).toContain('Correct or void the shipment first.');
    await done(strike(kitchen.operator, 'shipment', rowId));
    expect(await packing(packingId)).toMatchObject({ left: 10, mayShip: true });
    await done(strike(kitchen.operator, 'packing', amends));
  });
});

describe('a shipment', () => {
  test('is corrected under its number: fewer packages come back, and who got them is told anew', async () => {
    const { packingId, lotId } = await aSausageLot(kitchen, larder, 'reviewed');
    const first = await sent(packingId, 10);
    const fixed = await done<Shipment>(send([{ packingId, count: 6 }], { amends: first.rowId, reason: 'Loaded six.' }));
    expect(fixed).toMatchObject({ shipmentId: first.shipmentId, number: first.number, lines: [{ count: 6 }] });
    expect(fixed.corrections).toMatchObject([{ reason: 'Loaded six.', changes: [{ before: '10', after: '6' }] }]);
    expect(await packing(packingId)).toMatchObject({ left: 4 });
    expect((await kitchen.showLot(lotId)).shipments).toMatchObject([{ number: first.number, count: 6 }]);
    const trace = await done<contract.Trace>(ask(kitchen.operator, contract.showTrace, { nodeId: lotId }));
    expect(trace.customers.flatMap(({ shipments }) => shipments.map(({ count }) => count))).toEqual([6]);
    const next = await sent(packingId, 1);
    expect(next.number).toBe(first.number + 1);
  });

  test('is not corrected to more than there is, nor to packages of a lot that is not cleared', async () => {
    const { packingId } = await aSausageLot(kitchen, larder, 'reviewed');
    const { rowId: amends } = await sent(packingId, 6);
    const open = await aSausageLot(kitchen, larder, 'packed');
    const no = (lines: { packingId: string; count: number }[]) => send(lines, { amends, reason: 'Loaded more.' });
    expect(code(await no([{ packingId, count: 11 }]))).toEqual([422, 'more-than-there-is']);
    expect(
      code(
        await no([
          { packingId, count: 6 },
          { packingId: open.packingId, count: 1 },
        ]),
      ),
    ).toEqual([409, 'not-cleared']);
    await done(no([{ packingId, count: 10 }]));
    expect(code(await no([{ packingId, count: 10 }]))).toEqual([409, 'already-amended']);
  });

  test('is voided: the packages are back, and it stays in the list', async () => {
    const { packingId } = await aSausageLot(kitchen, larder, 'reviewed');
    const { rowId, number } = await sent(packingId, 10);
    await done(strike(kitchen.operator, 'shipment', rowId, 'The van never came.'));
    expect(await packing(packingId)).toMatchObject({ left: 10, mayShip: true });
    const { shipments } = await done<ReplyOf<typeof contract.listShipments>>(ask(kitchen.operator, contract.listShipments, {}));
    expect(shipments.find((one) => one.number === number)).toMatchObject({
      ...{ voided: true, lines: [], corrections: [{ voided: true, reason: 'The van never came.' }] },
    });
    expect(code(await strike(stranger, 'shipment', rowId))).toEqual([404, 'not-found']);
  });

  test('cannot have left before its review was signed: the time is asked for again', async () => {
    const { packingId } = await aSausageLot(kitchen, larder, 'reviewed');
    const signed = larder.clock.now().getTime() - 60_000;
    const at = (ms: number) => new Date(ms).toISOString();
    const early = await send([{ packingId, count: 1 }], { takenAt: at(signed - 60_000) });
    expect(code(early)).toEqual([409, 'not-cleared-then']);
    expect(early.body.detail).toMatch(/^It is said to have left .*\. The review of lot .* was signed .*\.$/);
    expect(early.body.errors).toMatchObject([{ pointer: '#/takenAt' }]);
    const shipment = await done<Shipment>(send([{ packingId, count: 1 }], { takenAt: at(signed) }));
    const back = await send([{ packingId, count: 1 }], {
      ...{ amends: shipment.rowId, reason: 'Wrong time.', takenAt: at(signed - 1) },
    });
    expect(code(back)).toEqual([409, 'not-cleared-then']);
  });
});

describe('what was taken out', () => {
  const out = (lotId: string, fields: Partial<InputOf<typeof contract.recordRemoval>> = {}) =>
    ask(kitchen.operator, contract.recordRemoval, {
      ...{ removalId: v7(), lotId, kind: 'sample', weight: g(500), note: '', takenAt: kitchen.now(), ...fields },
    });

  test('is corrected and voided, and what it weighed is there again', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'cured');
    const { removalId } = await done<{ removalId: string }>(out(lotId));
    const { removalId: second } = await done<{ removalId: string }>(
      out(lotId, { weight: g(700), amends: removalId, reason: 'Weighed again.' }),
    );
    const lot = await kitchen.showLot(lotId);
    expect(lot.removals).toMatchObject([{ removalId, rowId: second, weight: { value: 700 } }]);
    expect(code(await out(lotId, { amends: removalId, reason: 'Again.' }))).toEqual([409, 'already-amended']);
    await done(out(lotId, { weight: { value: 10, unit: 'kg' }, amends: second, reason: 'All of it.' }));
    const [last] = (await kitchen.showLot(lotId)).removals;
    await done(strike(kitchen.operator, 'removal', last?.rowId ?? ''));
    expect((await kitchen.showLot(lotId)).removals).toEqual([]);
    await done(pack(lotId, { count: 12 }));
  });
});
