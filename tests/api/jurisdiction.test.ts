import * as contract from '@larderbook/contracts';
import type { EstablishmentFields, LimitThatApplies, ProductLimits } from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { planContent } from '../builders/a-plan';
import { aProduct, productFields } from '../builders/a-product';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aSausageLot } from '../builders/a-sausage-lot';
import { anEstablishment, anotherShop, aShop, done, type Shop } from '../builders/a-shop';
import { ask } from '../support/ask';
import { run } from '../support/database';
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

const retail = { jurisdiction: 'US, retail and catering' } as const;
const limitsOf = (productId: string): Promise<ProductLimits> => done(ask(shop.owner, contract.showProductLimits, { productId }));
const workBy = (fields: Partial<EstablishmentFields>) =>
  shop.owner.put(`/establishment-details/${v7()}`, anEstablishment({ jurisdiction: undefined, ...fields }));
const rowOf = ({ limits }: ProductLimits, rowId: string): LimitThatApplies => {
  const row = limits.find((one) => one.rowId === rowId);
  if (!row) throw new Error(`${rowId} does not apply: ${limits.map((one) => one.rowId).join(' ')}`);
  return row;
};
const reasonsOf = async (planId: string): Promise<string[]> =>
  (await done<contract.Plan>(ask(shop.owner, contract.showPlan, { planId }))).reassess ?? [];

describe('the setting', () => {
  test('is kept with the establishment, an earlier one beside it, and everybody sees it', async () => {
    const where = { ...retail, limitSet: 'us-retail-2013' };
    expect((await workBy(where)).body).toMatchObject(where);
    expect((await kitchen.operator.get('/session')).body.establishment).toMatchObject(where);
    const kept = await run(
      larder.database.ownerUrl,
      'SELECT jurisdiction, limit_set FROM establishment_details WHERE establishment_id = $1 ORDER BY recorded_at, id',
      [shop.establishmentId],
    );
    expect(kept).toEqual([
      { jurisdiction: 'US, inspected establishment', limit_set: null },
      { jurisdiction: 'US, retail and catering', limit_set: 'us-retail-2013' },
    ]);
  });

  test('is the owner’s to change', async () => {
    const { status, body } = await kitchen.operator.put(`/establishment-details/${v7()}`, anEstablishment(retail));
    expect([status, body.code]).toEqual([403, 'not-allowed']);
  });

  test.each([
    ['a jurisdiction nobody publishes for', { jurisdiction: 'own' as never }, '#/jurisdiction'],
    ['an edition of another', { jurisdiction: 'Canada' as const, limitSet: 'us-retail-2022' }, '#/limitSet'],
    ['a place of another', { jurisdiction: 'Canada' as const, place: 'Wales' }, '#/place'],
    ['an edition without a jurisdiction', { limitSet: 'us-retail-2022' }, '#/limitSet'],
  ])('is refused with %s', async (_case, fields, pointer) => {
    const { status, body } = await workBy(fields);
    expect([status, body.code]).toEqual([400, 'invalid-input']);
    expect(body.errors).toEqual([expect.objectContaining({ pointer })]);
  });
});

describe('the limits that apply to a product', () => {
  test('follow its class, and each says where it is printed and why it applies', async () => {
    await workBy(retail);
    const beef = await aProduct(shop.owner, { code: 'GRB', species: 'beef', productClass: 'ground beef' });
    const limits = await limitsOf(beef.productId);
    expect(limits).toMatchObject({ ...retail, productClass: 'ground beef', placesToSay: [], nitriteCountedAs: [] });
    expect(limits.set).toMatchObject({ setId: 'us-retail-2022', isPartial: false, isUsual: true });
    expect(rowOf(limits, 'cook-comminuted')).toMatchObject({
      paragraph: '3-401.11(A)(2)',
      source: { confirmed: true },
      isForClass: true,
      offeredFirst: true,
      inPlan: { kind: 'no plan' },
    });
    expect(rowOf(limits, 'cold-holding')).toMatchObject({ says: ['≤ 41 °F (5 °C)'], isForClass: false });
    expect(limits.limits.map(({ rowId }) => rowId)).not.toContain('cook-poultry');
  });

  test('follow the edition in use, and name the newer one; an unconfirmed figure is never offered first', async () => {
    await workBy({ ...retail, limitSet: 'us-retail-2017' });
    const limits = await limitsOf(kitchen.productId);
    expect(limits.set).toMatchObject({ setId: 'us-retail-2017', isUsual: false });
    expect(limits.newer).toMatchObject({ setId: 'us-retail-2022' }); // the clock stands before that of 2026
    expect(rowOf(limits, 'cold-holding')).toMatchObject({ source: { confirmed: false }, offeredFirst: false });
    expect(limits.limits.filter(({ offeredFirst }) => offeredFirst)).toEqual([]);
  });

  test('say that only a part of an edition was read', async () => {
    await workBy({ ...retail, limitSet: 'us-retail-2013' });
    expect((await limitsOf(kitchen.productId)).set).toMatchObject({ setId: 'us-retail-2013', isPartial: true });
  });

  test('follow the place within a jurisdiction, and how it counts nitrite', async () => {
    const kingdom = { jurisdiction: 'United Kingdom and Ireland' as const };
    await workBy(kingdom);
    const anywhere = await limitsOf(kitchen.productId);
    expect(anywhere.placesToSay).toContain('Wales');
    expect(anywhere.nitriteCountedAs).toHaveLength(2);

    await workBy({ ...kingdom, place: 'Northern Ireland' });
    const north = await limitsOf(kitchen.productId);
    expect(north).toMatchObject({ place: 'Northern Ireland', placesToSay: [] });
    expect(north.nitriteCountedAs).toEqual(['the nitrite ion, NO₂']);
    await workBy({ ...kingdom, place: 'Wales' });
    const wales = await limitsOf(kitchen.productId);
    expect(wales.nitriteCountedAs).toEqual(['sodium nitrite, NaNO₂']);
    expect(wales.limits.map(({ rowId }) => rowId)).not.toContain('nitrite-heat-treated-ion');
  });

  test('say whether the plan judges by them, by another edition’s figure, or not', async () => {
    await workBy({ jurisdiction: 'US, inspected establishment' });
    const limits = await limitsOf(kitchen.productId);
    expect(limits.plan).toMatchObject({ planId: kitchen.planId, inForce: true });
    expect(rowOf(limits, 'cooked-meat-6.5-log').inPlan).toEqual({ kind: 'this figure', at: ['Cook'], from: [] });
    expect(rowOf(limits, 'cooked-meat-7-log').inPlan).toEqual({ kind: 'nothing', at: [], from: [] });
    expect(rowOf(limits, 'cooling-cured').alsoNeeds.join()).toContain('100 ppm ingoing sodium nitrite');

    await workBy({ jurisdiction: 'Canada' });
    expect(rowOf(await limitsOf(kitchen.productId), 'cold-holding').inPlan).toEqual({
      kind: 'another figure',
      at: ['Cold room'],
      from: ['US, retail and catering, Food Code 2022'],
    });
  });

  test('are compared with the newest draft where no plan is in force', async () => {
    await workBy({ jurisdiction: 'US, inspected establishment' });
    const { productId } = await aProduct(shop.owner, { code: 'DRF' });
    await done(shop.owner.put(`/plans/${v7()}`, { productId, content: { ...planContent(), controlPoints: [] } }));
    const planId = v7();
    await done(shop.owner.put(`/plans/${planId}`, { productId, content: planContent() }));
    const limits = await limitsOf(productId);
    expect(limits.plan).toEqual({ planId, version: 2, inForce: false });
    expect(limits.limits.map(({ inPlan }) => inPlan.kind)).toContain('this figure');
  });

  test('are none while the class or the jurisdiction was not said: nothing is assumed', async () => {
    await workBy({});
    const nowhere = await limitsOf(kitchen.productId);
    expect(nowhere).toMatchObject({ productClass: 'cooked sausage', limits: [] });
    expect([nowhere.jurisdiction, nowhere.set]).toEqual([undefined, undefined]);

    await workBy(retail);
    const plain = await aProduct(shop.owner, { code: 'PLN', productClass: undefined });
    const unsaid = await limitsOf(plain.productId);
    expect(unsaid).toMatchObject({ ...retail, limits: [] });
    expect(unsaid.productClass).toBeUndefined();
  });

  test('follow a class that is said later, and the product keeps its id', async () => {
    const { productId } = await aProduct(shop.owner, { code: 'LTR', productClass: undefined });
    const said = productFields({ code: 'LTR', productClass: 'jerky' });
    await done(shop.owner.put(`/products/${v7()}`, { ...said, amends: productId }));
    expect(await limitsOf(productId)).toMatchObject({ productClass: 'jerky' });
  });

  test('are not shown of another establishment’s product', async () => {
    const other = await anotherShop(larder);
    const { status, body } = await ask(other.owner, contract.showProductLimits, { productId: kitchen.productId });
    expect([status, body.code]).toEqual([404, 'not-found']);
  });

  test('are everybody’s to read', async () => {
    const { status } = await ask(kitchen.operator, contract.showProductLimits, { productId: kitchen.productId });
    expect(status).toBe(200);
  });
});

describe('another setting', () => {
  test('is a reason to reassess an adopted plan, never a change of it or of the verdict of a lot', async () => {
    await workBy({ jurisdiction: 'US, inspected establishment' });
    const { lotId } = await aSausageLot(kitchen, larder, 'chilled');
    const before = await kitchen.showLot(lotId);
    const plan = await done<contract.Plan>(ask(shop.owner, contract.showPlan, { planId: kitchen.planId }));

    await workBy({ jurisdiction: 'Canada' });
    expect((await reasonsOf(kitchen.planId)).join()).toMatch(
      /Cold room: built on .*Food Code 2022\. Canada, .*in use here, prints ≤ 4 °C for it/,
    );
    const said = { warnings: [], reassess: [], elsewhere: [] };
    const after = await done<contract.Plan>(ask(shop.owner, contract.showPlan, { planId: kitchen.planId }));
    expect({ ...after, ...said }).toEqual({ ...plan, ...said });
    expect(after.warnings).toEqual(expect.arrayContaining([...(after.reassess ?? []), ...(after.elsewhere ?? [])]));
    expect([plan.elsewhere?.join(), after.elsewhere]).toEqual([expect.stringContaining('other sets: Cold room.'), []]);
    expect(await kitchen.showLot(lotId)).toEqual(before);

    // 40 °F is within the plan's 41 °F and above the 4 °C (39.2 °F) of Canada: the plan counts
    const { verdicts } = await kitchen.read(lotId, 'coldRoom', { entered: { value: 40, unit: '°F' } });
    expect(verdicts.map(({ verdict }) => verdict.kind)).toEqual(['met']);
  });

  test('of nothing is no reason at all', async () => {
    await workBy({});
    expect((await reasonsOf(kitchen.planId)).join()).not.toContain('in use here');
  });
});
