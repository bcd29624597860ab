import * as contract from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { codesOf } from '../../apps/api/src/platform/codes-of.test-data';
import { ingredient, meat } from '../builders/a-formula';
import { anAdoptedPlan, aPlan } from '../builders/a-plan';
import { aProduct } from '../builders/a-product';
import { aReceipt } from '../builders/a-receipt';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aSausageLot } from '../builders/a-sausage-lot';
import { aSausagePlan } from '../builders/a-sausage-plan';
import { settle } from '../builders/a-settlement';
import { aShop, done, type Shop } from '../builders/a-shop';
import { anIngredient, anItem, curingSalt } from '../builders/an-item';
import { ask } from '../support/ask';
import { startApp, type TestApp } from '../support/start-app';
import { told as inWords } from '../support/told';

let larder: TestApp;
let shop: Shop;
let kitchen: SausageKitchen;
beforeAll(async () => {
  larder = await startApp();
  shop = await aShop(larder);
  kitchen = await aSausageKitchen(shop, larder);
});
afterAll(() => larder.close());

type Review = contract.ReplyOf<typeof contract.showReview>;
type Weighed = contract.ReplyOf<typeof contract.weighIn>;
const told = ({ status, body }: Awaited<ReturnType<typeof ask>>) => [status, body.code, body.detail];
const g = (value: number) => ({ value, unit: 'g' as const });
const review = (lotId: string) => done<Review>(ask(kitchen.reviewer, contract.showReview, { lotId }));
const weigh = (lotId: string, itemId: string, fields: object = {}) =>
  ask(kitchen.operator, contract.weighIn, {
    ...{ weighingId: v7(), lotId, itemId, weight: g(5), takenAt: kitchen.now(), ...fields },
  });
const weighed = (...sent: Parameters<typeof weigh>) => done<Weighed>(weigh(...sent));
const accelerator = () => anIngredient(shop.owner, { name: 'Accelerator', substance: 'sodium erythorbate', fractionPercent: 100 });
const withoutCure = () => {
  const { content } = aSausagePlan();
  return { ...content, controlPoints: content.controlPoints.filter(({ takenAs }) => takenAs !== 'weighings') };
};

describe('a restricted ingredient of the formula that no control point of the plan judges', () => {
  const sentence =
    'Curing salt 6.25 % holds sodium nitrite, and no control point of the plan judges it. ' +
    'Write one with a limit on sodium nitrite, recorded as weighings, and adopt the plan with it.';
  const start = (productId: string) =>
    ask(kitchen.operator, contract.startLot, { lotId: v7(), productId, note: '', takenAt: kitchen.now() });
  const cured = async (productId: string) => {
    const lines = [meat(await anItem(shop.owner), 100), ingredient(await curingSalt(shop.owner), 0.25)];
    const formula = { formulaId: v7(), productId, expectedYieldPercent: 90, lines };
    await done(ask(shop.owner, contract.recordFormula, formula));
  };

  test('keeps a lot from being started, and the page of the plan says so', async () => {
    const { productId } = await aProduct(shop.owner);
    const { planId } = await anAdoptedPlan(shop.owner, productId, withoutCure());
    await cured(productId);
    expect(told(await start(productId))).toEqual([422, 'plan-incomplete', sentence]);
    const { incomplete } = await done<contract.Plan>(ask(shop.owner, contract.showPlan, { planId }));
    expect(incomplete).toEqual([sentence]);
  });

  test('keeps the plan from being adopted; with the control point both are done', async () => {
    const { productId } = await aProduct(shop.owner);
    await cured(productId);
    const { planId } = await aPlan(shop.owner, productId, withoutCure());
    const adoption = { adoptionId: v7(), planId, statement: 'Adopted.' };
    expect(told(await ask(shop.owner, contract.adoptPlan, adoption))).toEqual([422, 'plan-incomplete', sentence]);
    await anAdoptedPlan(shop.owner, productId, aSausagePlan().content);
    expect((await start(productId)).status).toBe(200);
  });
});

describe('a restricted ingredient beside the formula that no control point judges', () => {
  test('is kept and undetermined, holds the lot, and blocks the review until people have decided', async () => {
    const { itemId } = await accelerator();
    const { lotId } = await aSausageLot(kitchen, larder, 'packed');
    expect(await review(lotId)).toMatchObject({ ready: true });

    const { verdicts, flags, deviationId } = await weighed(lotId, itemId);
    expect(inWords(verdicts)).toMatchObject([
      {
        verdict: {
          kind: 'undetermined',
          measured: '500 ppm',
          because: 'There is sodium erythorbate in this lot, and no control point of its plan judges it.',
          notes: ['By the published limit 500 ppm is met.'],
        },
      },
    ]);
    expect(flags).toContain('not-in-formula');
    expect(await kitchen.showLot(lotId)).toMatchObject({
      standing: 'on-hold',
      weighings: [{}, { judged: verdicts }],
      unjudged: [{ substance: 'sodium erythorbate', settled: false }],
    });
    const blocking = (await review(lotId)).findings.filter(({ blocks }) => blocks);
    expect(blocking).toMatchObject([{ deviationId, kind: 'open' }]);
    if (!deviationId) throw new Error('No deviation');

    await settleIt(deviationId);
    expect(await review(lotId)).toMatchObject({ ready: true, lot: { unjudged: [{ settled: true }] } });

    const again = await weighed(lotId, itemId);
    expect(again.deviationId).not.toBe(deviationId);
    expect(await review(lotId)).toMatchObject({ ready: false });
  });

  test('is found when the item is described as restricted only later', async () => {
    const item = await anIngredient(shop.owner, { name: 'Blend' });
    const { lotId } = await aSausageLot(kitchen, larder, 'packed');
    expect(await weighed(lotId, item.itemId)).toMatchObject({ verdicts: [] });
    const { itemId: amends, ...fields } = item;
    const described = { ...fields, substance: 'phosphate', fractionPercent: 40 } as const;
    await done(ask(shop.owner, contract.recordItem, { itemId: v7(), ...described, amends }));

    const { standing, because } = await kitchen.showLot(lotId);
    expect(standing).toBe('in-work');
    expect(inWords(because)).toMatchObject([
      {
        tells: 'because and next',
        verdict: {
          because: 'There is phosphate in this lot, and no control point of its plan judges it.',
          next: expect.stringMatching(/^Hold/),
        },
      },
    ]);
    expect((await review(lotId)).findings.filter(({ blocks }) => blocks)).toMatchObject([
      {
        about: 'weighing',
        kind: 'undetermined',
        next: [{ code: 'open-about-substance', figures: { substance: { code: 'substance-phosphate' } } }],
      },
    ]);
    const other = { deviationId: v7(), lotId, description: 'No phosphate on the floor.', takenAt: kitchen.now() };
    await done(ask(kitchen.operator, contract.openDeviation, other));
    await settleIt(other.deviationId);
    expect(await review(lotId)).toMatchObject({ ready: false });

    const deviationId = v7();
    const naming = { deviationId, lotId, substance: 'phosphate' as const, description: 'It was in the blend.', takenAt: kitchen.now() };
    await done(ask(kitchen.operator, contract.openDeviation, naming));
    await settleIt(deviationId);
    expect(await review(lotId)).toMatchObject({ ready: true });
  });

  test('is found when rework brings it', async () => {
    const earlier = await aSausageLot(kitchen, larder, 'cured');
    const { productId } = await aProduct(shop.owner);
    const lines = [meat(await anItem(shop.owner), 100)];
    const formula = { formulaId: v7(), productId, expectedYieldPercent: 90, lines };
    await done(ask(shop.owner, contract.recordFormula, formula));
    await anAdoptedPlan(shop.owner, productId, withoutCure());
    const { lotId } = await kitchen.startLot({ productId });
    const { deviationId } = await kitchen.putIn(lotId, { sourceLotId: earlier.lotId, weight: g(1000) });
    expect(await kitchen.showLot(lotId)).toMatchObject({
      standing: 'on-hold',
      deviations: [
        {
          deviationId,
          description: [{ verdict: { figures: { substance: expect.objectContaining({ code: 'substance-sodium-nitrite' }) } } }],
        },
      ],
    });
  });

  const settleIt = (deviationId: string) => settle(kitchen.reviewer, deviationId, kitchen.now());
});

describe('what the formula does not name', () => {
  const notInFormula = (entry: object) => ({
    code: 'entry-flagged',
    figures: { entry, who: 'The operator', flags: [{ code: 'not-in-formula' }] },
  });

  test('is kept and flagged, as an ingredient and as meat; what it names is not', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'cured');
    const pepper = await anIngredient(shop.owner, { name: 'Pepper' });
    const beef = await aReceipt(kitchen.operator, { itemId: (await anItem(shop.owner, { name: 'Beef' })).itemId });
    expect(await weighed(lotId, pepper.itemId)).toMatchObject({ flags: ['not-in-formula'] });
    expect(await weighed(lotId, kitchen.items.salt)).toMatchObject({ flags: [] });
    expect(await kitchen.putIn(lotId, { receiptId: beef.receiptId, weight: g(100) })).toMatchObject({
      flags: ['not-in-formula'],
    });
    expect((await kitchen.putIn(lotId)).flags).toEqual([]);
    expect((await review(lotId)).findings.filter(({ what }) => JSON.stringify(what).includes('not-in-formula'))).toMatchObject([
      { what: [notInFormula({ code: 'entry-input', figures: { code: beef.code } })], blocks: false },
      { what: [notInFormula({ code: 'entry-weighing', figures: { item: 'Pepper' } })], blocks: false },
    ]);
  });

  test('reminds the reviewer of allergens that nothing in the formula holds, until it is corrected', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'cured');
    const flour = await anIngredient(shop.owner, { name: 'Flour', allergens: ['wheat', 'milk'] });
    const { weighingId } = await weighed(lotId, flour.itemId);
    const reminder = async () => (await review(lotId)).findings.filter(({ what }) => codesOf(what).includes('allergens-beside'));
    expect(await reminder()).toMatchObject([
      {
        what: [
          {
            code: 'allergens-beside',
            figures: { item: 'Flour', allergens: [{ code: 'allergen-milk' }, { code: 'allergen-wheat' }] },
          },
        ],
        next: [{ code: 'look-at-the-label' }],
        blocks: false,
      },
    ]);
    await weighed(lotId, kitchen.items.salt, { amends: weighingId, reason: 'The wrong tub was tapped.' });
    expect(await reminder()).toEqual([]);
  });
});
