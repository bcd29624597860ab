import { Readable } from 'node:stream';
import * as contract from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { readBack } from '../../packages/documents/src/read-back.test-data';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aSausageLot, ship } from '../builders/a-sausage-lot';
import { anotherShop, aShop, done, type Shop, type Worker } from '../builders/a-shop';
import { ask, code } from '../support/ask';
import { startApp, type TestApp } from '../support/start-app';

let larder: TestApp;
let shop: Shop;
let kitchen: SausageKitchen;
beforeAll(async () => {
  larder = await startApp();
  shop = await aShop(larder);
  kitchen = await aSausageKitchen(shop, larder);
});
afterAll(() => larder.close());

const reviewOf = async (lotId: string) => (await kitchen.showLot(lotId)).review?.reviewId ?? '';
const takeBack = (by: Worker, reviewId: string, fields: object = {}) =>
  ask(by, contract.takeBackReview, { takingBackId: v7(), reviewId, reason: 'I signed for the wrong lot.', ...fields });
const sign = (lotId: string, by: Worker = kitchen.reviewer) =>
  done(ask(by, contract.signReview, { reviewId: v7(), lotId, statement: 'Complete and met.' }));
const showReview = (lotId: string) =>
  done<contract.ReplyOf<typeof contract.showReview>>(ask(kitchen.reviewer, contract.showReview, { lotId }));

const takenBack = { code: 'review-taken-back', figures: { reason: 'I signed for the wrong lot.' } };

describe('a review that is taken back', () => {
  test('clears its lot no more, stays to be seen with the reason, and may be signed anew', async () => {
    const { lotId, packingId } = await aSausageLot(kitchen, larder, 'reviewed');
    await done(takeBack(kitchen.reviewer, await reviewOf(lotId)));
    expect(await kitchen.showLot(lotId)).toMatchObject({
      standing: 'to-review',
      because: [{ code: 'packed-and-settled' }, takenBack, { code: 'next-review-again' }],
      review: {
        counts: false,
        takenBack: { what: takenBack, reason: 'I signed for the wrong lot.', by: 'The reviewer', at: kitchen.now() },
      },
    });
    await expect(ship(kitchen, packingId, 1)).rejects.toThrow('not-cleared');
    await sign(lotId);
    expect(await kitchen.showLot(lotId)).toMatchObject({ standing: 'cleared', reviews: [{ counts: false }, { counts: true }] });
    await ship(kitchen, packingId, 1);
  });

  test('names what has shipped under it to whoever reviews it again', async () => {
    const { lotId, packingId, code: lotCode } = await aSausageLot(kitchen, larder, 'reviewed');
    await ship(kitchen, packingId, 4);
    const { shipments } = await kitchen.showLot(lotId);
    await done(takeBack(kitchen.reviewer, await reviewOf(lotId)));
    const left = { code: 'left-under-it', figures: { count: 4 } };
    expect((await kitchen.showLot(lotId)).because).toEqual([
      { code: 'packed-and-settled' },
      takenBack,
      left,
      { code: 'next-review-again' },
    ]);
    const { findings, ready } = await showReview(lotId);
    expect(findings).toContainEqual({
      ...{ about: 'shipment', kind: 'flagged', blocks: false },
      what: [
        {
          code: 'left-under-review',
          figures: {
            ...{ count: 4, code: `${lotCode}-P1`, number: String(shipments[0]?.number), customer: 'Fenwick Deli' },
            ...{ who: 'The reviewer', reason: 'I signed for the wrong lot.' },
          },
        },
      ],
      next: [{ code: 'consider-a-recall' }],
    });
    expect(ready).toBe(true);
    await sign(lotId);
    expect((await showReview(lotId)).findings.filter(({ about }) => about === 'shipment')).toHaveLength(1);
  });

  test('calls back into review a lot of which all has left', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'shipped');
    await done(takeBack(shop.owner, await reviewOf(lotId)));
    expect(await kitchen.showLot(lotId)).toMatchObject({
      standing: 'to-review',
      because: [takenBack, { code: 'left-under-it', figures: { count: 10 } }, { code: 'next-review-again' }],
    });
    const { lots } = await done<contract.ReplyOf<typeof contract.listLots>>(
      ask(kitchen.reviewer, contract.listLots, { standing: 'to-review' }),
    );
    expect(lots.map((one) => one.lotId)).toContain(lotId);
    await sign(lotId);
    expect((await kitchen.showLot(lotId)).standing).toBe('shipped');
  });

  test('by whoever signed it or the owner, once, with a reason, in this shop', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'reviewed');
    const reviewId = await reviewOf(lotId);
    expect(code(await takeBack(kitchen.operator, reviewId))).toEqual([403, 'not-allowed']);
    expect(code(await takeBack(await shop.hire('reviewer'), reviewId))).toEqual([403, 'not-allowed']);
    expect(code(await takeBack((await anotherShop(larder)).owner, reviewId))).toEqual([404, 'not-found']);
    expect(code(await takeBack(kitchen.reviewer, v7()))).toEqual([404, 'not-found']);
    expect(code(await takeBack(kitchen.reviewer, reviewId, { reason: ' ' }))).toEqual([400, 'invalid-input']);
    const sent = { takingBackId: v7() };
    await done(takeBack(shop.owner, reviewId, sent));
    await done(takeBack(shop.owner, reviewId, sent));
    expect(code(await takeBack(shop.owner, reviewId, { ...sent, reason: 'Another.' }))).toEqual([409, 'sent-differently']);
    expect(code(await takeBack(kitchen.reviewer, reviewId))).toEqual([409, 'taken-back-already']);
  });

  test('not when another has taken its place, nor when something took it back before', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'reviewed');
    const first = await reviewOf(lotId);
    await sign(lotId);
    expect(code(await takeBack(kitchen.reviewer, first))).toEqual([409, 'taken-back-already']);
    await kitchen.read(lotId, 'coldRoom', { entered: { value: 52, unit: '°F' } });
    expect(code(await takeBack(kitchen.reviewer, await reviewOf(lotId)))).toEqual([409, 'taken-back-already']);
  });

  test('is told on the lot record', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'reviewed');
    await done(takeBack(kitchen.reviewer, await reviewOf(lotId)));
    const { body } = await shop.owner.get(`/lots/${lotId}/lot-record.pdf`);
    const { text } = await readBack(Readable.from([body as Buffer]));
    expect(text).toContain('Taken back: I signed for the wrong lot. By The reviewer.');
    expect(text).toContain('The review was taken back: I signed for the wrong lot. Next: review it again.');
  });
});
