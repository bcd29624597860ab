import * as contract from '@larderbook/contracts';
import type { InputOf } from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { codesOf } from '../../apps/api/src/platform/codes-of.test-data';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aSausageLot, ship } from '../builders/a-sausage-lot';
import { act, anAction, close, decide, settle, showDeviation, type Decided } from '../builders/a-settlement';
import { anotherShop, aShop, done, type Shop, type Worker } from '../builders/a-shop';
import { strike } from '../builders/correcting';
import { ask, code } from '../support/ask';
import { startApp, type TestApp } from '../support/start-app';

let larder: TestApp;
let shop: Shop;
let kitchen: SausageKitchen;
let stranger: Worker;
beforeAll(async () => {
  larder = await startApp();
  shop = await aShop(larder);
  kitchen = await aSausageKitchen(shop, larder);
  stranger = (await anotherShop(larder)).owner;
});
afterAll(() => larder.close());

const minute = 60_000;
const kg = (value: number) => ({ value, unit: 'kg' as const });
const takenBackBy = async (lotId: string) => (await kitchen.showLot(lotId)).review?.takenBack?.what;
const sign = (lotId: string) => done(ask(shop.owner, contract.signReview, { reviewId: v7(), lotId, statement: 'Complete and met.' }));

/** A lot of ten kilograms, with a deviation that was decided as said and closed. */
async function aClosed(decided: readonly Decided[] = [{}], reached: 'cured' | 'packed' = 'cured') {
  const lot = await aSausageLot(kitchen, larder, reached);
  const deviationId = v7();
  const seen = { deviationId, lotId: lot.lotId, description: 'A glove tip is missing.', takenAt: kitchen.now() };
  await done(ask(kitchen.operator, contract.openDeviation, seen));
  const { dispositions, actions, closing, number } = await settle(kitchen.reviewer, deviationId, kitchen.now(), decided);
  const made = dispositions.map(({ dispositionId }) => dispositionId);
  return { ...lot, deviationId, number, made, actionId: actions[0]?.actionId ?? '', closingId: closing?.closingId ?? '' };
}

describe('a corrective action that is corrected', () => {
  const correct = (
    by: Worker,
    deviationId: string,
    amends: string,
    fields: Partial<InputOf<typeof contract.recordCorrectiveAction>> = {},
  ) =>
    ask(by, contract.recordCorrectiveAction, {
      ...{
        actionId: v7(),
        deviationId,
        action: { ...anAction.unforeseen, segregation: 'Tagged, in the freezer.' },
        takenAt: kitchen.now(),
      },
      ...{ amends, reason: 'It was the freezer.', ...fields },
    });

  test('late, by another person: both texts stay with the reason and both times, and the deviation stays closed', async () => {
    const { deviationId, actionId } = await aClosed();
    const doneAt = kitchen.now();
    larder.clock.moveOn(90 * minute);
    const shown = await done<contract.Deviation>(correct(kitchen.operator, deviationId, actionId, { takenAt: doneAt }));
    expect(shown).toMatchObject({
      open: false,
      actions: [
        { action: { segregation: 'Tagged, in the freezer.' }, made: { name: 'The operator', at: doneAt, recordedAt: kitchen.now() } },
      ],
      voidedActions: [
        {
          ...{ actionId, action: anAction.unforeseen, made: { name: 'The reviewer' } },
          voided: { how: 'corrected', reason: 'It was the freezer.', by: 'The operator', at: kitchen.now() },
        },
      ],
    });
    expect(shown.actions).toHaveLength(1);
  });

  test('after the review takes it back: the reviewer had read something else', async () => {
    const { lotId, deviationId, actionId, number } = await aClosed([{}], 'packed');
    await sign(lotId);
    await done(correct(kitchen.operator, deviationId, actionId));
    expect(await takenBackBy(lotId)).toEqual({ code: 'since-action', figures: { number: String(number), did: 'corrected' } });
  });

  test('once, with a reason, in the form it asks for, by who may write, of this deviation and this shop', async () => {
    const { deviationId, actionId } = await aClosed();
    const other = await aClosed();
    expect(code(await correct(await shop.hire('inspector'), deviationId, actionId))).toEqual([403, 'not-allowed']);
    expect(code(await correct(stranger, deviationId, actionId))).toEqual([404, 'not-found']);
    expect(code(await correct(kitchen.operator, other.deviationId, actionId))).toEqual([404, 'not-found']);
    expect(code(await correct(kitchen.operator, deviationId, v7()))).toEqual([404, 'not-found']);
    expect(code(await correct(kitchen.operator, deviationId, actionId, { reason: undefined }))).toEqual([422, 'reason-missing']);
    expect(code(await correct(kitchen.operator, deviationId, actionId, { action: anAction.critical }))).toEqual([422, 'other-form']);
    const sent = { actionId: v7(), takenAt: kitchen.now() };
    await done(correct(kitchen.operator, deviationId, actionId, sent));
    await done(correct(kitchen.operator, deviationId, actionId, sent));
    expect(code(await correct(kitchen.operator, deviationId, actionId, { ...sent, reason: 'Another.' }))).toEqual([
      409,
      'sent-differently',
    ]);
    expect(code(await correct(kitchen.operator, deviationId, actionId))).toEqual([409, 'already-amended']);
    expect((await showDeviation(kitchen.operator, deviationId)).actions).toHaveLength(1);
  });
});

describe('a corrective action that is voided', () => {
  test('stays with the reason, and the deviation asks for one again', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'cured');
    const deviationId = v7();
    await done(
      ask(kitchen.operator, contract.openDeviation, { deviationId, lotId, description: 'Water on the floor.', takenAt: kitchen.now() }),
    );
    const { actions } = await act(kitchen.operator, deviationId, kitchen.now());
    await done(strike(kitchen.operator, 'action', actions[0]?.actionId ?? '', 'Of another deviation.'));
    expect(await showDeviation(kitchen.operator, deviationId)).toMatchObject({
      actions: [],
      voidedActions: [{ voided: { how: 'voided', reason: 'Of another deviation.', by: 'The operator' } }],
    });
    expect(codesOf((await kitchen.showLot(lotId)).because)).toContain('next-record-action');
    await done(decide(kitchen.reviewer, deviationId));
    expect(code(await close(kitchen.reviewer, deviationId))).toEqual([409, 'actions-missing']);
    expect(code(await strike(kitchen.operator, 'action', actions[0]?.actionId ?? ''))).toEqual([409, 'already-amended']);
  });

  test('not the last one of a deviation that was closed with it, unless the closing is taken back; one of two is', async () => {
    const { lotId, deviationId, actionId, closingId, number } = await aClosed([{}], 'packed');
    expect(code(await strike(kitchen.operator, 'action', actionId))).toEqual([409, 'still-in-use']);
    await done(ask(kitchen.reviewer, contract.takeBackClosing, { takingBackId: v7(), closingId, reason: 'Too early.' }));
    await act(kitchen.operator, deviationId, kitchen.now());
    await done(close(kitchen.reviewer, deviationId));
    await sign(lotId);
    await done(strike(kitchen.operator, 'action', actionId));
    expect(await showDeviation(kitchen.operator, deviationId)).toMatchObject({ open: false });
    expect(await takenBackBy(lotId)).toEqual({ code: 'since-action', figures: { number: String(number), did: 'voided' } });
  });

  test('not by an inspector, nor from another shop', async () => {
    const { actionId } = await aClosed();
    expect(code(await strike(await shop.hire('inspector'), 'action', actionId))).toEqual([403, 'not-allowed']);
    expect(code(await strike(stranger, 'action', actionId))).toEqual([404, 'not-found']);
  });
});

describe('a closing that is taken back', () => {
  const takeBack = (by: Worker, closingId: string, fields: object = {}) =>
    ask(by, contract.takeBackClosing, { takingBackId: v7(), closingId, reason: 'The result was not in yet.', ...fields });

  test('opens the deviation and brings the hold back; it stays to be seen, and it is closed anew', async () => {
    const { lotId, deviationId, closingId } = await aClosed();
    expect((await kitchen.showLot(lotId)).standing).toBe('in-work');
    larder.clock.moveOn(minute);
    await done(takeBack(kitchen.reviewer, closingId));
    expect(await showDeviation(kitchen.operator, deviationId)).toMatchObject({
      open: true,
      covered: true,
      closingsTakenBack: [
        {
          closingId,
          by: 'The reviewer',
          takenBack: { how: 'taken back', reason: 'The result was not in yet.', by: 'The reviewer', at: kitchen.now() },
        },
      ],
    });
    expect((await showDeviation(kitchen.operator, deviationId)).closing).toBeUndefined();
    expect(await kitchen.showLot(lotId)).toMatchObject({ standing: 'on-hold', because: expect.arrayContaining([{ code: 'next-close' }]) });
    const { openDeviations } = await done<contract.ReplyOf<typeof contract.showToday>>(ask(kitchen.operator, contract.showToday, {}));
    expect(openDeviations.map((one) => one.deviationId)).toContain(deviationId);
    await done(close(shop.owner, deviationId));
    expect(await showDeviation(kitchen.operator, deviationId)).toMatchObject({ open: false, closing: { by: shop.owner.name } });
    expect((await kitchen.showLot(lotId)).standing).toBe('in-work');
  });

  test('holds the deliveries and the lots made of it too', async () => {
    const { lotId, closingId } = await aClosed();
    const into = await kitchen.startLot();
    await kitchen.putIn(into.lotId, { sourceLotId: lotId, weight: kg(2) });
    expect((await kitchen.showLot(into.lotId)).standing).toBe('in-work');
    await done(takeBack(kitchen.reviewer, closingId));
    expect((await kitchen.showLot(into.lotId)).standing).toBe('on-hold');
  });

  test('after the review takes it back, and what has shipped is a possible recall', async () => {
    const { lotId, packingId, deviationId, closingId, number } = await aClosed([{}], 'packed');
    await sign(lotId);
    await ship(kitchen, packingId, 4);
    await done(takeBack(kitchen.reviewer, closingId));
    expect(await takenBackBy(lotId)).toEqual({ code: 'since-closing', figures: { number: String(number) } });
    expect(await kitchen.showLot(lotId)).toMatchObject({
      standing: 'on-hold',
      because: expect.arrayContaining([{ code: 'packages-left-already' }]),
    });
    expect((await showDeviation(kitchen.operator, deviationId)).shippedAlready).toBe(true);
    await expect(ship(kitchen, packingId, 1)).rejects.toThrow('not-cleared');
  });

  test('once, with a reason, by who may close, in this shop', async () => {
    const { closingId } = await aClosed();
    expect(code(await takeBack(kitchen.operator, closingId))).toEqual([403, 'not-allowed']);
    expect(code(await takeBack(stranger, closingId))).toEqual([404, 'not-found']);
    expect(code(await takeBack(kitchen.reviewer, v7()))).toEqual([404, 'not-found']);
    expect(code(await takeBack(kitchen.reviewer, closingId, { reason: '' }))).toEqual([400, 'invalid-input']);
    const sent = { takingBackId: v7() };
    await done(takeBack(shop.owner, closingId, sent));
    await done(takeBack(shop.owner, closingId, sent));
    expect(code(await takeBack(shop.owner, closingId, { ...sent, reason: 'Another.' }))).toEqual([409, 'sent-differently']);
    expect(code(await takeBack(shop.owner, closingId))).toEqual([409, 'taken-back-already']);
  });
});

describe('a decision that is corrected', () => {
  type Said = Partial<InputOf<typeof contract.correctDisposition>['disposition']>;
  const correct = async (
    by: Worker,
    { deviationId, lotId }: { deviationId: string; lotId: string },
    amends: string,
    said: Said = {},
    sent: object = {},
  ) =>
    ask(by, contract.correctDisposition, {
      ...{ correctionId: v7(), amends, reason: 'The scale read half.' },
      disposition: {
        ...{ deviationIds: [deviationId], lotId, decision: 'release', weight: kg(10.025), reason: 'Core never above 40 °F.' },
        ...{ basis: said.decision && said.decision !== 'release' ? undefined : ('test result' as const), ...said },
      },
      ...sent,
    });

  test('in one write: the old one stays with the reason, the new one counts, and the deviation stays closed', async () => {
    const closed = await aClosed([{ decision: 'condemn', weight: kg(4) }, {}]);
    const [first = ''] = closed.made;
    const condemned = { decision: 'condemn', weight: kg(4), reason: 'Glove tip found in it.' } as const;
    const shown = await done<contract.Deviation>(correct(kitchen.reviewer, closed, first, condemned));
    expect(shown).toMatchObject({
      open: false,
      dispositions: [
        { dispositionId: first, voided: { how: 'corrected', reason: 'The scale read half.', by: 'The reviewer' } },
        { dispositionId: closed.made[1] },
        { decision: 'condemn', reason: 'Glove tip found in it.', toDestroy: true },
      ],
    });
    expect(shown.dispositions[2]?.voided).toBeUndefined();
    const { balance } = await done<contract.Trace>(ask(kitchen.operator, contract.showTrace, { nodeId: closed.lotId }));
    expect(balance.find(({ id }) => id === closed.lotId)).toMatchObject({ condemnedGrams: 4000, accountedPercent: '100' });
  });

  test('to less leaves the rest undecided, and the hold is back', async () => {
    const closed = await aClosed();
    await done(correct(kitchen.reviewer, closed, closed.made[0] ?? '', { weight: kg(6) }));
    expect(await showDeviation(kitchen.operator, closed.deviationId)).toMatchObject({ open: true, undecided: { grams: 4025 } });
    expect((await kitchen.showLot(closed.lotId)).standing).toBe('on-hold');
    await done(decide(kitchen.reviewer, closed.deviationId));
    expect((await kitchen.showLot(closed.lotId)).standing).toBe('in-work');
  });

  test('to speak for one of two deviations opens the other', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'cured');
    const both = [v7(), v7()];
    for (const deviationId of both) {
      await done(
        ask(kitchen.operator, contract.openDeviation, { deviationId, lotId, description: 'Water on the floor.', takenAt: kitchen.now() }),
      );
      await act(kitchen.reviewer, deviationId, kitchen.now());
    }
    const { dispositions } = await done<contract.Deviation>(decide(kitchen.reviewer, both[0] ?? '', { deviationIds: both }));
    for (const each of both) await done(close(kitchen.reviewer, each));
    await done(correct(kitchen.reviewer, { deviationId: both[0] ?? '', lotId }, dispositions[0]?.dispositionId ?? ''));
    expect(await kitchen.showLot(lotId)).toMatchObject({ standing: 'on-hold', openDeviations: 1 });
    expect(await showDeviation(kitchen.operator, both[1] ?? '')).toMatchObject({
      open: true,
      dispositions: [{ voided: { how: 'corrected' } }],
    });
  });

  test('after the review takes it back, and what it no longer releases is a possible recall', async () => {
    const closed = await aClosed([{}], 'packed');
    await sign(closed.lotId);
    await ship(kitchen, closed.packingId, 4);
    await done(correct(kitchen.reviewer, closed, closed.made[0] ?? '', { decision: 'condemn', weight: kg(6) }));
    expect(await takenBackBy(closed.lotId)).toEqual({
      code: 'since-decision',
      figures: { number: String(closed.number), did: 'corrected' },
    });
    expect((await showDeviation(kitchen.operator, closed.deviationId)).shippedAlready).toBe(true);
  });

  test('not beyond what there is, nor of another product, nor when it is carried out', async () => {
    const closed = await aClosed([{ decision: 'condemn' }]);
    const [first = ''] = closed.made;
    expect(code(await correct(kitchen.reviewer, closed, first, { weight: kg(10.1) }))).toEqual([422, 'more-than-there-is']);
    const other = await kitchen.startLot();
    expect(code(await correct(kitchen.reviewer, { ...closed, lotId: other.lotId }, first))).toEqual([422, 'wrong-product']);
    const destroyed = { destructionId: v7(), dispositionId: first, method: 'Burnt.', takenAt: kitchen.now() };
    await done(ask(kitchen.operator, contract.recordDestruction, destroyed));
    expect(code(await correct(kitchen.reviewer, closed, first))).toEqual([409, 'still-in-use']);
  });

  test('once, with a reason, by who may decide, in this shop; voided afterwards, nothing of it counts', async () => {
    const closed = await aClosed();
    const [first = ''] = closed.made;
    expect(code(await correct(kitchen.operator, closed, first))).toEqual([403, 'not-allowed']);
    expect(code(await correct(stranger, closed, first))).toEqual([404, 'not-found']);
    expect(code(await correct(kitchen.reviewer, closed, v7()))).toEqual([404, 'not-found']);
    expect(code(await correct(kitchen.reviewer, closed, first, {}, { reason: '' }))).toEqual([400, 'invalid-input']);
    const correctionId = v7();
    await done(correct(kitchen.reviewer, closed, first, {}, { correctionId }));
    await done(correct(kitchen.reviewer, closed, first, {}, { correctionId }));
    expect(code(await correct(kitchen.reviewer, closed, first))).toEqual([409, 'already-amended']);
    expect(code(await strike(kitchen.reviewer, 'disposition', first))).toEqual([409, 'already-amended']);
    await done(strike(kitchen.reviewer, 'disposition', correctionId));
    expect(await showDeviation(kitchen.operator, closed.deviationId)).toMatchObject({ open: true, undecided: { grams: 10_025 } });
  });
});

describe('a destruction that is corrected', () => {
  test('keeps what it said, and is corrected once, by who may write, in this shop', async () => {
    const { deviationId, made } = await aClosed([{ decision: 'condemn' }]);
    const [dispositionId = ''] = made;
    const destroy = (by: Worker, fields: object = {}) =>
      ask(by, contract.recordDestruction, { destructionId: v7(), dispositionId, method: 'Burnt.', takenAt: kitchen.now(), ...fields });
    const { destructionId: amends } = await done<{ destructionId: string }>(destroy(kitchen.operator));
    const correction = { method: 'Taken by the renderer.', amends, reason: 'It was not burnt.' };
    expect(code(await destroy(await shop.hire('inspector'), correction))).toEqual([403, 'not-allowed']);
    expect(code(await destroy(stranger, correction))).toEqual([404, 'not-found']);
    expect(code(await destroy(kitchen.operator, { ...correction, reason: undefined }))).toEqual([422, 'reason-missing']);
    const other = await aClosed([{ decision: 'condemn' }]);
    expect(code(await destroy(kitchen.operator, { ...correction, dispositionId: other.made[0] }))).toEqual([404, 'not-found']);
    const { destructionId } = await done<{ destructionId: string }>(destroy(kitchen.reviewer, correction));
    expect(code(await destroy(kitchen.operator, correction))).toEqual([409, 'already-amended']);
    expect(await showDeviation(kitchen.operator, deviationId)).toMatchObject({
      dispositions: [
        {
          ...{ toDestroy: false, destruction: { destructionId, method: 'Taken by the renderer.', by: 'The reviewer' } },
          voidedDestructions: [{ method: 'Burnt.', by: 'The operator', voided: { how: 'corrected', reason: 'It was not burnt.' } }],
        },
      ],
    });
    expect(code(await destroy(kitchen.operator))).toEqual([409, 'destroyed-already']);
    await done(strike(kitchen.operator, 'destruction', destructionId));
    expect((await showDeviation(kitchen.operator, deviationId)).dispositions).toMatchObject([{ toDestroy: true }]);
  });
});
