import * as contract from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aSausageLot, ship } from '../builders/a-sausage-lot';
import { act, close, decide, settle, showDeviation, type Decided } from '../builders/a-settlement';
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

const kg = (value: number) => ({ value, unit: 'kg' as const });
const today = () => done<contract.ReplyOf<typeof contract.showToday>>(ask(kitchen.operator, contract.showToday, {}));
const openOn = async (lotId: string) => {
  const seen = { deviationId: v7(), lotId, description: 'A glove tip is missing.', takenAt: kitchen.now() };
  return (await done<contract.Deviation>(ask(kitchen.operator, contract.openDeviation, seen))).deviationId;
};
const destroy = (dispositionId: string, fields = {}) =>
  ask(kitchen.operator, contract.recordDestruction, {
    ...{ destructionId: v7(), dispositionId, method: 'Dyed green and burnt.', takenAt: kitchen.now() },
    ...fields,
  });

/** A lot of ten kilograms, with a deviation that was decided as said and closed. */
async function aDecidedLot(decided: readonly Decided[], reached: 'cured' | 'packed' = 'cured') {
  const lot = await aSausageLot(kitchen, larder, reached);
  const deviationId = await openOn(lot.lotId);
  const { dispositions } = await settle(kitchen.reviewer, deviationId, kitchen.now(), decided);
  return { ...lot, deviationId, made: dispositions.map(({ dispositionId }) => dispositionId) };
}

describe('a decision that is voided', () => {
  test('stays with the reason, its product is undecided again, and the hold is back', async () => {
    const { lotId, deviationId, made } = await aDecidedLot([{ weight: kg(4) }, {}]);
    expect((await kitchen.showLot(lotId)).standing).toBe('in-work');
    await done(strike(kitchen.reviewer, 'disposition', made[0] ?? '', 'The result was of another lot.'));
    expect(await showDeviation(kitchen.operator, deviationId)).toMatchObject({
      open: true,
      covered: false,
      undecided: { grams: 4000 },
      closing: { by: 'The reviewer' },
      dispositions: [
        { dispositionId: made[0], voided: { reason: 'The result was of another lot.', by: 'The reviewer' } },
        { dispositionId: made[1] },
      ],
    });
    expect(await kitchen.showLot(lotId)).toMatchObject({
      standing: 'on-hold',
      because: expect.arrayContaining([
        { code: 'next-decide', figures: { undecided: { value: '4', unit: 'kg' }, atStake: { value: '10.025', unit: 'kg' } } },
      ]),
    });
    expect((await today()).openDeviations.map((one) => one.deviationId)).toContain(deviationId);

    await done(decide(kitchen.reviewer, deviationId, { decision: 'condemn', weight: kg(4) }));
    expect(await showDeviation(kitchen.operator, deviationId)).toMatchObject({ open: false, undecided: { grams: 0 } });
    expect((await kitchen.showLot(lotId)).standing).toBe('in-work');
  });

  test('holds what was made of its product after the closing too, and it can be condemned there', async () => {
    const { lotId, deviationId, made } = await aDecidedLot([{}]);
    const into = await kitchen.startLot();
    await kitchen.putIn(into.lotId, { sourceLotId: lotId, weight: kg(4) });
    expect((await kitchen.showLot(into.lotId)).standing).toBe('in-work');
    await done(strike(kitchen.reviewer, 'disposition', made[0] ?? ''));
    expect((await kitchen.showLot(into.lotId)).standing).toBe('on-hold');
    await done(decide(kitchen.reviewer, deviationId, { decision: 'condemn', lotId: into.lotId, weight: kg(4) }));
    expect((await kitchen.showLot(into.lotId)).standing).toBe('on-hold');
    await done(decide(kitchen.reviewer, deviationId, { decision: 'condemn' }));
    expect(await showDeviation(kitchen.operator, deviationId)).toMatchObject({ open: false });
    expect((await kitchen.showLot(into.lotId)).standing).toBe('condemned');
  });

  test('is a possible recall when what it released has left, and the review is taken back', async () => {
    const { lotId, packingId, deviationId, made } = await aDecidedLot([{}], 'packed');
    await done(ask(shop.owner, contract.signReview, { reviewId: v7(), lotId, statement: 'Complete and met.' }));
    await ship(kitchen, packingId, 4);
    await done(strike(kitchen.reviewer, 'disposition', made[0] ?? ''));
    const { number } = await showDeviation(kitchen.operator, deviationId);
    expect((await today()).recalls.map((one) => one.deviationId)).toContain(deviationId);
    expect(await kitchen.showLot(lotId)).toMatchObject({
      standing: 'on-hold',
      because: expect.arrayContaining([{ code: 'packages-left-already' }]),
      review: { counts: false, takenBack: { what: { code: 'since-decision', figures: { number: String(number), did: 'voided' } } } },
    });
    await expect(ship(kitchen, packingId, 1)).rejects.toThrow('not-cleared');
    await done(decide(kitchen.reviewer, deviationId));
    expect((await kitchen.showLot(lotId)).standing).toBe('to-review');
    await expect(ship(kitchen, packingId, 1)).rejects.toThrow('not-cleared');
    expect((await today()).recalls.map((one) => one.deviationId)).not.toContain(deviationId);
  });

  test('is voided once, by who may decide, in this shop; sent again it lands once', async () => {
    const { made } = await aDecidedLot([{}]);
    const [first = ''] = made;
    expect(code(await strike(kitchen.operator, 'disposition', first))).toEqual([403, 'not-allowed']);
    expect(code(await strike((await anotherShop(larder)).owner, 'disposition', first))).toEqual([404, 'not-found']);
    expect(code(await strike(kitchen.reviewer, 'disposition', first, ''))).toEqual([400, 'invalid-input']);
    expect(code(await strike(kitchen.reviewer, 'disposition', v7()))).toEqual([404, 'not-found']);
    const sent = { voidId: v7(), what: 'disposition' as const, amends: first, reason: 'The wrong lot.' };
    await done(ask(shop.owner, contract.voidRecord, sent));
    await done(ask(shop.owner, contract.voidRecord, sent));
    expect(code(await ask(shop.owner, contract.voidRecord, { ...sent, reason: 'Another.' }))).toEqual([409, 'sent-differently']);
    expect(code(await strike(shop.owner, 'disposition', first))).toEqual([409, 'already-amended']);
    expect(code(await strike(shop.owner, 'disposition', sent.voidId))).toEqual([409, 'already-amended']);
    expect(code(await destroy(first))).toEqual([404, 'not-found']);
  });

  test('is voided by one of two who try at once', async () => {
    const { made } = await aDecidedLot([{}]);
    const replies = await Promise.all([
      strike(kitchen.reviewer, 'disposition', made[0] ?? ''),
      strike(shop.owner, 'disposition', made[0] ?? ''),
    ]);
    expect(replies.map(({ status }) => status).sort()).toEqual([200, 409]);
  });

  test('opens again every deviation that it spoke for', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'cured');
    const both = [await openOn(lotId), await openOn(lotId)];
    for (const each of both) await act(kitchen.reviewer, each, kitchen.now());
    const { dispositions } = await done<contract.Deviation>(decide(kitchen.reviewer, both[0] ?? '', { deviationIds: both }));
    for (const each of both) await done(close(kitchen.reviewer, each));
    await done(strike(kitchen.reviewer, 'disposition', dispositions[0]?.dispositionId ?? ''));
    const shown = await showDeviation(kitchen.operator, both[0] ?? '');
    expect(shown.products).toMatchObject([{ alsoOpen: [{ deviationId: both[1] }] }]);
    expect(await kitchen.showLot(lotId)).toMatchObject({ standing: 'on-hold', openDeviations: 2 });
  });

  test('not when it is carried out: what is destroyed, or taken as rework, is voided first', async () => {
    const condemned = await aDecidedLot([{ decision: 'condemn' }]);
    const { destructionId } = await done<{ destructionId: string }>(destroy(condemned.made[0] ?? ''));
    expect(code(await strike(kitchen.reviewer, 'disposition', condemned.made[0] ?? ''))).toEqual([409, 'still-in-use']);
    await done(strike(kitchen.reviewer, 'destruction', destructionId));
    await done(strike(kitchen.reviewer, 'disposition', condemned.made[0] ?? ''));
    expect((await kitchen.showLot(condemned.lotId)).standing).toBe('on-hold');

    const reworked = await aDecidedLot([{ decision: 'rework' }]);
    const into = await kitchen.startLot();
    const { inputId } = await kitchen.putIn(into.lotId, { sourceLotId: reworked.lotId, weight: kg(2) });
    expect(code(await strike(kitchen.reviewer, 'disposition', reworked.made[0] ?? ''))).toEqual([409, 'still-in-use']);
    await done(strike(kitchen.operator, 'input', inputId));
    await done(strike(kitchen.reviewer, 'disposition', reworked.made[0] ?? ''));
  });

  test('leaves the books of the ledger and the balance whole', async () => {
    const { lotId, made } = await aDecidedLot([{ decision: 'condemn' }]);
    await done(strike(kitchen.reviewer, 'disposition', made[0] ?? ''));
    const { balance } = await done<contract.Trace>(ask(kitchen.operator, contract.showTrace, { nodeId: lotId }));
    expect(balance.find(({ id }) => id === lotId)).toMatchObject({ condemnedGrams: 0, accountedPercent: '100' });
    expect((await today()).toDestroy.filter((one) => one.lotId === lotId)).toEqual([]);
  });
});

describe('a destruction that is voided', () => {
  test('stays with the reason; the product is held apart again, and its destruction is recorded anew', async () => {
    const { lotId, deviationId, made } = await aDecidedLot([{ decision: 'condemn' }]);
    const { destructionId } = await done<{ destructionId: string }>(destroy(made[0] ?? ''));
    await done(strike(kitchen.operator, 'destruction', destructionId, 'It is still in the cage.'));
    expect(await showDeviation(kitchen.operator, deviationId)).toMatchObject({
      open: false,
      dispositions: [
        {
          toDestroy: true,
          voidedDestructions: [{ destructionId, voided: { reason: 'It is still in the cage.', by: 'The operator' } }],
        },
      ],
    });
    expect((await showDeviation(kitchen.operator, deviationId)).dispositions[0]?.destruction).toBeUndefined();
    expect((await today()).toDestroy).toContainEqual(expect.objectContaining({ lotId, toDestroy: true }));
    expect((await kitchen.showLot(lotId)).because).toEqual([{ code: 'all-condemned' }]);
    expect(code(await strike(kitchen.operator, 'destruction', destructionId))).toEqual([409, 'already-amended']);

    await done(destroy(made[0] ?? '', { method: 'Taken by the renderer.' }));
    expect(code(await destroy(made[0] ?? ''))).toEqual([409, 'destroyed-already']);
    expect(await showDeviation(kitchen.operator, deviationId)).toMatchObject({
      dispositions: [{ toDestroy: false, destruction: { method: 'Taken by the renderer.' } }],
    });
    expect((await kitchen.showLot(lotId)).because).toEqual([{ code: 'all-destroyed' }]);
  });

  test('not by an inspector, nor from another shop', async () => {
    const { made } = await aDecidedLot([{ decision: 'condemn' }]);
    const { destructionId } = await done<{ destructionId: string }>(destroy(made[0] ?? ''));
    expect(code(await strike(await shop.hire('inspector'), 'destruction', destructionId))).toEqual([403, 'not-allowed']);
    expect(code(await strike((await anotherShop(larder)).owner, 'destruction', destructionId))).toEqual([404, 'not-found']);
  });
});
