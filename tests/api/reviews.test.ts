import { Readable } from 'node:stream';
import * as contract from '@larderbook/contracts';
import type { ReplyOf } from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { codesOf } from '../../apps/api/src/platform/codes-of.test-data';
import { readBack } from '../../packages/documents/src/read-back.test-data';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aSausageLot } from '../builders/a-sausage-lot';
import { anotherShop, aShop, done, type Shop, type Worker } from '../builders/a-shop';
import { ask } from '../support/ask';
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

type Review = ReplyOf<typeof contract.showReview>;
const review = (lotId: string, by: Worker = kitchen.reviewer) => done<Review>(ask(by, contract.showReview, { lotId }));
const sign = (
  lotId: string,
  by: Worker = kitchen.reviewer,
  reviewId = v7(),
  statement = 'Every record was looked at; all is complete and met.',
) => ask(by, contract.signReview, { reviewId, lotId, statement });
const blocking = ({ findings }: Review) => findings.filter(({ blocks }) => blocks).map(({ kind, what }) => [kind, ...what]);
const told = ({ status, body }: Awaited<ReturnType<typeof sign>>) => [status, body.code, body.detail];

describe('a review', () => {
  test('finds nothing in the way of a lot whose records are complete and met', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'packed');
    const found = await review(lotId);
    expect(found).toMatchObject({ ready: true, maySign: true, soleWorker: false, recordedBy: ['The operator'] });
    expect(found.findings.filter(({ kind }) => kind === 'met').flatMap(({ what }) => what)).toEqual(
      ['Cure', 'Cook', 'Chill', 'Cold room', 'Label'].map((point) => ({ code: 'point-met', figures: { point } })),
    );
  });

  test('names what is missing, running and not packed', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'cured');
    await kitchen.read(lotId, 'cook', { entered: { value: 120, unit: '°F' } });
    expect(blocking(await review(lotId))).toEqual([
      ['missing', { code: 'nothing-packed' }],
      ['missing', { code: 'point-running', figures: { point: 'Cook' } }],
      ...['Chill', 'Cold room', 'Label'].map((point) => ['missing', { code: 'point-not-recorded', figures: { point } }]),
    ]);
  });

  test('tells an operator that signing is for others', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'packed');
    expect(await review(lotId, kitchen.operator)).toMatchObject({
      maySign: false,
      whyNot: 'a-reviewer-signs',
    });
  });
});

describe('a review sees, as something to judge and no obstacle', () => {
  const remarks = ({ findings }: Review) =>
    findings
      .filter(({ kind, about }) => kind === 'flagged' && about !== 'entry')
      .map(({ about, what, next }) => [about, what, codesOf(next)]);
  const salt = (lotId: string, value: number) => kitchen.weighCure(lotId, { itemId: kitchen.items.salt, weight: { value, unit: 'g' } });
  const lb = (value: string) => ({ value, unit: 'lb' });
  const minutes = (count: number) => ({ value: String(count * 60_000), unit: 'ms' });
  const packed = (count: number) => ({
    ...{ meat: { value: 10, unit: 'kg' as const }, cure: { value: 25, unit: 'g' as const } },
    packages: { count, net: { value: 800, unit: 'g' as const } },
  });

  test('nothing, of a lot that lost what its formula expects and holds what it asks for', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'labelled', packed(11));
    await salt(lotId, 160);
    const pack = { packingId: v7(), lotId, count: 11, net: { value: 800, unit: 'g' as const }, takenAt: kitchen.now() };
    await done(ask(kitchen.operator, contract.packLot, pack));
    expect(remarks(await review(lotId))).toEqual([]);
  });

  test('weight that the expected loss does not explain, until it is recorded what became of it', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'packed', packed(9));
    const lost = { code: 'so-much-lost', figures: { lost: lb('6.228'), wentIn: lb('22.101') } };
    const gone = {
      code: 'more-gone-than-expected',
      figures: { yield: { value: '90', unit: '%' }, least: lb('1.105'), most: lb('3.315'), beyond: lb('2.913') },
    };
    const said = [['weight', [lost, gone], ['count-and-weigh-again']]];
    const found = await review(lotId);
    expect([remarks(found), found.ready]).toEqual([said, true]);
    const waste = {
      removalId: v7(),
      lotId,
      kind: 'waste' as const,
      weight: { value: 2, unit: 'kg' as const },
      note: 'Fell.',
      takenAt: kitchen.now(),
    };
    await done(ask(kitchen.operator, contract.recordRemoval, waste));
    expect(remarks(await review(lotId))).toEqual([]);
    await sign(lotId);
    const { body } = await shop.owner.get(`/lots/${lotId}/lot-record.pdf`);
    expect((await readBack(Readable.from([body as Buffer]))).text).not.toContain('more is gone');
  });

  test('an ingredient that was weighed in twice, until one of both is voided', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'packed', packed(11));
    await salt(lotId, 160);
    const { weighingId } = await salt(lotId, 160);
    const once = { value: '160', unit: 'g' };
    const twice = {
      code: 'too-much-in-parts',
      figures: { item: 'Salt', weighed: { value: '320', unit: 'g' }, target: once, off: once, count: 2, parts: [once, once] },
    };
    expect(remarks(await review(lotId))).toEqual([['weighing', [twice], ['void-or-correct-weighing']]]);
    await done(
      ask(kitchen.operator, contract.voidRecord, { voidId: v7(), what: 'weighing', amends: weighingId, reason: 'Written twice.' }),
    );
    expect(remarks(await review(lotId))).toEqual([]);
  });

  test('fewer readings than the plan asks for', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'cured');
    await kitchen.read(lotId, 'cook', { entered: { value: 120, unit: '°F' } });
    larder.clock.moveOn(60 * 60_000);
    await kitchen.read(lotId, 'cook', { entered: { value: 160, unit: '°F' } });
    expect(remarks(await review(lotId))).toEqual([
      [
        'control-point',
        [{ code: 'too-few-in-time', figures: { point: 'Cook', count: 2, missing: 1, longest: minutes(60), every: minutes(30) } }],
        ['look-for-readings'],
      ],
    ]);
  });
});

describe('signing', () => {
  test('clears the lot, and is kept with what the reviewer saw', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'packed');
    const reviewId = v7();
    expect((await sign(lotId, kitchen.reviewer, reviewId)).body).toEqual({ reviewId, lotId });
    expect(await kitchen.showLot(lotId)).toMatchObject({
      standing: 'cleared',
      review: { by: 'The reviewer', soleWorker: false, counts: true },
    });
  });

  test('twice with the same words lands once; with other words it is refused', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'packed');
    const reviewId = v7();
    const first = await sign(lotId, kitchen.reviewer, reviewId);
    expect((await sign(lotId, kitchen.reviewer, reviewId)).body).toEqual(first.body);
    expect(told(await sign(lotId, kitchen.reviewer, reviewId, 'Something else.')).slice(0, 2)).toEqual([409, 'sent-differently']);
  });

  test('is refused while something is missing, and says what', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'labelled');
    expect(told(await sign(lotId))).toEqual([
      409,
      'review-incomplete',
      'Nothing of this lot has been packed. Pack it: the review is of what will leave.',
    ]);
  });

  test('is refused while a missed limit is not settled', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'packed');
    await kitchen.read(lotId, 'coldRoom', { entered: { value: 52, unit: '°F' } });
    const [status, problem, detail] = told(await sign(lotId));
    expect([status, problem]).toEqual([409, 'review-incomplete']);
    expect(detail).toMatch(/Cold room: missed\. 52 °F is 1[01] °F above .* Deviation \d+ is open\. .* Record the corrective action\./);
  });

  test('is refused to whoever made one of the lot’s records, even only by packing it', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'labelled');
    const pack = { packingId: v7(), lotId, count: 2, net: { value: 800, unit: 'g' as const }, takenAt: kitchen.now() };
    await done(ask(kitchen.reviewer, contract.packLot, pack));
    expect(told(await sign(lotId))).toEqual([
      409,
      'own-records',
      'You made records of this lot. Somebody who made none of them signs its review.',
    ]);
    expect((await sign(lotId, shop.owner)).status).toBe(200);
  });

  test('no longer counts once something that it should have seen is recorded after it', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'reviewed');
    await kitchen.weighCure(lotId, { itemId: kitchen.items.salt, weight: { value: 100, unit: 'g' } });
    expect(await kitchen.showLot(lotId)).toMatchObject({ standing: 'to-review', review: { counts: false } });
    expect((await sign(lotId)).status).toBe(200);
    expect(await kitchen.showLot(lotId)).toMatchObject({ standing: 'cleared', review: { counts: true } });
  });

  test('is not for the operator, the inspector, or another shop; the inspector may look', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'packed');
    const inspector = await shop.hire('inspector');
    const { owner: stranger } = await anotherShop(larder);
    expect(told(await sign(lotId, kitchen.operator)).slice(0, 2)).toEqual([403, 'not-allowed']);
    expect(told(await sign(lotId, inspector)).slice(0, 2)).toEqual([403, 'not-allowed']);
    expect(told(await sign(lotId, stranger)).slice(0, 2)).toEqual([404, 'not-found']);
    expect((await ask(stranger, contract.showReview, { lotId })).status).toBe(404);
    expect(await review(lotId, inspector)).toMatchObject({ ready: true, maySign: false });
  });
});

describe('in a one-person shop', () => {
  let alone: TestApp;
  let small: Shop;
  let own: SausageKitchen;
  beforeAll(async () => {
    alone = await startApp();
    small = await aShop(alone);
    own = await aSausageKitchen(small, alone, { isAlone: true });
    await small.hire('inspector'); // who only looks, and is no worker
  });
  afterAll(() => alone.close());

  test('the sole worker may sign, and the record says so', async () => {
    const { lotId } = await aSausageLot(own, alone, 'packed');
    expect(await review(lotId, small.owner)).toMatchObject({
      maySign: true,
      soleWorker: true,
      recordedBy: ['Odile Farrow'],
    });
    expect((await sign(lotId, small.owner)).status).toBe(200);
    expect(await own.showLot(lotId)).toMatchObject({ standing: 'cleared', review: { soleWorker: true } });
    const { body } = await small.owner.get(`/lots/${lotId}/lot-record.pdf`);
    expect((await readBack(Readable.from([body as Buffer]))).text).toContain(
      'Signed by the only worker of the establishment, who also made the records.',
    );
  });

  test('not any more once somebody else works there', async () => {
    const { lotId } = await aSausageLot(own, alone, 'packed');
    await small.hire('operator');
    expect(told(await sign(lotId, small.owner)).slice(0, 2)).toEqual([409, 'own-records']);
  });
});
