import {
  listPublishedLimits,
  listStarterPlans,
  type Formula,
  type Plan,
  type PlanContent,
  type planBatch,
  type Product,
  type ReplyOf,
} from '@larderbook/contracts';
import {
  catalogue,
  coolingCured,
  coolingFromCooking,
  coolingUncured,
  coolingUncured2021,
  nitriteDryCured,
  type CriticalLimit,
  type Support,
} from '@larderbook/haccp';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { aFormula, ingredient, meat } from '../builders/a-formula';
import { adopt, anAdoptedPlan, aPlan, planContent } from '../builders/a-plan';
import { aProduct, productFields } from '../builders/a-product';
import { anotherShop, aShop, done, type Shop, type Worker } from '../builders/a-shop';
import { anIngredient, anItem, curingSalt, type Item } from '../builders/an-item';
import { withSupport } from '../builders/with-support';
import { code } from '../support/ask';
import { run } from '../support/database';
import { startApp, type TestApp } from '../support/start-app';

type Batch = ReplyOf<typeof planBatch>;

describe('products, formulas and plans', () => {
  let larder: TestApp;
  let shop: Shop;
  let owner: Worker;
  let stranger: Worker;
  let pork: Item;
  let beef: Item;
  let salt: Item;
  let cure: Item;

  beforeAll(async () => {
    larder = await startApp();
    shop = await aShop(larder);
    owner = shop.owner;
    stranger = (await anotherShop(larder)).owner;
    pork = await anItem(owner);
    beef = await anItem(owner, { name: 'Beef chuck', species: 'beef' });
    salt = await anIngredient(owner);
    cure = await curingSalt(owner);
  });
  afterAll(() => larder.close());

  const shown = async (productId: string) => (await owner.get(`/products/${productId}`)).body as Product;

  describe('a product', () => {
    test('is made by the owner and seen by everyone', async () => {
      const productId = v7();
      const reply = await owner.put(`/products/${productId}`, productFields({ name: 'Quarry links', code: 'qln' }));
      expect(reply.body).toEqual({ productId, ...productFields({ name: 'Quarry links', code: 'QLN' }) });
      const inspector = await shop.hire('inspector');
      expect((await inspector.get('/products')).body.products).toContainEqual(reply.body);
      expect((await inspector.get(`/products/${productId}`)).body).toEqual({ ...reply.body, formulas: [], plans: [] });
    });

    test.each(['operator', 'reviewer', 'inspector'] as const)('is not made, nor its formula or plan, by the %s', async (role) => {
      const worker = await shop.hire(role);
      const { productId } = await aProduct(owner);
      const { planId } = await aPlan(owner, productId);
      const replies = await Promise.all([
        worker.put(`/products/${v7()}`, productFields()),
        worker.put(`/formulas/${v7()}`, { productId, expectedYieldPercent: 88, lines: [meat(pork, 100)] }),
        worker.put(`/plans/${v7()}`, { productId, content: planContent() }),
        worker.put(`/plan-adoptions/${v7()}`, { planId, statement: 'I accept it.' }),
      ]);
      expect(replies.map(code)).toEqual(Array(4).fill([403, 'not-allowed']));
    });

    test('of another shop is neither seen, nor corrected, nor given a formula or a plan', async () => {
      const { productId } = await aProduct(owner);
      const { formulaId } = await aFormula(owner, productId);
      const { planId } = await aPlan(owner, productId);
      const foreign = await anItem(stranger);
      const replies = await Promise.all([
        stranger.get(`/products/${productId}`),
        stranger.get(`/plans/${planId}`),
        stranger.put(`/products/${v7()}`, { ...productFields(), amends: productId }),
        stranger.put(`/formulas/${v7()}`, { productId, expectedYieldPercent: 88, lines: [meat(foreign, 100)] }),
        stranger.put(`/plans/${v7()}`, { productId, content: planContent() }),
        stranger.put(`/plan-adoptions/${v7()}`, { planId, statement: 'I accept it.' }),
        stranger.post(`/formulas/${formulaId}/scaled`, { trimmedMeat: { value: 10, unit: 'kg' } }),
      ]);
      expect(replies.map(code)).toEqual(Array(7).fill([404, 'not-found']));
      expect((await stranger.get('/products')).body.products).toEqual([]);
    });

    test('keeps its id, its formula and its plan when it is corrected', async () => {
      const { productId } = await aProduct(owner, { name: 'Quary sausage' });
      await aFormula(owner, productId);
      await anAdoptedPlan(owner, productId);
      const corrected = await owner.put(`/products/${v7()}`, {
        ...productFields({ name: 'Quarry sausage', useByDays: 21 }),
        amends: productId,
      });
      expect(corrected.body).toMatchObject({ productId, name: 'Quarry sausage', useByDays: 21, formulaVersion: 1, planInForce: 1 });
      expect((await shown(productId)).plans).toHaveLength(1);
    });

    test('sent twice lands once, sent with other content is refused', async () => {
      const productId = v7();
      const replies = await Promise.all([0, 1].map(() => owner.put(`/products/${productId}`, productFields())));
      expect(replies[0]?.body).toEqual(replies[1]?.body);
      expect(code(await owner.put(`/products/${productId}`, productFields({ useByDays: 7 })))).toEqual([409, 'sent-differently']);
    });
  });

  describe('a formula', () => {
    test('is numbered, and the latest counts; the earlier ones stay', async () => {
      const { productId } = await aProduct(owner);
      const first = await aFormula(owner, productId, { lines: [meat(pork, 100), ingredient(salt, 1.8)] });
      const second = await aFormula(owner, productId, {
        lines: [meat(pork, 70), meat(beef, 30), ingredient(salt, 1.6), ingredient(cure, 0.25)],
      });
      expect([first.version, second.version]).toEqual([1, 2]);
      expect(second.lines).toEqual([
        { part: 'meat', itemId: pork.itemId, percent: 70, itemName: 'Pork shoulder', itemKind: 'meat' },
        { part: 'meat', itemId: beef.itemId, percent: 30, itemName: 'Beef chuck', itemKind: 'meat' },
        { part: 'ingredient', itemId: salt.itemId, percent: 1.6, itemName: 'Salt', itemKind: 'ingredient' },
        {
          part: 'ingredient',
          itemId: cure.itemId,
          percent: 0.25,
          itemName: 'Curing salt 6.25 %',
          itemKind: 'ingredient',
          substance: 'sodium nitrite',
          fractionPercent: 6.25,
        },
      ]);
      expect(second).toMatchObject({ usedByLots: 0, recordedBy: 'Odile Farrow', recordedAt: '2026-03-02T08:00:00.000Z' });
      expect(await shown(productId)).toMatchObject({ formulaVersion: 2, formulas: [second, first] });
    });

    test('sent by two tablets at once makes two versions, never the same one twice', async () => {
      const { productId } = await aProduct(owner);
      const made = await Promise.all([0, 1, 2].map(() => aFormula(owner, productId, { lines: [meat(pork, 100)] })));
      expect(made.map(({ version }) => version).sort()).toEqual([1, 2, 3]);
    });

    test('adds up to exactly 100 % of meat, to the last decimal', async () => {
      const { productId } = await aProduct(owner);
      const thirds = [meat(pork, 33.3333), meat(beef, 66.6667)];
      expect((await aFormula(owner, productId, { lines: thirds })).version).toBe(1);
    });

    test.each<[string, () => Parameters<typeof aFormula>[2], string]>([
      [
        'whose meats fall short',
        () => ({ lines: [meat(pork, 70), meat(beef, 29.9999)] }),
        'The meats add up to 99.9999 %; together they make 100 %.',
      ],
      [
        'whose meats are too many',
        () => ({ lines: [meat(pork, 70), meat(beef, 40)] }),
        'The meats add up to 110 %; together they make 100 %.',
      ],
      [
        'without meat',
        () => ({ lines: [ingredient(salt, 2)] }),
        'A formula needs at least one meat: the meat block is what everything is a percentage of.',
      ],
      [
        'with salt among the meats',
        () => ({ lines: [meat(pork, 98), meat(salt, 2)] }),
        'Salt is an ingredient; it cannot stand among the meats.',
      ],
      [
        'with pork among the ingredients',
        () => ({ lines: [meat(beef, 100), ingredient(pork, 10)] }),
        'Pork shoulder is a meat item; it cannot stand among the ingredients.',
      ],
      [
        'with the same item twice',
        () => ({ lines: [meat(pork, 100), ingredient(cure, 0.2), ingredient(cure, 0.05)] }),
        'Curing salt 6.25 % is listed twice.',
      ],
    ])('%s is no formula, and the sentence says why', async (_case, fields, sentence) => {
      const { productId } = await aProduct(owner);
      const reply = await owner.put(`/formulas/${v7()}`, { productId, expectedYieldPercent: 88, ...fields() });
      expect(code(reply)).toEqual([422, 'formula-incomplete']);
      expect(reply.body.detail).toBe(sentence);
      expect(reply.body.errors).toMatchObject([{ pointer: expect.stringMatching(/^#\/lines/), detail: sentence }]);
      expect((await shown(productId)).formulas).toEqual([]);
    });

    test('names only items of the shop', async () => {
      const { productId } = await aProduct(owner);
      const foreign = await anItem(stranger);
      const reply = await owner.put(`/formulas/${v7()}`, {
        productId,
        expectedYieldPercent: 88,
        lines: [meat(pork, 60), meat(foreign, 40)],
      });
      expect([reply.status, reply.body.detail]).toEqual([404, 'Line 2 names an item that is not in this shop.']);
    });

    test('knows at once that its curing salt is weaker than was thought', async () => {
      const strong = await curingSalt(owner);
      const { productId } = await aProduct(owner);
      await aFormula(owner, productId, { lines: [meat(pork, 100), ingredient(strong, 0.25)] });
      await done(owner.put(`/items/${v7()}`, { ...strong, fractionPercent: 5.88, amends: strong.itemId }));
      expect((await shown(productId)).formulas[0]?.lines[1]).toMatchObject({ itemId: strong.itemId, fractionPercent: 5.88 });
    });
  });

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

  describe('a plan', () => {
    const changed = (change: (content: PlanContent) => void): PlanContent => {
      const content = planContent();
      change(content);
      return content;
    };
    const incomplete = () =>
      changed((content) => void (content.controlPoints = content.controlPoints.filter(({ name }) => name !== 'Curing salt')));

    test('is written, signed and in force; its content comes back as it was written', async () => {
      const { productId } = await aProduct(owner);
      const content = planContent();
      const written = await aPlan(owner, productId, content);
      expect(written).toMatchObject({
        version: 1,
        content,
        inForce: false,
        incomplete: [],
        warnings: [],
        productName: 'Quarry smoked sausage',
      });
      expect((await shown(productId)).planInForce).toBeUndefined();

      const adopted = await adopt(owner, written.planId);
      expect(adopted).toMatchObject({
        inForce: true,
        adoptedBy: 'Odile Farrow',
        adoptedAt: '2026-03-02T08:00:00.000Z',
        statement: 'I accept this plan as the plan of this establishment.',
        content,
      });
      expect(await shown(productId)).toMatchObject({
        planInForce: 1,
        plans: [{ planId: written.planId, version: 1, title: content.title, inForce: true, adoptedBy: 'Odile Farrow' }],
      });
    });

    test('is superseded by the next one that is adopted, and stays to be read', async () => {
      const { productId } = await aProduct(owner);
      const first = await anAdoptedPlan(owner, productId);
      larder.clock.moveOn(60_000);
      const second = await aPlan(owner, productId);
      expect((await shown(productId)).planInForce).toBe(1);
      await adopt(owner, second.planId);
      expect((await shown(productId)).plans.map(({ version, inForce }) => [version, inForce])).toEqual([
        [2, true],
        [1, false],
      ]);
      expect((await owner.get(`/plans/${first.planId}`)).body).toMatchObject({
        inForce: false,
        content: first.content,
        statement: expect.any(String),
      });
    });

    test('is adopted once', async () => {
      const { productId } = await aProduct(owner);
      const { planId } = await anAdoptedPlan(owner, productId);
      expect(code(await owner.put(`/plan-adoptions/${v7()}`, { planId, statement: 'I accept it again.' }))).toEqual([
        409,
        'plan-adopted-already',
      ]);
      const { planId: next } = await aPlan(owner, productId);
      const adoptionId = v7();
      const replies = await Promise.all(
        [0, 1].map(() => owner.put(`/plan-adoptions/${adoptionId}`, { planId: next, statement: 'I accept it.' })),
      );
      expect(replies.map(({ status }) => status)).toEqual([200, 200]);
    });

    test('that leaves a likely hazard uncontrolled may be kept, but not adopted', async () => {
      const { productId } = await aProduct(owner);
      const written = await aPlan(owner, productId, incomplete());
      expect(written.incomplete).toEqual([expect.stringMatching(/^Weighing curing salt and ingredients: “Too much nitrite/)]);
      const reply = await owner.put(`/plan-adoptions/${v7()}`, { planId: written.planId, statement: 'I accept it.' });
      expect(code(reply)).toEqual([422, 'plan-incomplete']);
      expect(reply.body.detail).toBe(written.incomplete[0]);
      expect((await shown(productId)).planInForce).toBeUndefined();
    });

    test('without what its source asks of the formula says so before it is adopted', async () => {
      const { productId } = await aProduct(owner);
      const written = await aPlan(owner, productId, chilledBy(withSupport(coolingCured)));
      expect(written).toMatchObject({
        incomplete: [],
        warnings: [expect.stringMatching(/^Chilling: the source of its figure asks for more than the plan does: at least 100 ppm/)],
      });
      expect((await adopt(owner, written.planId)).inForce).toBe(true);
    });

    const chilledBy = (limit: CriticalLimit) =>
      changed(({ controlPoints }) =>
        controlPoints.forEach((point) => {
          if (point.name === 'Chilling') point.limits = [{ limitId: v7(), limit }];
        }),
      );
    const saying = (limit: CriticalLimit, support: Support | undefined) => chilledBy({ ...limit, source: { ...limit.source, support } });
    const [read, gap, own] = ['December 2021, p. 20', 'large mass, non-intact, p. 31', 'Letter of 9 September, folder 3'];

    test.each<[string, CriticalLimit, Support | undefined, RegExp[]]>([
      ['an option of 1999, no word on its support', coolingUncured, undefined, [/^Chilling: Since 14 December 2022 .* Write which gap/]],
      ['the same, a tick for words', coolingUncured, { own: 'yes' }, [/^Chilling: Since 14 December 2022/]],
      ['the same, blanks', coolingUncured, { gap: '            ' }, [/^Chilling: Since 14 December 2022/]],
      ['the same, where it was read alone', coolingUncured, { read }, [/^Chilling: Since 14 December 2022/]],
      ['the other option of 1999', coolingFromCooking, undefined, [/^Chilling: Since .* large-mass, non-intact/]],
      ['an option of 1999 known second hand', coolingCured, undefined, [/^Chilling: nobody here has read/, /^Chilling: Since/]],
      ['the same inside a gap', coolingCured, { gap }, [/^Chilling: nobody here has read its figure .* choose another limit\.$/]],
      ['an option of 2021 from memory', coolingUncured2021, undefined, [/^Chilling: nobody here has read its figure/]],
      [
        'the same, ticked as read and no page named',
        { ...coolingUncured2021, source: { ...coolingUncured2021.source, confirmed: true } },
        undefined,
        [/^Chilling: nobody here has read its figure/],
      ],
    ])('on %s may be kept, but not adopted', async (_case, limit, support, because) => {
      const { productId } = await aProduct(owner);
      const written = await aPlan(owner, productId, saying(limit, support));
      expect(written.incomplete).toEqual(because.map((one) => expect.stringMatching(one)));
      const reply = await owner.put(`/plan-adoptions/${v7()}`, { planId: written.planId, statement: 'I accept it.' });
      expect([...code(reply), reply.body.detail]).toEqual([422, 'plan-incomplete', written.incomplete.join(' ')]);
      expect((await shown(productId)).planInForce).toBeUndefined();
    });

    test.each<[string, CriticalLimit, Support]>([
      ['an option of 1999 inside a gap', coolingUncured, { gap }],
      ['an option of 1999 with support of its own', coolingFromCooking, { own }],
      ['an option of 1999 known second hand, read by the shop and inside a gap', coolingCured, { read, gap }],
      ['an option of 2021 that the shop has read', coolingUncured2021, { read }],
      ['an option of 2021 with support of its own', coolingUncured2021, { own }],
    ])('on %s is adopted, and keeps the words with the limit', async (_case, limit, support) => {
      const { productId } = await aProduct(owner);
      const { planId, content } = await anAdoptedPlan(owner, productId, saying(limit, support));
      const chilling = content.controlPoints.find(({ name }) => name === 'Chilling');
      expect(chilling?.limits.map((one) => one.limit.source.support)).toEqual([support]);
      expect((await owner.get(`/plans/${planId}`)).body).toMatchObject({ inForce: true, incomplete: [] });
    });

    test('says no more of a limit than a page holds', async () => {
      const { productId } = await aProduct(owner);
      const content = saying(coolingUncured, { own: 'x'.repeat(1001) });
      expect(code(await owner.put(`/plans/${v7()}`, { productId, content }))).toEqual([400, 'invalid-input']);
    });

    test('in which two things share an id is refused', async () => {
      const { productId } = await aProduct(owner);
      const content = changed(({ steps }) => steps.forEach((step) => void (step.stepId = steps[0]?.stepId ?? '')));
      const reply = await owner.put(`/plans/${v7()}`, { productId, content });
      expect(code(reply)).toEqual([422, 'plan-incomplete']);
      expect(reply.body.detail).toBe(
        'In the plan Receiving meat and Receiving ingredients and packaging share one id; each needs its own.',
      );
    });

    test('needs a product of the shop and a signature in words', async () => {
      expect(code(await owner.put(`/plans/${v7()}`, { productId: v7(), content: planContent() }))).toEqual([404, 'not-found']);
      const { productId } = await aProduct(owner);
      const { planId } = await aPlan(owner, productId);
      expect(code(await owner.put(`/plan-adoptions/${v7()}`, { planId, statement: ' ' }))).toEqual([400, 'invalid-input']);
      expect(code(await owner.put(`/plan-adoptions/${v7()}`, { planId: v7(), statement: 'I accept it.' }))).toEqual([404, 'not-found']);
    });

    test('names its control points for the monitoring log once it is adopted, not before', async () => {
      const { productId } = await aProduct(owner, { name: 'Loggable sausage' });
      const { planId, content } = await aPlan(owner, productId);
      const named = async () => {
        const { controlPoints } = (await owner.get('/control-points')).body as {
          controlPoints: { controlPointId: string; name: string; productName: string; planTitle: string }[];
        };
        return controlPoints.filter(({ productName }) => productName === 'Loggable sausage');
      };
      expect(await named()).toEqual([]);
      await adopt(owner, planId);
      const ofPlan = content.controlPoints.map(({ controlPointId, name, kind }) => ({
        controlPointId,
        name,
        kind,
        productName: 'Loggable sausage',
        planTitle: content.title,
      }));
      expect(await named()).toEqual(ofPlan.sort((a, b) => a.name.localeCompare(b.name)));
      expect((await stranger.get('/control-points')).body.controlPoints).toEqual([]);
    });

    test('can be started from one of five, each time under ids of its own', async () => {
      const inspector = await shop.hire('inspector');
      const read = async () => (await inspector.get('/starter-plans')).body.starters as { process: string; content: PlanContent }[];
      const [one, two] = [await read(), await read()];
      expect(one.map(({ process }) => process)).toEqual(['cured smoked cooked', 'cook-chill', 'cook-chill', 'roast', 'cured dried']);
      const pointsOf = (starters: typeof one) =>
        starters.flatMap(({ content }) => content.controlPoints.map(({ controlPointId }) => controlPointId));
      expect(pointsOf(one).filter((id) => pointsOf(two).includes(id))).toEqual([]);
    });

    test('of a soup or a sauce says what it does that its kettle is stirred, and a piece needs its measure', async () => {
      const { starters } = listStarterPlans.returns.parse((await owner.get('/starter-plans')).body);
      const { content } = starters.find(({ title }) => title === 'Soup or sauce, stirred and chilled') as (typeof starters)[number];
      const { productId } = await aProduct(owner, { process: 'cook-chill' });
      const { planId, warnings } = await anAdoptedPlan(owner, productId, content);
      expect(warnings).toEqual([
        expect.stringMatching(/^Cooking: what is read is stirred or pumped and has no core, so no reading is doubted for how fast/),
      ]);
      const { content: kept } = (await owner.get(`/plans/${planId}`)).body as Plan;
      expect(kept.controlPoints.find(({ name }) => name === 'Cooking')?.piece).toEqual({ shape: 'stirred' });
      const unmeasured = {
        ...content,
        controlPoints: content.controlPoints.map((point) => ({ ...point, piece: point.piece && { shape: 'slab' } })),
      };
      expect(await owner.put(`/plans/${v7()}`, { productId, content: unmeasured })).toMatchObject({ status: 400 });
    });

    test.each(['cured smoked cooked', 'cook-chill', 'roast', 'cured dried'] as const)(
      'for %s can be adopted once it names its support',
      async (process) => {
        const { productId } = await aProduct(owner, { process });
        expect(await anAdoptedPlan(owner, productId, planContent(process))).toMatchObject({
          inForce: true,
          warnings: [],
        } satisfies Partial<Plan>);
      },
    );
  });

  test('published limits come over the wire exactly as they are printed, each with its source', async () => {
    const { limits } = listPublishedLimits.returns.parse((await owner.get('/published-limits')).body);
    expect(limits.map(({ key, limit }) => ({ key, limit }))).toEqual(catalogue.map(({ key, limit }) => ({ key, limit })));
    expect(limits.every(({ said, limit }) => said.length > 0 && limit.source.citation.length > 0)).toBe(true);
  });

  test.each<[string, object]>([
    ['nothing', {}],
    ['a list', []],
    [
      'lines without end',
      {
        ...productFields({ name: '' }),
        productId: v7(),
        expectedYieldPercent: 88,
        lines: Array(5000).fill({ part: 'meat', itemId: v7(), percent: 1 }),
      },
    ],
    [
      'numbers that are none',
      {
        ...productFields(),
        useByDays: 'soon',
        productId: v7(),
        expectedYieldPercent: '88',
        lines: [{ part: 'meat', itemId: 'pork', percent: '100' }],
      },
    ],
    ['a plan nested out of shape', { productId: v7(), content: { steps: { steps: { steps: [] } }, controlPoints: [[[[]]]] } }],
    ['a limit of a kind nobody knows', { productId: v7(), content: changedLimit({ kind: 'guess', source: {} }) }],
    [
      'a limit with impossible figures',
      {
        productId: v7(),
        content: changedLimit({ kind: 'bandTime', from: { '°F': 1e9 }, to: {}, maxSeconds: -1, longestGapSeconds: 0, source: {} }),
      },
    ],
  ])('a body of %s is refused politely everywhere', async (_case, body) => {
    const paths = [`/products/${v7()}`, `/formulas/${v7()}`, `/plans/${v7()}`, `/plan-adoptions/${v7()}`];
    const replies = await Promise.all([...paths.map((path) => owner.put(path, body)), owner.post(`/formulas/${v7()}/scaled`, body)]);
    for (const reply of replies) expect([reply.status, reply.body.code]).toEqual([400, 'invalid-input']);
  });
});

function changedLimit(limit: object): object {
  const content = planContent();
  return { ...content, controlPoints: content.controlPoints.map((point) => ({ ...point, limits: [{ limitId: v7(), limit }] })) };
}
