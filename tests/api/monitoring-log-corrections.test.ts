import * as contract from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aSausageLot } from '../builders/a-sausage-lot';
import { aShop, done, type Shop } from '../builders/a-shop';
import { ask } from '../support/ask';
import { printed } from '../support/printed';
import { startApp, type TestApp } from '../support/start-app';

const minute = 60_000;
const day = 24 * 60 * minute;
let larder: TestApp;
let shop: Shop;
let kitchen: SausageKitchen;
beforeAll(async () => {
  larder = await startApp(new Date('2026-03-02T14:00:00Z')); // eight in the morning in the shop
  shop = await aShop(larder);
  kitchen = await aSausageKitchen(shop, larder);
});
afterAll(() => larder.close());

const log = async (point: keyof SausageKitchen['points'], from: string, to = from) =>
  (await printed(shop.owner, `/monitoring-log.pdf?controlPointId=${kitchen.points[point]}&from=${from}&to=${to}`)).text;
const read = (lotId: string, value: number, fields = {}) => kitchen.read(lotId, 'coldRoom', { entered: { value, unit: '°F' }, ...fields });
const voiding = (amends: string, what: 'reading' | 'weighing', reason: string) =>
  done(ask(shop.owner, contract.voidRecord, { voidId: v7(), what, amends, reason }));

test('a voided reading stands struck through, with its own time and who took it, why, who voided it and when', async () => {
  const { lotId, code } = await kitchen.startLot();
  const { readingId } = await read(lotId, 47);
  larder.clock.moveOn(30 * minute);
  await voiding(readingId, 'reading', 'Of another lot.');
  const text = await log('coldRoom', '2026-03-02');
  expect(text).toMatch(new RegExp(`8:00 am ${code} Smoked sausage 47 °F voided`));
  expect(text).toContain('Voided: 47 °F. Of another lot. (Odile Farrow, Mar 2, 2026, 8:30 am)');
  expect(text).toContain('TO The operator');
  expect(text).toContain('1 voided');
  expect(text).not.toMatch(/47 °F against|1 missed/);
});

test('a corrected reading shows who entered the old value and when, and why it was corrected, by whom and when', async () => {
  larder.clock.moveTo(new Date('2026-03-03T14:00:00Z'));
  const { lotId } = await kitchen.startLot();
  const { readingId } = await read(lotId, 63);
  const takenAt = kitchen.now();
  larder.clock.moveOn(20 * minute);
  const correction = { readingId: v7(), lotId, controlPointId: kitchen.points.coldRoom, amends: readingId, takenAt };
  await done(
    ask(shop.owner, contract.recordReading, {
      ...correction,
      entered: { value: 36, unit: '°F' },
      reason: 'Digits turned round.',
    }),
  );
  const text = await log('coldRoom', '2026-03-03');
  expect(text).toContain(
    'Corrected value: 63 °F (The operator, Mar 3, 2026, 8:00 am) → 36 °F. Digits turned round. (Odile Farrow, Mar 3, 2026, 8:20 am)',
  );
});

test('one that a correction moved to another day stays on the log of the day it was written under', async () => {
  larder.clock.moveTo(new Date('2026-03-06T14:00:00Z'));
  const { lotId } = await kitchen.startLot();
  const { readingId } = await read(lotId, 39.5);
  const moved = { amends: readingId, reason: 'Taken the evening before.', takenAt: '2026-03-06T01:00:00Z' };
  await read(lotId, 39.5, moved);
  const old = await log('coldRoom', '2026-03-06');
  expect(old).toMatch(/39\.5 °F corrected/);
  expect(old).toContain('Corrected time taken: Mar 6, 2026, 8:00 am (The operator, Mar 6, 2026, 8:00 am) → Mar 5, 2026, 7:00 pm.');
  expect(old).toContain('1 corrected out of this log');
  expect(await log('coldRoom', '2026-03-05')).toMatch(/39\.5 °F met/);
  const both = await log('coldRoom', '2026-03-05', '2026-03-06');
  expect(both).not.toContain('corrected out of this log');
  expect(both).toContain('Corrected time taken');
});

test('a voided weighing of a cure stands struck through in its log', async () => {
  larder.clock.moveTo(new Date('2026-03-07T14:00:00Z'));
  const { lotId } = await aSausageLot(kitchen, larder, 'cured');
  const [weighing] = (await kitchen.showLot(lotId)).weighings;
  await voiding(weighing?.weighingId ?? '', 'weighing', 'Weighed for tomorrow.');
  const text = await log('cure', '2026-03-07');
  expect(text).toContain('25 g voided');
  expect(text).toContain('Voided: 25 g. Weighed for tomorrow.');
  expect(text).not.toContain('156.25 ppm');
});

test('a reading entered late shows both times', async () => {
  larder.clock.moveTo(new Date('2026-03-07T15:00:00Z'));
  const { lotId } = await kitchen.startLot({ takenAt: '2026-03-07T14:00:00Z' });
  await read(lotId, 38, { takenAt: '2026-03-07T14:40:00Z' });
  const text = await log('coldRoom', '2026-03-07');
  expect(text).toContain('8:40 am');
  expect(text).toContain('Entered Mar 7, 2026, 9:00 am');
});

test('what was measured before a check that its instrument failed carries that flag', async () => {
  larder.clock.moveTo(new Date('2026-03-07T20:00:00Z'));
  const instrumentId = v7();
  const about = { name: 'T-09', kind: 'thermometer' as const, unit: '°F' as const, tolerance: 1, checkEveryDays: 7 };
  await done(ask(kitchen.operator, contract.recordInstrument, { instrumentId, ...about }));
  const check = (observed: number) =>
    done(
      ask(shop.owner, contract.recordCalibration, {
        ...{ calibrationId: v7(), instrumentId, method: 'ice point' as const, expected: 32, observed, action: '' },
        takenAt: kitchen.now(),
      }),
    );
  await check(32.2);
  const { lotId } = await kitchen.startLot();
  await read(lotId, 38, { instrumentId });
  expect(await log('coldRoom', '2026-03-07')).not.toContain('its instrument failed the next check');
  larder.clock.moveOn(day);
  await check(34.5);
  const text = await log('coldRoom', '2026-03-07');
  expect(text).toContain('its instrument failed the next check');
  expect(text).toContain('next check after its use, Mar 8, 2026');
});
