import * as contract from '@larderbook/contracts';
import type { ReplyOf } from '@larderbook/contracts';
import { catalogue } from '@larderbook/haccp';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aShop, done, type Shop } from '../builders/a-shop';
import { ask } from '../support/ask';
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

const show = (set: string) => done<ReplyOf<typeof contract.showLimitSet>>(ask(shop.owner, contract.showLimitSet, { set }));

test('there is a set to look in for each jurisdiction', async () => {
  const { sets } = await done<ReplyOf<typeof contract.listLimitSets>>(ask(shop.owner, contract.listLimitSets, {}));
  const usual = sets.filter((set) => set.usual).map(({ jurisdiction }) => jurisdiction);
  expect(usual.toSorted()).toEqual([
    'Australia and New Zealand',
    'Canada',
    'European Union',
    'US, inspected establishment',
    'US, retail and catering',
    'United Kingdom and Ireland',
  ]);
});

test('every figure says what is printed, where, and whether that was read in the source', async () => {
  const { rows } = await show('us-retail-2022');
  expect(rows.find(({ rowId }) => rowId === 'cold-holding')).toMatchObject({
    says: ['≤ 41 °F (5 °C)'],
    paragraph: '3-501.16(A)(2)',
    source: { confirmed: true, edition: '2022' },
  });
});

test('the limits to choose from come over the wire exactly as they are printed, each with its source', async () => {
  const { limits } = contract.listPublishedLimits.returns.parse((await shop.owner.get('/published-limits')).body);
  expect(limits.map(({ key, limit }) => ({ key, limit }))).toEqual(catalogue.map(({ key, limit }) => ({ key, limit })));
  expect(limits.every(({ said, limit }) => said.length > 0 && limit.source.citation.length > 0)).toBe(true);
});

test('a figure names the plans in force that carry it', async () => {
  const plan = await done<ReplyOf<typeof contract.showPlan>>(ask(shop.owner, contract.showPlan, { planId: kitchen.planId }));
  const sets = ['us-inspected-2021', 'us-inspected-1999', 'us-retail-2022'];
  const shown = await Promise.all(sets.map((set) => show(set).catch(() => ({ rows: [] }))));
  const using = shown.flatMap(({ rows }) => rows).flatMap(({ usedBy }) => usedBy);
  expect(using).toContainEqual({ planId: kitchen.planId, title: plan.content.title });
});

test('two editions side by side: what they print differently', async () => {
  const asked = { here: 'us-retail-2022', there: 'us-retail-2013' };
  const { body } = await ask(shop.owner, contract.compareLimitSets, asked);
  expect(body).toMatchObject({ here: { edition: '2022' }, there: { edition: '2013' } });
  expect(body.differing.length).toBeGreaterThan(0);
  expect(body.differing[0].differences[0]).toEqual({ what: expect.any(String), here: expect.any(String), there: expect.any(String) });
});

test('a set that does not exist is a problem with a code of its own', async () => {
  const { status, body } = await ask(shop.owner, contract.showLimitSet, { set: 'nowhere-1900' });
  expect([status, body.code]).toEqual([404, 'no-such-set']);
});
