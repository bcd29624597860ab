import * as contract from '@larderbook/contracts';
import type { InputOf } from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aSausageLot, ship } from '../builders/a-sausage-lot';
import { settle } from '../builders/a-settlement';
import { aShop, done, type Shop } from '../builders/a-shop';
import { packingsOf, strike } from '../builders/correcting';
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

const minute = 60_000;
const hour = 60 * minute;
const kg = (value: number) => ({ value, unit: 'kg' as const });
const degrees = (value: number) => ({ entered: { value, unit: '°F' as const } });
const stands = async (lotId: string) => {
  const { standing, review } = await kitchen.showLot(lotId);
  return [standing, review?.takenBack?.what];
};
const aProbe = async (checkEveryDays = 30) => {
  const instrumentId = v7();
  const probe = { name: 'Probe 1', kind: 'thermometer', unit: '°F', tolerance: 1, checkEveryDays } as const;
  await done(ask(kitchen.operator, contract.recordInstrument, { instrumentId, ...probe }));
  return instrumentId;
};
const check = (instrumentId: string, observed: number, fields: Partial<InputOf<typeof contract.recordCalibration>> = {}) =>
  done<contract.ReplyOf<typeof contract.recordCalibration>>(
    ask(kitchen.operator, contract.recordCalibration, {
      ...{ calibrationId: v7(), instrumentId, method: 'ice point', expected: 32, observed, action: 'Sent for repair.' },
      ...{ takenAt: kitchen.now(), ...fields },
    } as InputOf<typeof contract.recordCalibration>),
  );
const sign = (lotId: string) => done(ask(kitchen.reviewer, contract.signReview, { reviewId: v7(), lotId, statement: 'Complete and met.' }));

/** A lot whose cold room was read with a probe that had been checked, reviewed an hour later. */
async function aLotReadWith(instrumentId: string) {
  const lot = await aSausageLot(kitchen, larder, 'packed');
  await kitchen.read(lot.lotId, 'coldRoom', { ...degrees(37), instrumentId });
  larder.clock.moveOn(hour);
  await sign(lot.lotId);
  larder.clock.moveOn(hour);
  return lot;
}

describe('a doubt that arises after the review', () => {
  test('takes the clearance back when the thermometer that was relied on fails its next check', async () => {
    const instrumentId = await aProbe();
    await check(instrumentId, 32);
    const { lotId, packingId } = await aLotReadWith(instrumentId);
    expect(await stands(lotId)).toEqual(['cleared', undefined]);
    const { lastCheck } = await check(instrumentId, 36);
    expect(await stands(lotId)).toEqual(['to-review', { code: 'since-check', figures: { instrument: 'Probe 1', did: 'failed' } }]);
    await expect(ship(kitchen, packingId, 1)).rejects.toThrow('not-cleared');
    const { controlPoints } = await kitchen.showLot(lotId);
    expect(controlPoints.flatMap(({ readings }) => readings.flatMap((reading) => reading.flags))).toContain('instrument-failed-later');
    const review = await done<contract.ReplyOf<typeof contract.showReview>>(ask(kitchen.reviewer, contract.showReview, { lotId }));
    const flags = review.findings.flatMap(({ what }) => what.flatMap((one) => ('code' in one ? [one.figures?.flags] : [])));
    expect(flags).toContainEqual([{ code: 'instrument-failed-later' }]);
    await sign(lotId);
    expect(await stands(lotId)).toEqual(['cleared', undefined]);
    await done(strike(kitchen.operator, 'calibration', lastCheck?.rowId ?? '', 'It was another probe.'));
    expect((await stands(lotId))[0]).toBe('cleared');
  });

  test('but not when a check in between was good, nor when the next one is', async () => {
    const instrumentId = await aProbe();
    await check(instrumentId, 32);
    const { lotId } = await aLotReadWith(instrumentId);
    await check(instrumentId, 32);
    larder.clock.moveOn(hour);
    await check(instrumentId, 36);
    expect(await stands(lotId)).toEqual(['cleared', undefined]);
  });

  test('takes it back when something unforeseen is opened, and again for every decision that is voided', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'reviewed');
    const deviationId = v7();
    const seen = { deviationId, lotId, description: 'A glove tip is missing.', takenAt: kitchen.now() };
    await done(ask(kitchen.operator, contract.openDeviation, seen));
    expect((await stands(lotId))[0]).toBe('on-hold');
    const { number, dispositions } = await settle(shop.owner, deviationId, kitchen.now());
    expect(await stands(lotId)).toEqual(['to-review', { code: 'since-deviation', figures: { number: String(number) } }]);
    await sign(lotId);
    expect(await stands(lotId)).toEqual(['cleared', undefined]);
    await done(strike(shop.owner, 'disposition', dispositions[0]?.dispositionId ?? ''));
    expect(await stands(lotId)).toEqual(['on-hold', { code: 'since-decision', figures: { number: String(number), did: 'voided' } }]);
  });

  test('takes it back when a reading of what was reviewed is said to be something else', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'reviewed');
    const { controlPoints } = await kitchen.showLot(lotId);
    const cook = controlPoints.find(({ controlPoint }) => controlPoint.controlPointId === kitchen.points.cook);
    const said = {
      ...{ clarificationId: v7(), lotId, controlPointId: kitchen.points.cook, readingIds: [cook?.readings[0]?.readingId ?? ''] },
      ...{ word: 'not of the core', reason: 'The probe lay on the rack.', takenAt: kitchen.now() },
    } as InputOf<typeof contract.clarifyReadings>;
    await done(ask(kitchen.operator, contract.clarifyReadings, said));
    expect((await stands(lotId))[1]).toEqual({ code: 'since-clarification', figures: { point: 'Cook' } });
  });

  test('is not that condemned product was destroyed', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'packed');
    const deviationId = v7();
    await done(
      ask(kitchen.operator, contract.openDeviation, { deviationId, lotId, description: 'A glove tip is missing.', takenAt: kitchen.now() }),
    );
    const { dispositions } = await settle(shop.owner, deviationId, kitchen.now(), [{ decision: 'condemn', weight: kg(2) }, {}]);
    await sign(lotId);
    const destroyed = {
      destructionId: v7(),
      dispositionId: dispositions[0]?.dispositionId ?? '',
      method: 'Burnt.',
      takenAt: kitchen.now(),
    };
    await done(ask(kitchen.operator, contract.recordDestruction, destroyed));
    expect(await stands(lotId)).toEqual(['cleared', undefined]);
    const because = [{ code: 'so-much-may-ship', figures: { weight: { value: '6', unit: 'kg' } } }];
    expect(await kitchen.showLot(lotId)).toMatchObject({ because });
    expect((await packingsOf(kitchen.operator)).find((one) => one.lotId === lotId)).toMatchObject({ mayShip: true, because });
  });
});

test('a check that is dated ahead counts from when it was entered', async () => {
  const instrumentId = await aProbe(1);
  const ahead = new Date(larder.clock.now().getTime() + 2 * minute).toISOString();
  await check(instrumentId, 32, { takenAt: ahead });
  const { lotId } = await kitchen.startLot();
  const flags = async () => (await kitchen.read(lotId, 'coldRoom', { ...degrees(37), instrumentId })).flags;
  larder.clock.moveOn(24 * hour);
  expect(await flags()).not.toContain('instrument-overdue');
  larder.clock.moveOn(minute);
  expect(await flags()).toContain('instrument-overdue');
});
