import * as contract from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aSausageLot } from '../builders/a-sausage-lot';
import { aShop, done } from '../builders/a-shop';
import { strike } from '../builders/correcting';
import { ask } from '../support/ask';
import { startApp, type TestApp } from '../support/start-app';

let larder: TestApp;
let kitchen: SausageKitchen;
beforeAll(async () => {
  larder = await startApp();
  kitchen = await aSausageKitchen(await aShop(larder), larder);
});
afterAll(() => larder.close());

const degrees = (value: number) => ({ entered: { value, unit: '°F' as const } });
const stands = async (lotId: string) => {
  const { standing, review } = await kitchen.showLot(lotId);
  return [standing, review?.takenBack?.what];
};
const readingsAt = async (lotId: string, point: keyof SausageKitchen['points']) =>
  (await kitchen.showLot(lotId)).controlPoints.find(({ controlPoint }) => controlPoint.controlPointId === kitchen.points[point])
    ?.readings ?? [];

/** A lot of ten packages that its review has cleared, an hour later. */
async function aClearedLot() {
  const lot = await aSausageLot(kitchen, larder, 'reviewed');
  larder.clock.moveOn(3_600_000);
  return lot;
}

describe('a check that goes on after the review', () => {
  test('leaves the clearance as it is while it is met, time after time', async () => {
    const { lotId } = await aClearedLot();
    await kitchen.read(lotId, 'coldRoom', degrees(37));
    larder.clock.moveOn(3_600_000);
    await kitchen.read(lotId, 'coldRoom', degrees(38));
    expect(await stands(lotId)).toEqual(['cleared', undefined]);
    expect((await kitchen.showLot(lotId)).review).toMatchObject({ counts: true });
  });

  test('takes it back when it is missed', async () => {
    const { lotId } = await aClearedLot();
    await kitchen.read(lotId, 'coldRoom', { ...degrees(48), sure: true });
    expect(await stands(lotId)).toEqual(['on-hold', { code: 'since-deviation', figures: { number: String(1) } }]);
  });

  test('is corrected without touching what was reviewed', async () => {
    const { lotId } = await aClearedLot();
    const { readingId } = await kitchen.read(lotId, 'coldRoom', degrees(37));
    await kitchen.read(lotId, 'coldRoom', { ...degrees(38), amends: readingId, reason: 'Read wrongly.' });
    expect(await stands(lotId)).toEqual(['cleared', undefined]);
    const [, , corrected] = await readingsAt(lotId, 'coldRoom');
    await done(strike(kitchen.operator, 'reading', corrected?.readingId ?? ''));
    expect(await stands(lotId)).toEqual(['cleared', undefined]);
  });
});

describe('the clearance is taken back', () => {
  test('by the correction of a reading that was reviewed, though it is met as before', async () => {
    const { lotId } = await aClearedLot();
    const [reviewed] = await readingsAt(lotId, 'coldRoom');
    await kitchen.read(lotId, 'coldRoom', { ...degrees(35), amends: reviewed?.readingId, reason: 'Read wrongly.' });
    expect(await stands(lotId)).toEqual(['to-review', { code: 'since-reading', figures: { point: 'Cold room', did: 'corrected' } }]);
  });

  test('by voiding a reading that was reviewed', async () => {
    const { lotId } = await aClearedLot();
    await kitchen.read(lotId, 'coldRoom', degrees(36));
    const [reviewed] = await readingsAt(lotId, 'coldRoom');
    await done(strike(kitchen.operator, 'reading', reviewed?.readingId ?? ''));
    expect(await stands(lotId)).toEqual(['to-review', { code: 'since-reading', figures: { point: 'Cold room', did: 'voided' } }]);
  });

  test('of a lot that has left too, and it says so', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'shipped');
    const [, , third] = await readingsAt(lotId, 'chill');
    await done(strike(kitchen.operator, 'reading', third?.readingId ?? ''));
    expect(await kitchen.showLot(lotId)).toMatchObject({
      standing: 'shipped',
      because: [
        { code: 'all-left', figures: { count: 10 } },
        { code: 'since-reading', figures: { point: 'Chill', did: 'voided' } },
        { code: 'next-review-again' },
      ],
    });
  });

  test('by one more reading of a curve that was reviewed as finished', async () => {
    const { lotId } = await aClearedLot();
    const at = (await readingsAt(lotId, 'cook'))[2]?.made.at;
    await kitchen.read(lotId, 'cook', { ...degrees(160), takenAt: at });
    expect((await stands(lotId))[1]).toEqual({ code: 'since-reading', figures: { point: 'Cook', did: 'recorded' } });
  });

  test('and the review is shown as what it was when another takes its place', async () => {
    const { lotId } = await aClearedLot();
    await kitchen.weighCure(lotId, { itemId: kitchen.items.salt, weight: { value: 100, unit: 'g' } });
    await done(ask(kitchen.reviewer, contract.signReview, { reviewId: v7(), lotId, statement: 'Seen again.' }));
    const { standing, reviews } = await kitchen.showLot(lotId);
    expect(standing).toBe('cleared');
    expect(reviews).toMatchObject([
      {
        counts: false,
        covered: { met: 5, settled: 0, closed: 0 },
        takenBack: { what: { code: 'since-weighing', figures: { did: 'recorded' } }, at: expect.any(String) },
      },
      { counts: true, statement: 'Seen again.' },
    ]);
    expect(reviews[1]?.takenBack).toBeUndefined();
  });

  test('but not by weight that is taken out, nor by packages that leave', async () => {
    const { lotId } = await aClearedLot();
    const sample = { kind: 'sample', weight: { value: 100, unit: 'g' }, note: '', takenAt: kitchen.now() } as const;
    await done(ask(kitchen.operator, contract.recordRemoval, { removalId: v7(), lotId, ...sample }));
    expect(await stands(lotId)).toEqual(['cleared', undefined]);
  });
});
