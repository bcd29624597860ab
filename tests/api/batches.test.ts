import type { Formula, planBatch, ReplyOf } from '@larderbook/contracts';
import { nitriteDryCured } from '@larderbook/haccp';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { aFormula, ingredient, meat } from '../builders/a-formula';
import { anAdoptedPlan, planContent } from '../builders/a-plan';
import { aProduct } from '../builders/a-product';
import { aShop, type Shop, type Worker } from '../builders/a-shop';
import { anIngredient, anItem, curingSalt, type Item } from '../builders/an-item';
import { code } from '../support/ask';
import { run } from '../support/database';
import { startApp, type TestApp } from '../support/start-app';

type Batch = ReplyOf<typeof planBatch>;

let larder: TestApp;
let shop: Shop;
let owner: Worker;
let pork: Item;
let beef: Item;
let salt: Item;
let cure: Item;

beforeAll(async () => {
  larder = await startApp();
  shop = await aShop(larder);
  owner = shop.owner;
  pork = await anItem(owner);
  beef = await anItem(owner, { name: 'Beef chuck', species: 'beef' });
  salt = await anIngredient(owner);
  cure = await curingSalt(owner);
});
afterAll(() => larder.close());

describe('a batch', () => {
  const aSausage = async (lines = [meat(pork, 70), meat(beef, 30), ingredient(salt, 1.8), ingredient(cure, 0.25)]) => {
    const { productId } = await aProduct(owner);
    return { productId, formula: await aFormula(owner, productId, { lines, expectedYieldPercent: 88 }) };
  };
  const batch = async ({ formulaId }: Formula, body: object, by = owner) =>
    (await by.post(`/formulas/${formulaId}/scaled`, body)).body as Batch;

  test('is scaled from the meat as trimmed; anyone may ask, nothing is recorded', async () => {
    const { formula } = await aSausage();
    const inspector = await shop.hire('inspector');
    const [before] = await run(larder.database.ownerUrl, 'SELECT count(*) FROM ledger_entry');
    const scaled = await batch(formula, { trimmedMeat: { value: 10, unit: 'kg' } }, inspector);
    expect(scaled).toMatchObject({ meatGrams: 10_000, totalGrams: 10_205, expectedPackedGrams: 8980.4 });
    expect(scaled.lines.map(({ itemName, grams }) => [itemName, grams])).toEqual([
      ['Pork shoulder', 7000],
      ['Beef chuck', 3000],
      ['Salt', 180],
      ['Curing salt 6.25 %', 25],
    ]);
    expect(await run(larder.database.ownerUrl, 'SELECT count(*) FROM ledger_entry')).toEqual([before]);
  });

  test('of 10 kg takes at most 25 g of curing salt: ¼ oz of nitrite on 100 lb of chopped meat, 9 CFR 424.21(c)', async () => {
    const { formula } = await aSausage();
    const { doses } = await batch(formula, { trimmedMeat: { value: 10, unit: 'kg' } });
    expect(doses).toEqual([
      {
        itemName: 'Curing salt 6.25 %',
        substance: 'sodium nitrite',
        ppm: 156.25,
        weighGrams: 25,
        maxGrams: 25,
        printed: '≤ ¼ oz per 100 lb (156 ppm)',
      },
    ]);
  });

  test('of 100 lb takes at most 4 oz of it', async () => {
    const { formula } = await aSausage();
    const { doses } = await batch(formula, { trimmedMeat: { value: 100, unit: 'lb' } });
    expect(doses[0]?.maxGrams).toBe(113.398); // 4 oz = 113.398 0925 g, rounded down to the milligram
  });

  test('holds two sources of nitrite to one limit together', async () => {
    const strong = await anIngredient(owner, {
      name: 'Curing salt 6.25 %, second bag',
      substance: 'sodium nitrite',
      fractionPercent: 6.25,
    });
    const { formula } = await aSausage([meat(pork, 100), ingredient(cure, 0.2), ingredient(strong, 0.04)]);
    const { doses } = await batch(formula, { trimmedMeat: { value: 10, unit: 'kg' } });
    expect(doses.map(({ maxGrams }) => maxGrams)).toEqual([21, 5]);
  });

  test('is held to the limit of the plan in force', async () => {
    const { productId, formula } = await aSausage();
    const content = planContent();
    content.controlPoints.forEach((point) => {
      if (point.name === 'Curing salt') point.limits = [{ limitId: v7(), limit: nitriteDryCured }];
    });
    await anAdoptedPlan(owner, productId, content);
    const { doses } = await batch(formula, { trimmedMeat: { value: 10, unit: 'kg' } });
    expect(doses[0]).toMatchObject({ maxGrams: 100, printed: '≤ 1 oz per 100 lb (625 ppm)' });
  });

  test('is planned back from the packages wanted, by the expected yield of everything that goes in', async () => {
    const { formula } = await aSausage();
    const scaled = await batch(formula, { packages: 100, net: { value: 12, unit: 'oz' } });
    const wanted = 100 * 12 * 28.349523125;
    expect(scaled.expectedPackedGrams).toBeGreaterThanOrEqual(wanted);
    expect(scaled.expectedPackedGrams).toBeCloseTo(wanted, 6);
    expect(scaled.meatGrams).toBeCloseTo(wanted / 0.88 / 1.0205, 6);
  });

  test.each([
    ['no meat', { trimmedMeat: { value: 0, unit: 'kg' } }],
    ['half a package', { packages: 0.5, net: { value: 12, unit: 'oz' } }],
    ['nothing at all', {}],
  ])('of %s is refused', async (_case, body) => {
    const { formula } = await aSausage();
    expect(code(await owner.post(`/formulas/${formula.formulaId}/scaled`, body))).toEqual([400, 'invalid-input']);
  });
});
