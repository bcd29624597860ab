import * as contract from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aCurve, aSausageLot } from '../builders/a-sausage-lot';
import { act, close, settle } from '../builders/a-settlement';
import { aShop, done, type Shop } from '../builders/a-shop';
import { ask } from '../support/ask';
import { startApp, type TestApp } from '../support/start-app';
import { told } from '../support/told';

const minute = 60_000;
let larder: TestApp;
let shop: Shop;
let kitchen: SausageKitchen;
beforeAll(async () => {
  larder = await startApp();
  shop = await aShop(larder);
  kitchen = await aSausageKitchen(shop, larder);
});
afterAll(() => larder.close());
beforeEach(() => larder.clock.moveOn(10 * minute));

const sign = (lotId: string) => ask(shop.owner, contract.signReview, { reviewId: v7(), lotId, statement: 'Complete and met.' });
const signed = async (lotId: string) => {
  const { status, body } = await sign(lotId);
  return [status, body.code];
};
const pack = (lotId: string, count = 10) =>
  done(ask(kitchen.operator, contract.packLot, { packingId: v7(), lotId, count, net: { value: 800, unit: 'g' }, takenAt: kitchen.now() }));
const at = async (lotId: string, name: string) =>
  (await kitchen.showLot(lotId)).controlPoints.find(({ controlPoint }) => controlPoint.name === name);
const openAt = async (lotId: string, point: 'cook' | 'chill', description: string) => {
  const seen = { deviationId: v7(), lotId, controlPointId: kitchen.points[point], description, takenAt: kitchen.now() };
  return (await done<contract.Deviation>(ask(kitchen.operator, contract.openDeviation, seen))).deviationId;
};
const labelled = async (lotId: string) => {
  await kitchen.read(lotId, 'coldRoom', { entered: { value: 36, unit: '°F' } });
  await kitchen.read(lotId, 'label', { entered: { answer: true, seen: 'Label 12 on the roll.' } });
};

describe('meat put in after the cook and the chill', () => {
  test('was neither cooked nor chilled: both are in doubt, and the review is not signed', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'labelled');
    await kitchen.putIn(lotId);
    await kitchen.weighCure(lotId);
    await pack(lotId, 20);
    expect(told(await at(lotId, 'Cook'))).toMatchObject({
      stands: 'undetermined',
      settled: false,
      judged: [{ verdict: { because: expect.stringContaining('meat went in after the last reading') as string } }],
    });
    expect(await at(lotId, 'Chill')).toMatchObject({ stands: 'undetermined' });
    expect(await kitchen.showLot(lotId)).toMatchObject({ standing: 'in-work' });
    expect(await signed(lotId)).toEqual([409, 'review-incomplete']);
  });

  test('with the time it really went in, it was there; so it is when people decide about it', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'labelled');
    const [receiptId, late] = [await kitchen.receive('pork'), { inputId: v7(), weight: { value: 1, unit: 'kg' as const } }];
    await kitchen.putIn(lotId, { receiptId, ...late });
    await kitchen.weighCure(lotId, { weight: { value: 2.5, unit: 'g' } });
    await pack(lotId);
    expect(await signed(lotId)).toEqual([409, 'review-incomplete']);
    const before = new Date(larder.clock.now().getTime() - 6 * 60 * minute).toISOString();
    const right = { ...late, inputId: v7(), amends: late.inputId, reason: 'It went in with the rest.', takenAt: before };
    await kitchen.putIn(lotId, { receiptId, ...right });
    expect(await at(lotId, 'Cook')).toMatchObject({ stands: 'met' });
    expect(await signed(lotId)).toEqual([200, undefined]);

    const other = await aSausageLot(kitchen, larder, 'packed');
    await kitchen.putIn(other.lotId, { weight: { value: 1, unit: 'kg' } });
    await kitchen.weighCure(other.lotId, { weight: { value: 2.5, unit: 'g' } });
    for (const point of ['cook', 'chill'] as const) {
      await settle(kitchen.reviewer, await openAt(other.lotId, point, 'Cooked trimmings went in.'), kitchen.now());
    }
    expect(await at(other.lotId, 'Cook')).toMatchObject({ stands: 'undetermined', settled: true });
    expect(await signed(other.lotId)).toEqual([200, undefined]);
  });

  test('recorded in one go with the readings, by two clocks that differ, is no doubt', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'cured');
    await aCurve(kitchen, larder, lotId, 'cook', [120, 140, 159], false);
    await kitchen.read(lotId, 'cook', { entered: { value: 160, unit: '°F' } });
    const soon = new Date(larder.clock.now().getTime() + 2 * minute).toISOString();
    await kitchen.putIn(lotId, { weight: { value: 1, unit: 'kg' }, takenAt: soon });
    expect(await at(lotId, 'Cook')).toMatchObject({ stands: 'met' });
  });
});

describe('what was decided before the meat was put in', () => {
  test('does not settle a cook that was missed on an empty lot', async () => {
    const { lotId } = await kitchen.startLot();
    const missed = (await aCurve(kitchen, larder, lotId, 'cook', [100, 101]))?.deviationId ?? '';
    await act(kitchen.reviewer, missed, kitchen.now());
    await done(close(kitchen.reviewer, missed));
    await kitchen.putIn(lotId, { takenAt: new Date(larder.clock.now().getTime() - 60 * minute).toISOString() });
    await kitchen.weighCure(lotId);
    await aCurve(kitchen, larder, lotId, 'chill', [140, 100, 78, 55, 39]);
    await labelled(lotId);
    await pack(lotId);
    expect(await at(lotId, 'Cook')).toMatchObject({ stands: 'missed', settled: false });
    expect(await signed(lotId)).toEqual([409, 'review-incomplete']);
  });

  test('does not settle single values that were missed on an empty lot', async () => {
    const { lotId } = await kitchen.startLot();
    const { deviationId = '' } = await kitchen.read(lotId, 'coldRoom', { entered: { value: 60, unit: '°F' } });
    await act(kitchen.reviewer, deviationId, kitchen.now());
    await done(close(kitchen.reviewer, deviationId));
    await kitchen.putIn(lotId);
    expect(await at(lotId, 'Cold room')).toMatchObject({ stands: 'missed', settled: false });
  });

  test('settles them where some of the meat was there and more came', async () => {
    const { lotId } = await kitchen.startLot();
    await kitchen.putIn(lotId);
    const { deviationId = '' } = await kitchen.read(lotId, 'coldRoom', { entered: { value: 60, unit: '°F' } });
    await settle(kitchen.reviewer, deviationId, kitchen.now());
    await kitchen.putIn(lotId);
    expect(await at(lotId, 'Cold room')).toMatchObject({ stands: 'missed', settled: true });
  });

  test('does not stand for a cook that nobody recorded', async () => {
    const { lotId } = await kitchen.startLot();
    const nothing = await openAt(lotId, 'cook', 'The smokehouse is out of order.');
    await act(kitchen.reviewer, nothing, kitchen.now());
    await done(close(kitchen.reviewer, nothing));
    await kitchen.putIn(lotId);
    await kitchen.weighCure(lotId);
    await aCurve(kitchen, larder, lotId, 'chill', [140, 100, 78, 55, 39]);
    await labelled(lotId);
    await pack(lotId);
    expect(await kitchen.showLot(lotId)).toMatchObject({
      standing: 'in-work',
      because: [{ code: 'next-point', figures: { point: 'Cook', what: 'Cook is looked at.' } }],
    });
    expect(await signed(lotId)).toEqual([409, 'review-incomplete']);
  });
});

describe('a chill whose first stage was missed and decided about while it went on', () => {
  test('is not settled before it is finished, though nobody reads it again', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'cooked');
    await aCurve(kitchen, larder, lotId, 'chill', [140, 129, 120, 110, 100, 95, 90], false);
    const { deviations } = await done<contract.ReplyOf<typeof contract.listDeviations>>(
      ask(kitchen.operator, contract.listDeviations, { open: 'only', lotId }),
    );
    for (const { deviationId } of deviations) await settle(kitchen.reviewer, deviationId, kitchen.now());
    await labelled(lotId);
    await pack(lotId);
    expect(await at(lotId, 'Chill')).toMatchObject({ stands: 'missed', settled: false });
    expect(await kitchen.showLot(lotId)).toMatchObject({ standing: 'in-work' });
    expect(await signed(lotId)).toEqual([409, 'review-incomplete']);

    const end = { stageEndId: v7(), lotId, controlPointId: kitchen.points.chill, takenAt: kitchen.now() };
    const { deviationId = '' } = await done<contract.ReplyOf<typeof contract.endStage>>(ask(kitchen.operator, contract.endStage, end));
    expect(await kitchen.showLot(lotId)).toMatchObject({ standing: 'on-hold' });
    await settle(kitchen.reviewer, deviationId, kitchen.now());
    expect(await at(lotId, 'Chill')).toMatchObject({ stands: 'missed', settled: true });
  });
});
