import * as contract from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { aLoadingDock, g, kg, type LoadingDock } from '../builders/a-loading-dock';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aSausageLot } from '../builders/a-sausage-lot';
import { act, close, decide, showDeviation } from '../builders/a-settlement';
import { aShop, done, type Shop } from '../builders/a-shop';
import { packingsOf, strike } from '../builders/correcting';
import { ask, code } from '../support/ask';
import { startApp, type TestApp } from '../support/start-app';

let larder: TestApp;
let shop: Shop;
let kitchen: SausageKitchen;
let today: LoadingDock['today'];
let openOn: LoadingDock['openOn'];
let send: LoadingDock['send'];
let pack: LoadingDock['pack'];
let sign: LoadingDock['sign'];
let mayShip: LoadingDock['mayShip'];
let made: LoadingDock['made'];

beforeAll(async () => {
  larder = await startApp();
  shop = await aShop(larder);
  kitchen = await aSausageKitchen(shop, larder);
  ({ today, openOn, send, pack, sign, mayShip, made } = await aLoadingDock(kitchen, shop));
});
afterAll(() => larder.close());

type Shipment = contract.ReplyOf<typeof contract.recordShipment>;

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
