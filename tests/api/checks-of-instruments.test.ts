import * as contract from '@larderbook/contracts';
import type { Flag, InputOf, ReplyOf } from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aShop, done } from '../builders/a-shop';
import { strike } from '../builders/correcting';
import { ask, code } from '../support/ask';
import { startApp, type TestApp } from '../support/start-app';

let larder: TestApp;
let kitchen: SausageKitchen;
let instrumentId: string;
let lotId: string;
beforeAll(async () => {
  larder = await startApp();
  kitchen = await aSausageKitchen(await aShop(larder), larder);
});
beforeEach(async () => {
  instrumentId = v7();
  const probe = { name: 'Probe 1', kind: 'thermometer', unit: '°F', tolerance: 1, checkEveryDays: 30 } as const;
  await done(ask(kitchen.operator, contract.recordInstrument, { instrumentId, ...probe }));
  ({ lotId } = await kitchen.startLot());
});
afterAll(() => larder.close());

type Instrument = ReplyOf<typeof contract.recordCalibration>;
const minutes = (count: number) => larder.clock.moveOn(count * 60_000);
const check = (fields: Partial<InputOf<typeof contract.recordCalibration>> = {}) =>
  ask(kitchen.operator, contract.recordCalibration, {
    ...{ calibrationId: v7(), instrumentId, method: 'ice point', expected: 32, observed: 32, action: '' },
    ...{ takenAt: kitchen.now(), ...fields },
  } as InputOf<typeof contract.recordCalibration>);
const read = async (): Promise<Flag[]> =>
  (await kitchen.read(lotId, 'coldRoom', { entered: { value: 38, unit: '°F' }, instrumentId })).flags;
const shown = async () => (await kitchen.showLot(lotId)).controlPoints.flatMap(({ readings }) => readings.map(({ flags }) => flags));

test('a check entered after the fact does not clean what was read before it; it is said to have come later', async () => {
  const before = kitchen.now();
  minutes(10);
  expect(await read()).toEqual(['instrument-overdue']);
  minutes(10);
  await done(check({ takenAt: before }));
  expect(await shown()).toEqual([['instrument-overdue', 'instrument-checked-later']]);
});

test('a reading that is sent late is not cleaned either by a check entered after it was taken', async () => {
  const before = kitchen.now();
  minutes(5);
  const taken = kitchen.now();
  minutes(5);
  await done(check({ takenAt: before }));
  const { flags } = await kitchen.read(lotId, 'coldRoom', { instrumentId, takenAt: taken });
  expect(flags).toEqual(['instrument-checked-later']);
});

test('a check entered as it was made cleans what is read after it', async () => {
  await done(check());
  minutes(5);
  expect(await read()).toEqual([]);
  expect(await shown()).toEqual([[]]);
});

test('a corrected check flags the readings that relied on it, and its old value stays', async () => {
  const { lastCheck } = await done<Instrument>(check());
  minutes(5);
  await read();
  const now = await done<Instrument>(
    check({ observed: 35, amends: lastCheck?.rowId, reason: 'Read the wrong way.', takenAt: lastCheck?.made.at }),
  );
  expect(now).toMatchObject({ overdue: true, lastCheck: { observed: 35, calibrationId: lastCheck?.calibrationId } });
  expect(now.corrections).toMatchObject([
    {
      reason: 'Read the wrong way.',
      changes: [{ what: { code: 'says-observed' }, before: { value: '32', unit: '°F' }, after: { value: '35', unit: '°F' } }],
    },
  ]);
  expect(await shown()).toEqual([['instrument-overdue']]);
});

test('a voided check flags them too; what is corrected to good later cleans nothing', async () => {
  const { lastCheck } = await done<Instrument>(check({ observed: 35 }));
  minutes(5);
  expect(await read()).toEqual(['instrument-overdue']);
  await done(check({ amends: lastCheck?.rowId, reason: 'It was 32.', takenAt: lastCheck?.made.at }));
  expect(await shown()).toEqual([['instrument-overdue', 'instrument-checked-later']]);
  const { lastCheck: good } = await done<Instrument>(check());
  minutes(5);
  expect(await read()).toEqual([]);
  await done(strike(kitchen.operator, 'calibration', good?.rowId ?? ''));
  expect((await shown())[1]).toEqual([]);
});

test('is corrected once, with a reason, and of the same instrument', async () => {
  const { lastCheck } = await done<Instrument>(check());
  const amends = lastCheck?.rowId;
  expect(code(await check({ amends }))).toEqual([422, 'reason-missing']);
  expect(code(await check({ amends: v7(), reason: 'Wrong.' }))).toEqual([404, 'not-found']);
  await done(check({ amends, reason: 'Wrong.' }));
  expect(code(await check({ amends, reason: 'Wrong.' }))).toEqual([409, 'already-amended']);
});
