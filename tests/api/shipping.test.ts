import * as contract from '@larderbook/contracts';
import type { ReplyOf } from '@larderbook/contracts';
import { v7 } from 'uuid';
import { describe, expect, test } from 'vitest';
import {
  aCustomer,
  aPackingRoom,
  code,
  customer,
  inspector,
  inStock,
  kitchen,
  larder,
  said,
  ship,
  shipped,
  stranger,
} from '../builders/a-packing-room';
import { aSausageLot } from '../builders/a-sausage-lot';
import { done } from '../builders/a-shop';
import { ask } from '../support/ask';

aPackingRoom();

describe('shipping', () => {
  test('numbers shipments one after the other and shows what left, to whom', async () => {
    const { packingId, code: lotCode, lotId } = await aSausageLot(kitchen, larder, 'reviewed');
    const first = await shipped([{ packingId, count: 4 }]);
    const second = await shipped([{ packingId, count: 6 }]);
    expect(second.number).toBe(first.number + 1);
    expect(first).toMatchObject({
      customer: { name: 'Fenwick Deli' },
      made: { name: 'The operator' },
      lines: [{ packingCode: `${lotCode}-P1`, lotId, lotCode, productName: 'Smoked sausage', count: 4, netGrams: 3200 }],
    });
    const { shipments } = await done<ReplyOf<typeof contract.listShipments>>(ask(inspector, contract.listShipments, {}));
    expect(shipments.slice(0, 2).map(({ number }) => number)).toEqual([second.number, first.number]);
    expect(await kitchen.showLot(lotId)).toMatchObject({ standing: 'shipped', packagesLeft: 0 });
  });

  test('lists a page of what left before a moment', async () => {
    const { packingId } = await aSausageLot(kitchen, larder, 'reviewed');
    const { number } = await shipped([{ packingId, count: 1 }]);
    const before = kitchen.now();
    larder.clock.moveOn(1000);
    await shipped([{ packingId, count: 1 }]);
    const page = async (moment: string) =>
      done<ReplyOf<typeof contract.listShipments>>(ask(inspector, contract.listShipments, { before: moment }));
    const [newest] = (await page(kitchen.now())).shipments;
    expect(newest?.number).toBe(number);
    expect((await page(before)).shipments.map((shipment) => shipment.number)).not.toContain(number);
    expect(await page('2026-01-01T00:00:00Z')).toEqual({ shipments: [], more: false });
  });

  test('refuses a lot that is not cleared, and names it and why; nothing of the load leaves', async () => {
    const cleared = await aSausageLot(kitchen, larder, 'reviewed');
    const waiting = await aSausageLot(kitchen, larder, 'packed');
    const reply = await ship([
      { packingId: cleared.packingId, count: 1 },
      { packingId: waiting.packingId, count: 1 },
    ]);
    const [status, problem, detail] = said(reply);
    expect([status, problem]).toEqual([409, 'not-cleared']);
    expect(detail).toMatch(new RegExp(`^Lot ${waiting.code}: .*pre-shipment review`));
    expect(reply.body.errors).toMatchObject([{ pointer: '#/lines/1', detail }]);
    expect(await inStock(cleared.packingId)).toMatchObject({ left: 10 });
  });

  test('refuses a cleared lot again as soon as a deviation opens on it', async () => {
    const { lotId, packingId } = await aSausageLot(kitchen, larder, 'reviewed');
    await done(
      ask(kitchen.operator, contract.openDeviation, {
        deviationId: v7(),
        lotId,
        description: 'Glass broke over the table.',
        takenAt: kitchen.now(),
      }),
    );
    const [status, problem, detail] = said(await ship([{ packingId, count: 1 }]));
    expect([status, problem]).toEqual([409, 'not-cleared']);
    expect(detail).toMatch(/Glass broke over the table\./);
  });

  test('no more than is left, named for every run that is short', async () => {
    const { packingId, code: lotCode } = await aSausageLot(kitchen, larder, 'reviewed');
    await shipped([{ packingId, count: 7 }]);
    expect(said(await ship([{ packingId, count: 4 }]))).toEqual([
      422,
      'more-than-there-is',
      `3 packages are left of ${lotCode}-P1, 4 were asked for.`,
    ]);
  });

  test('of two that would ship the rest at the same moment, one does', async () => {
    const { packingId } = await aSausageLot(kitchen, larder, 'reviewed');
    const replies = await Promise.all([ship([{ packingId, count: 6 }]), ship([{ packingId, count: 6 }])]);
    expect(replies.map(({ status }) => status).sort()).toEqual([200, 422]);
    expect(await inStock(packingId)).toMatchObject({ left: 4 });
  });

  test('sent twice leaves once', async () => {
    const { packingId } = await aSausageLot(kitchen, larder, 'reviewed');
    const load = { shipmentId: v7(), customerId: await aCustomer(), takenAt: kitchen.now() };
    const first = await ship([{ packingId, count: 2 }], load);
    expect((await ship([{ packingId, count: 2 }], load)).body).toEqual(first.body);
    expect(code(await ship([{ packingId, count: 3 }], load))).toEqual([409, 'sent-differently']);
    expect(await inStock(packingId)).toMatchObject({ left: 8 });
  });

  test('names a customer and packages of this shop', async () => {
    const { packingId } = await aSausageLot(kitchen, larder, 'reviewed');
    expect(code(await ship([{ packingId, count: 1 }], { customerId: v7() }))).toEqual([404, 'not-found']);
    expect(
      said(
        await ship([
          { packingId, count: 1 },
          { packingId: v7(), count: 1 },
        ]),
      ),
    ).toEqual([404, 'not-found', 'Line 2 names packages that are not in this shop.']);
    expect(
      code(
        await ship([
          { packingId, count: 1 },
          { packingId, count: 1 },
        ]),
      ),
    ).toEqual([400, 'invalid-input']);
  });

  test('is not for the inspector, nor of another shop’s packages', async () => {
    const { packingId } = await aSausageLot(kitchen, larder, 'reviewed');
    expect(code(await ship([{ packingId, count: 1 }], {}, inspector))).toEqual([403, 'not-allowed']);
    const theirs = (await done<ReplyOf<typeof contract.recordCustomer>>(customer({}, stranger))).customerId;
    expect(code(await ship([{ packingId, count: 1 }], { customerId: theirs }, stranger))).toEqual([404, 'not-found']);
    expect((await done<ReplyOf<typeof contract.listShipments>>(ask(stranger, contract.listShipments, {}))).shipments).toEqual([]);
  });
});
