import * as contract from '@larderbook/contracts';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { anAdoptedPlan } from '../builders/a-plan';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aShop, done, type Shop } from '../builders/a-shop';
import { ask } from '../support/ask';
import { startApp, type TestApp } from '../support/start-app';
import { told } from '../support/told';

let larder: TestApp;
let shop: Shop;
let kitchen: SausageKitchen;
const kg = (value: number) => ({ value, unit: 'kg' }) as const;
const g = (value: number) => ({ value, unit: 'g' }) as const;

beforeAll(async () => {
  larder = await startApp();
  shop = await aShop(larder);
  kitchen = await aSausageKitchen(shop, larder);
});
afterAll(() => larder.close());

/** The plan of the kitchen with the scales of its curing salt stated so. */
async function stating(errors: contract.ControlPoint['errors']) {
  const { content } = await done<contract.Plan>(ask(shop.owner, contract.showPlan, { planId: kitchen.planId }));
  const controlPoints = content.controlPoints.map((point) => (point.takenAs === 'weighings' ? { ...point, errors } : point));
  await anAdoptedPlan(shop.owner, kitchen.productId, { ...content, controlPoints });
}

async function lotWith(meat: number) {
  const { lotId } = await kitchen.startLot();
  await kitchen.putIn(lotId, { weight: kg(meat) });
  const lot = await kitchen.showLot(lotId);
  return { lotId, cure: lot.targets.find(({ itemName }) => itemName === 'Curing salt 6.25 %') };
}

test('2.5 g of curing salt to the kilogram is met where the plan states no error', async () => {
  const { lotId, cure } = await lotWith(4.6);
  expect(cure).toMatchObject({ targetGrams: 11.5, maxGrams: 11.5 });
  expect(cure?.onScale).toBeUndefined();
  expect(await kitchen.weighCure(lotId, { weight: g(11.5) })).toMatchObject({ verdicts: [{ verdict: { kind: 'met' } }] });
});

test('read to half a gram it is not, and the target is the nearest figure of the scale that is', async () => {
  await stating({ mass: { thousandths: 500, unit: 'g', step: 1000 } });
  const { lotId, cure } = await lotWith(4.6);
  expect(cure).toMatchObject({
    targetGrams: 11,
    maxGrams: 11,
    onScale: { code: 'nearest-on-scale', figures: { aimed: { value: '11.5', unit: 'g' }, nearest: { value: '11', unit: 'g' } } },
  });
  const weighed = await kitchen.weighCure(lotId, { weight: g(11) });
  expect(weighed).toMatchObject({ verdicts: [{ verdict: { kind: 'met' } }] });
  const lot = await kitchen.showLot(lotId);
  expect(lot.weighings.find(({ item }) => item.name === 'Curing salt 6.25 %')?.targetGrams).toBe(11);

  const over = await lotWith(4.6);
  expect(told(await kitchen.weighCure(over.lotId, { weight: g(11.5) }))).toMatchObject({
    verdicts: [{ verdict: { kind: 'missed', measured: expect.stringContaining('149.46 ppm to 163.04 ppm') } }],
    deviationId: expect.any(String),
  });
});

test('the scale of the meat counts too, once for each time meat is put in, and is explained', async () => {
  await stating({ meat: { thousandths: 20, unit: 'kg' } });
  const { lotId, cure } = await lotWith(4.6);
  expect(cure).toMatchObject({ targetGrams: 11.4, maxGrams: expect.closeTo(11.45, 6) });
  expect(await kitchen.weighCure(lotId, { weight: g(11.4) })).toMatchObject({ verdicts: [{ verdict: { kind: 'met' } }] });
  const point = (await kitchen.showLot(lotId)).controlPoints.find(({ controlPoint }) => controlPoint.takenAs === 'weighings');
  const { controlPointId = '' } = point?.controlPoint ?? {};
  const explained = await done<contract.PointExplained>(ask(kitchen.operator, contract.explainPoint, { lotId, controlPointId }));
  expect(explained.limits[0]?.assumptions).toContainEqual({ code: 'worse-within-scales' });
});

test('a batch is planned for the same scale, and too coarse a one weighs nothing', async () => {
  await stating({ mass: { thousandths: 500, unit: 'g', step: 1000 } });
  const { formulaId } = (await kitchen.showLot((await lotWith(4.6)).lotId)).formula;
  const plan = async (meat: number) =>
    done<contract.ReplyOf<typeof contract.planBatch>>(ask(shop.owner, contract.planBatch, { formulaId, trimmedMeat: kg(meat) }));
  const [enough, little] = [await plan(4.6), await plan(0.5)];
  expect(enough.doses).toMatchObject([{ weighGrams: 11 }]);
  expect(little.doses[0]).toMatchObject({ onScale: { code: 'nothing-on-scale', figures: { step: { value: '1', unit: 'g' } } } });
});

test('rework is as uncertain as its own lot was weighed, and the target of what is weighed beside it allows for that', async () => {
  await stating({ mass: { thousandths: 500, unit: 'g', step: 1000 }, meat: { thousandths: 20, unit: 'kg' } });
  const earlier = await lotWith(4.6);
  await kitchen.weighCure(earlier.lotId, { weight: g(10) });
  const verdictOn = async (lotId: string) =>
    (await kitchen.showLot(lotId)).controlPoints.find(({ controlPoint }) => controlPoint.takenAs === 'weighings')?.judged[0]?.verdict;

  const { lotId } = await kitchen.startLot();
  await kitchen.putIn(lotId, { sourceLotId: earlier.lotId, weight: kg(2) });
  // 9.5 g of 6.25 % on 4.62 kg and 10.5 g on 4.58 kg; how much of it was put in changes nothing while it is alone.
  expect(told(await verdictOn(lotId))).toMatchObject({ measured: '135.87 ppm (128.52 ppm to 143.29 ppm within the scales’ error)' });

  await kitchen.putIn(lotId, { weight: kg(2.6) });
  const target = (await kitchen.showLot(lotId)).targets.find(({ itemName }) => itemName === 'Curing salt 6.25 %');
  expect(target?.targetGrams).toBeLessThan(6.5);
  const weighed = await kitchen.weighCure(lotId, { weight: g(target?.targetGrams ?? 0) });
  expect(weighed).toMatchObject({ verdicts: [{ verdict: { kind: 'met' } }] });

  const without = await lotWith(4.6);
  await stating(undefined);
  const exact = await lotWith(1);
  await kitchen.putIn(exact.lotId, { sourceLotId: earlier.lotId, weight: kg(2) });
  expect(told(await verdictOn(exact.lotId))?.measured).not.toContain('within');
  expect(without.cure?.targetGrams).toBe(10);
});
