import * as contract from '@larderbook/contracts';
import type { ReplyOf } from '@larderbook/contracts';
import { v7 } from 'uuid';
import { describe, expect, test } from 'vitest';
import { aPackingRoom, code, g, inStock, kg, kitchen, larder, pack, packed, said, ship, shipped, shop } from '../builders/a-packing-room';
import { aSausageLot } from '../builders/a-sausage-lot';
import { act, decide, settle } from '../builders/a-settlement';
import { done } from '../builders/a-shop';
import { ask } from '../support/ask';

aPackingRoom();

describe('what ships of a lot', () => {
  test('what was condemned in its packages does not leave', async () => {
    const { lotId, code: lotCode, packingId } = await aSausageLot(kitchen, larder, 'packed');
    await condemn(lotId, kg(6.4)); // eight of ten packages
    await done(ask(kitchen.reviewer, contract.signReview, { reviewId: v7(), lotId, statement: 'Complete.' }));
    expect(said(await ship([{ packingId, count: 3 }]))).toEqual([
      422,
      'more-than-there-is',
      `6,400 g of lot ${lotCode} were condemned in their packages. 1,600 g may ship, 2,400 g were asked for.`,
    ]);
    await shipped([{ packingId, count: 2 }]);
    expect(code(await ship([{ packingId, count: 1 }]))).toEqual([409, 'not-cleared']);
    expect(await inStock(packingId)).toMatchObject({ left: 8, mayShip: false });
  });

  describe('of a lot of which some was condemned', () => {
    const lb = (value: number) => ({ value, unit: 'lb' as const });
    const sign = (lotId: string) => ask(kitchen.reviewer, contract.signReview, { reviewId: v7(), lotId, statement: 'Complete.' });

    test('nothing ships while 25.9 of 28.7 lb are undecided, and no more than those afterwards', async () => {
      const { lotId, deviationId, packingId } = await aHeldLot();
      await act(kitchen.operator, deviationId, kitchen.now());
      await done(decide(shop.owner, deviationId, { decision: 'condemn', weight: lb(2.8) }));
      const closed = await ask(shop.owner, contract.closeDeviation, { closingId: v7(), deviationId, note: '' });
      expect([closed.status, closed.body.code, closed.body.details.at(-1).figures.undecided]).toEqual([
        409,
        'product-undecided',
        { value: '25.9', unit: 'lb' },
      ]);
      expect(code(await sign(lotId))).toEqual([409, 'review-incomplete']);
      expect(said(await ship([{ packingId, count: 18 }]))[1]).toBe('not-cleared');

      await settle(shop.owner, deviationId, kitchen.now());
      await done(sign(lotId));
      expect(code(await ship([{ packingId, count: 26 }]))).toEqual([422, 'more-than-there-is']);
      await shipped([{ packingId, count: 25 }]);
    });

    test('all of it condemned: the lot says so, and none of its packages may ship', async () => {
      const { lotId, deviationId, packingId } = await aHeldLot();
      await settle(shop.owner, deviationId, kitchen.now(), [{ decision: 'condemn' }]);
      expect(await kitchen.showLot(lotId)).toMatchObject({ standing: 'condemned' });
      expect(await inStock(packingId)).toMatchObject({ standing: 'condemned', mayShip: false });
      expect(said(await ship([{ packingId, count: 1 }]))[1]).toBe('not-cleared');
      const { lots } = await done<ReplyOf<typeof contract.listLots>>(ask(kitchen.operator, contract.listLots, { standing: 'condemned' }));
      expect(lots.map((lot) => lot.lotId)).toContain(lotId);
    });

    test('condemned before anything is packed, it is not packed', async () => {
      const { lotId } = await aSausageLot(kitchen, larder, 'cured');
      await condemn(lotId, kg(2.025));
      expect(code(await pack(lotId, { count: 1, net: kg(8.001) }))).toEqual([422, 'more-than-there-is']);
      await packed(lotId, { count: 1, net: kg(8) });
    });

    test('what had left is let go or called back, and only what is here can be condemned', async () => {
      const { lotId, packingId } = await aSausageLot(kitchen, larder, 'reviewed'); // 10 packages of 800 g of 10.025 kg
      await shipped([{ packingId, count: 5 }]);
      const deviationId = await openedOn(lotId);
      const tooMuch = await decide(shop.owner, deviationId, { decision: 'condemn', weight: kg(10.025) });
      const figures = {
        asked: { value: '10.025', unit: 'kg' },
        undecided: { value: '10.025', unit: 'kg' },
        here: { value: '6.025', unit: 'kg' },
      };
      expect(tooMuch.body).toMatchObject({ code: 'more-than-there-is', details: [{ code: 'more-than-is-here', figures }] });
      await done(decide(shop.owner, deviationId, { decision: 'condemn', weight: kg(6.025) }));
      expect(code(await decide(shop.owner, deviationId, { decision: 'condemn', weight: kg(4) }))).toEqual([422, 'more-than-there-is']);
      await done(decide(shop.owner, deviationId, { decision: 'recall', weight: kg(3) }));
      expect(code(await decide(shop.owner, deviationId, { decision: 'recall', weight: kg(1.001) }))).toEqual([422, 'more-than-there-is']);
      const closed = await settle(shop.owner, deviationId, kitchen.now(), [{ reason: 'Eaten, nobody fell ill.' }]);
      expect(closed).toMatchObject({ open: false, shippedAlready: true, undecided: { grams: 0 } });
    });
  });

  describe('of a lot of which some is to be reworked', () => {
    test('its packages stay, until they are opened for a later lot', async () => {
      const { lotId, packingId, code: lotCode } = await aSausageLot(kitchen, larder, 'packed'); // 10 packages of 800 g
      const deviationId = await openedOn(lotId);
      await settle(shop.owner, deviationId, kitchen.now(), [{ decision: 'rework', weight: kg(1.6) }, {}]);
      await done(ask(kitchen.reviewer, contract.signReview, { reviewId: v7(), lotId, statement: 'Complete.' }));
      expect(said(await ship([{ packingId, count: 9 }]))).toEqual([
        422,
        'more-than-there-is',
        `1,600 g of lot ${lotCode} are to be reworked. 6,400 g may ship, 7,200 g were asked for.`,
      ]);
      const into = await kitchen.startLot();
      const before = await kitchen.showLot(lotId);
      expect(code(await reworkInto(into.lotId, lotId, 4))).toEqual([422, 'more-than-there-is']);
      await done(reworkInto(into.lotId, lotId, 1.6));
      expect(before.standing).toBe('cleared');
      expect(code(await ship([{ packingId, count: 9 }]))).toEqual([422, 'more-than-there-is']);
      await shipped([{ packingId, count: 8 }]);
    });

    test('loose, it is not packed, and the lot asks for it when nothing else is left', async () => {
      const { lotId } = await aSausageLot(kitchen, larder, 'cured');
      const deviationId = await openedOn(lotId);
      await settle(shop.owner, deviationId, kitchen.now(), [{ decision: 'rework' }]);
      expect(await kitchen.showLot(lotId)).toMatchObject({
        standing: 'in-work',
        because: [{ code: 'all-to-rework' }],
      });
      const [status, problem, detail] = said(await pack(lotId, { count: 1, net: g(25) }));
      expect([status, problem]).toEqual([422, 'more-than-there-is']);
      expect(detail).toContain('10.025 kg are to be reworked');
      await done(reworkInto((await kitchen.startLot()).lotId, lotId, 10.025));
      expect((await kitchen.showLot(lotId)).standing).toBe('ended');
    });
  });
});

/** A deviation on a lot, opened by hand. */
async function openedOn(lotId: string, description = 'Seals leak.'): Promise<string> {
  const deviationId = v7();
  await done(ask(kitchen.operator, contract.openDeviation, { deviationId, lotId, description, takenAt: kitchen.now() }));
  return deviationId;
}

/** A deviation on a lot, opened by hand, settled by condemning some of it and releasing the rest, and closed. */
async function condemn(lotId: string, weight: { value: number; unit: 'kg' }): Promise<void> {
  const deviationId = await openedOn(lotId);
  await settle(shop.owner, deviationId, kitchen.now(), [{ decision: 'condemn', weight }, {}]);
}

const reworkInto = (lotId: string, sourceLotId: string, value: number) =>
  ask(kitchen.operator, contract.putIn, { inputId: v7(), lotId, sourceLotId, weight: kg(value), takenAt: kitchen.now() });

/** 28.7 lb, 28 of them in packages of a pound, and a deviation on it; every control point is met. */
async function aHeldLot() {
  const lb = (value: number) => ({ value, unit: 'lb' as const });
  const weights = { meat: lb(28.63), cure: lb(0.07), packages: { count: 28, net: lb(1) } };
  const lot = await aSausageLot(kitchen, larder, 'packed', weights);
  return { ...lot, deviationId: await openedOn(lot.lotId) };
}
