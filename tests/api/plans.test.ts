import { listStarterPlans, type Plan, type PlanContent, type Product } from '@larderbook/contracts';
import { coolingCured, coolingFromCooking, coolingUncured, coolingUncured2021, type CriticalLimit, type Support } from '@larderbook/haccp';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { adopt, anAdoptedPlan, aPlan, planContent } from '../builders/a-plan';
import { aProduct } from '../builders/a-product';
import { anotherShop, aShop, type Shop, type Worker } from '../builders/a-shop';
import { withSupport } from '../builders/with-support';
import { code } from '../support/ask';
import { startApp, type TestApp } from '../support/start-app';

let larder: TestApp;
let shop: Shop;
let owner: Worker;
let stranger: Worker;

beforeAll(async () => {
  larder = await startApp();
  shop = await aShop(larder);
  owner = shop.owner;
  stranger = (await anotherShop(larder)).owner;
});
afterAll(() => larder.close());

const shown = async (productId: string) => (await owner.get(`/products/${productId}`)).body as Product;

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
    expect(reply.body.detail).toBe('In the plan Receiving meat and Receiving ingredients and packaging share one id; each needs its own.');
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
