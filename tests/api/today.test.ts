import * as contract from '@larderbook/contracts';
import type { ReplyOf } from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aCurve, aSausageLot } from '../builders/a-sausage-lot';
import { anotherShop, aShop, done, type Shop, type Worker } from '../builders/a-shop';
import { ask } from '../support/ask';
import { aDevice } from '../support/device';
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

type Today = ReplyOf<typeof contract.showToday>;
const today = (by: Worker = shop.owner) => done<Today>(ask(by, contract.showToday, {}));
const codes = (lots: Today['inWork']) => lots.map(({ code }) => code);

test('each lot stands where its records put it, and one that has left does not stand here', async () => {
  const waiting = await aSausageLot(kitchen, larder, 'packed');
  const ready = await aSausageLot(kitchen, larder, 'reviewed');
  const gone = await aSausageLot(kitchen, larder, 'shipped');
  const held = await aSausageLot(kitchen, larder, 'packed');
  await kitchen.read(held.lotId, 'coldRoom', { entered: { value: 52, unit: '°F' } });
  const begun = await kitchen.startLot();

  const { inWork, onHold, toReview, cleared, openDeviations, recalls } = await today();
  expect(codes(inWork)).toEqual([begun.code]);
  expect(codes(onHold)).toEqual([held.code]);
  expect(codes(toReview)).toEqual([waiting.code]);
  expect(codes(cleared)).toEqual([ready.code]);
  expect(codes([...inWork, ...onHold, ...toReview, ...cleared])).not.toContain(gone.code);
  expect(openDeviations).toMatchObject([{ lot: { code: held.code }, open: true }]);
  expect(recalls).toEqual([]);
});

test('what is running comes before what has no deadline, the one due first on top', async () => {
  const late = await aSausageLot(kitchen, larder, 'cooked');
  await aCurve(kitchen, larder, late.lotId, 'chill', [140, 128], false);
  const later = await aSausageLot(kitchen, larder, 'cooked');
  await aCurve(kitchen, larder, later.lotId, 'chill', [140, 128], false);
  const { inWork, at } = await today();
  expect(codes(inWork).slice(0, 2)).toEqual([late.code, later.code]);
  expect(inWork[0]?.running).toMatchObject({ name: 'Chill', bound: { figures: { to: { value: '80', unit: '°F' } } } });
  expect(inWork[0]?.running?.deadline).toBeLessThan(inWork[1]?.running?.deadline ?? 0);
  expect(at).toBe(larder.clock.now().toISOString());
});

test('a miss found after the packages have left is a possible recall, above everything', async () => {
  const gone = await aSausageLot(kitchen, larder, 'shipped');
  await kitchen.read(gone.lotId, 'coldRoom', { entered: { value: 60, unit: '°F' } });
  const { recalls, openDeviations, onHold } = await today();
  expect(recalls).toMatchObject([{ lot: { code: gone.code }, shippedAlready: true }]);
  expect(openDeviations.map(({ lot }) => lot?.code)).not.toContain(gone.code);
  expect(codes(onHold)).toContain(gone.code);
});

test('names instruments that are due for their check, and products that cannot be made yet', async () => {
  const instrument = {
    instrumentId: v7(),
    name: 'T-03',
    kind: 'thermometer' as const,
    unit: '°F' as const,
    tolerance: 1,
    checkEveryDays: 1,
  };
  await done(ask(kitchen.operator, contract.recordInstrument, instrument));
  const check = {
    calibrationId: v7(),
    instrumentId: instrument.instrumentId,
    method: 'ice point' as const,
    expected: 32,
    observed: 32,
    action: '',
    takenAt: kitchen.now(),
  };
  expect((await today()).overdueInstruments).toMatchObject([{ name: 'T-03', overdue: true }]);
  await done(ask(kitchen.operator, contract.recordCalibration, check));
  expect((await today()).overdueInstruments).toEqual([]);

  const brawn = { name: 'Brawn', code: 'BRW', process: 'other', species: 'pork', storage: '', useByDays: 5 } as const;
  await done(ask(shop.owner, contract.recordProduct, { productId: v7(), ...brawn }));
  expect((await today()).plansMissing).toMatchObject([{ name: 'Brawn', lacks: 'formula-and-plan' }]);
});

test('everybody of the shop may look, nobody else', async () => {
  const inspector = await shop.hire('inspector');
  expect((await today(inspector)).inWork.length).toBeGreaterThan(0);
  const theirs = await today((await anotherShop(larder)).owner);
  expect([theirs.inWork, theirs.onHold, theirs.recalls, theirs.plansMissing]).toEqual([[], [], [], []]);
  expect((await ask(aDevice(larder.app), contract.showToday, {})).status).toBe(401);
});
