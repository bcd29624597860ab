import * as contract from '@larderbook/contracts';
import type { InputOf } from '@larderbook/contracts';
import { limitOfRow, limitSetById } from '@larderbook/haccp';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aCurve, aSausageLot } from '../builders/a-sausage-lot';
import { anotherShop, aShop, done, type Shop } from '../builders/a-shop';
import { strike } from '../builders/correcting';
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

const at = async (lotId: string, point: keyof SausageKitchen['points'], of = kitchen) =>
  (await of.showLot(lotId)).controlPoints.find(({ controlPoint }) => controlPoint.controlPointId === of.points[point]);
const end = (lotId: string, point: 'cook' | 'chill', fields: Partial<InputOf<typeof contract.endStage>> = {}, of = kitchen) =>
  ask(of.operator, contract.endStage, {
    ...{ stageEndId: v7(), lotId, controlPointId: of.points[point], takenAt: of.now(), ...fields },
  });

describe('the end of a stage is corrected', () => {
  test('and keeps what it said before; the stage and the chill that follows are judged again', async () => {
    const row = limitSetById('united-kingdom-2026')?.rows.find(({ id }) => id === 'cook-chill-cooling');
    if (!row) throw new Error('That row is in the set');
    const elsewhere = await aSausageKitchen(await anotherShop(larder), larder, { chilledBy: limitOfRow(row) });
    const { lotId } = await aSausageLot(elsewhere, larder, 'cooked');
    await aCurve(elsewhere, larder, lotId, 'chill', [140, 100, 60, 37]);
    const cook = await at(lotId, 'cook', elsewhere);
    expect([cook?.stands, (await at(lotId, 'chill', elsewhere))?.stands]).toEqual(['met', 'met']);
    const ended = Date.parse(cook?.endedAt ?? '');
    const earlier = new Date(ended - 6 * 3_600_000).toISOString();
    const reply = await done<{ deviationId?: string }>(
      end(lotId, 'cook', { amends: cook?.stageEnd?.rowId, reason: 'Wrong day.', takenAt: earlier }, elsewhere),
    );
    expect((await at(lotId, 'cook', elsewhere))?.endedAt).toBe(earlier);
    expect((await at(lotId, 'chill', elsewhere))?.stands).toBe('missed');
    expect((await elsewhere.showLot(lotId)).corrections).toMatchObject([
      {
        ...{
          about: 'stage-end',
          what: { code: 'entry-stage-end', figures: { point: 'Cook' } },
          reason: 'Wrong day.',
          controlPointId: elsewhere.points.cook,
        },
        changes: [{ what: { code: 'says-time' }, before: { at: Date.parse(cook?.endedAt ?? '') }, after: { at: Date.parse(earlier) } }],
      },
    ]);
    expect(reply.deviationId).toBeDefined();
    expect((await elsewhere.showLot(lotId)).standing).toBe('on-hold');
  });

  test('only with a reason, only the one that counts, and only of its own stage and lot', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'cooked');
    const amends = (await at(lotId, 'cook'))?.stageEnd?.rowId;
    expect(code(await end(lotId, 'cook'))).toEqual([409, 'stage-ended-already']);
    expect(code(await end(lotId, 'cook', { amends }))).toEqual([422, 'reason-missing']);
    expect(code(await end(lotId, 'chill', { amends, reason: 'Wrong.' }))).toEqual([404, 'not-found']);
    await done(end(lotId, 'cook', { amends, reason: 'Wrong.' }));
    expect(code(await end(lotId, 'cook', { amends, reason: 'Wrong.' }))).toEqual([409, 'already-amended']);
  });

  test('after the review, which is taken back', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'reviewed');
    const cook = await at(lotId, 'cook');
    await done(end(lotId, 'cook', { amends: cook?.stageEnd?.rowId, reason: 'A minute off.', takenAt: cook?.endedAt }));
    expect(await kitchen.showLot(lotId)).toMatchObject({
      ...{
        standing: 'to-review',
        review: { takenBack: { what: { code: 'since-stage-end', figures: { point: 'Cook', did: 'corrected' } } } },
      },
    });
  });
});

test('a voided end lets the stage go on, and it may be finished anew', async () => {
  const { lotId } = await aSausageLot(kitchen, larder, 'cooked');
  await done(strike(kitchen.operator, 'stage-end', (await at(lotId, 'cook'))?.stageEnd?.rowId ?? ''));
  expect(await at(lotId, 'cook')).not.toHaveProperty('endedAt');
  await done(end(lotId, 'cook'));
  expect(await at(lotId, 'cook')).toMatchObject({ stands: 'met', endedAt: kitchen.now() });
  expect((await kitchen.showLot(lotId)).corrections.at(-1)).toMatchObject({ voided: false, reason: { code: 'finished-anew' } });
});

describe('readings and weighings are voided', () => {
  test('a reading counts no more; it stays with the reason, and another is not corrected by it', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'cured');
    await aCurve(kitchen, larder, lotId, 'cook', [120, 160], false);
    const [, second] = (await at(lotId, 'cook'))?.readings ?? [];
    await done(strike(kitchen.operator, 'reading', second?.readingId ?? '', 'Read of another lot.'));
    const readings = (await at(lotId, 'cook'))?.readings;
    expect(readings).toMatchObject([{ entered: { value: 120 } }, { voided: { reason: 'Read of another lot.' } }]);
    expect(readings).toHaveLength(2);
    const again = { entered: { value: 161, unit: '°F' as const }, amends: second?.readingId, reason: 'Wrong.' };
    const reply = ask(kitchen.operator, contract.recordReading, {
      ...{ readingId: v7(), lotId, controlPointId: kitchen.points.cook, takenAt: kitchen.now(), ...again },
    });
    expect(code(await reply)).toEqual([409, 'already-amended']);
  });

  test('a weighing of cure that never was: the cure is missing again', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'cured');
    const [cure] = (await kitchen.showLot(lotId)).weighings;
    expect((await at(lotId, 'cure'))?.stands).toBe('met');
    await done(strike(kitchen.operator, 'weighing', cure?.weighingId ?? ''));
    expect((await at(lotId, 'cure'))?.stands).toBe('not-started');
    expect(code(await strike(kitchen.operator, 'weighing', cure?.weighingId ?? ''))).toEqual([409, 'already-amended']);
  });

  test('not by the inspector, not without a reason, and nothing that is not there', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'cured');
    const [cure] = (await kitchen.showLot(lotId)).weighings;
    const inspector = await shop.hire('inspector');
    expect(code(await strike(inspector, 'weighing', cure?.weighingId ?? ''))).toEqual([403, 'not-allowed']);
    expect(code(await strike(kitchen.operator, 'weighing', cure?.weighingId ?? '', ''))).toEqual([400, 'invalid-input']);
    expect(code(await strike(kitchen.operator, 'weighing', v7()))).toEqual([404, 'not-found']);
    expect(code(await strike(kitchen.operator, 'packing', v7()))).toEqual([404, 'not-found']);
  });

  test('meat that is packed already is not taken out of the lot', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'packed');
    const [input] = (await kitchen.showLot(lotId)).inputs;
    expect(code(await strike(kitchen.operator, 'input', input?.inputId ?? ''))).toEqual([409, 'still-in-use']);
  });

  test('nor corrected to less than is packed, or was taken as rework: a hold would end with product that nobody decided about', async () => {
    const [{ lotId }, inputId, receiptId] = [await kitchen.startLot(), v7(), await kitchen.receive('pork')];
    await kitchen.putIn(lotId, { inputId, receiptId });
    const packing = { packingId: v7(), lotId, count: 10, net: { value: 800, unit: 'g' as const }, takenAt: kitchen.now() };
    await done(ask(kitchen.operator, contract.packLot, packing));
    const to = (id: string, value: number) =>
      ask(kitchen.operator, contract.putIn, {
        ...{ inputId: v7(), lotId: id, receiptId, weight: { value, unit: 'kg' as const }, takenAt: kitchen.now() },
        ...{ amends: inputId, reason: 'Typed wrongly.' },
      });
    expect(code(await to(lotId, 0.1))).toEqual([409, 'still-in-use']);
    expect((await to(lotId, 7.8)).body.detail).toBe(
      'Only 2 kg of the lot is still loose. Correct or void what was packed, taken out or used of it first.',
    );
    // A hundredth is within what scales disagree about.
    expect(code(await to(lotId, 7.9))).toEqual([200, undefined]);
  });

  test('nor is an ingredient that was packed with it voided or corrected away', async () => {
    const [{ lotId }, weighingId] = [await kitchen.startLot(), v7()];
    await kitchen.putIn(lotId, { weight: { value: 1, unit: 'kg' } });
    const salt = {
      weighingId,
      lotId,
      itemId: kitchen.items.salt,
      weight: { value: 10, unit: 'kg' as const },
      takenAt: kitchen.now(),
      sure: true,
    };
    await done(ask(kitchen.operator, contract.weighIn, salt));
    const packing = { packingId: v7(), lotId, count: 10, net: { value: 800, unit: 'g' as const }, takenAt: kitchen.now() };
    await done(ask(kitchen.operator, contract.packLot, packing));
    expect(code(await strike(kitchen.operator, 'weighing', weighingId))).toEqual([409, 'still-in-use']);
    const less = {
      ...salt,
      weighingId: v7(),
      weight: { value: 16, unit: 'g' as const },
      amends: weighingId,
      reason: 'Grams, not kilograms.',
    };
    expect(code(await ask(kitchen.operator, contract.weighIn, less))).toEqual([409, 'still-in-use']);
  });
});
