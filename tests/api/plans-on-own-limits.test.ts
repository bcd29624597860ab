import * as contract from '@larderbook/contracts';
import type { InputOf, ReplyOf } from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest';
import { adopt, aPlan, planContent } from '../builders/a-plan';
import { aProduct } from '../builders/a-product';
import { aShop, done, type Worker } from '../builders/a-shop';
import { heldFor, ownLimits } from '../builders/own-limits';
import { ask } from '../support/ask';
import { startApp, type TestApp } from '../support/start-app';

let larder: TestApp;
let owner: Worker;
beforeAll(async () => {
  larder = await startApp();
  owner = (await aShop(larder)).owner;
});
afterAll(() => larder.close());
/** The first edition of a set, anew for each test. */
let first: string;
beforeEach(async () => {
  first = await written({ rows: [heldFor(660)] });
});

const tell = <R extends contract.RouteShape>(route: R, input: InputOf<R>) => done<ReplyOf<R>>(ask(owner, route, input));
async function written(fields: Parameters<typeof ownLimits>[0]): Promise<string> {
  const ownSetId = v7();
  await tell(contract.recordOwnLimits, { ownSetId, ...ownLimits({ title: 'Our new smokehouse', ...fields }) });
  return ownSetId;
}

/** A plan in force whose cook is held to a limit that was on offer. */
async function planOn(key: string) {
  const { limits } = await tell(contract.listPublishedLimits, {});
  const offered = limits.find((each) => each.key === key);
  if (!offered) throw new Error(`${key} is not on offer`);
  const { productId } = await aProduct(owner);
  const content = planContent();
  const cook = content.controlPoints.find(({ limits: held }) => held.some(({ limit }) => limit.kind === 'dwell'));
  if (!cook) throw new Error('The plan has no cook');
  cook.limits = [{ limitId: v7(), limit: offered.limit }];
  const { planId } = await adopt(owner, (await aPlan(owner, productId, content)).planId);
  return { planId, title: content.title, cook: cook.name };
}

test('a plan is offered a limit of one’s own with its set and its conditions', async () => {
  const { limits } = await tell(contract.listPublishedLimits, {});
  expect(limits.find(({ key }) => key === `${first}/smoked-sausage-core`)).toMatchObject({
    title: 'Core of smoked sausage',
    own: { title: 'Our new smokehouse', edition: '2026-1' },
    alsoNeeds: ['in the small smokehouse, fan at full speed'],
  });
});

test('it takes a limit of one’s own from those on offer, and the set names the plan', async () => {
  const { planId, title } = await planOn(`${first}/smoked-sausage-core`);
  const { rows } = await tell(contract.showLimitSet, { set: first });
  expect(rows[0]?.usedBy).toContainEqual({ planId, title });
});

test('it stays as it was signed when a newer edition comes, and says why to reassess it', async () => {
  const { planId, cook } = await planOn(`${first}/smoked-sausage-core`);
  const before = await tell(contract.showPlan, { planId });
  const second = await written({ edition: '2026-2', replaces: first, rows: [heldFor(720)] });
  const after = await tell(contract.showPlan, { planId });
  expect(after.content).toEqual(before.content);
  expect(after.inForce).toBe(true);
  expect(after.warnings.filter((said) => !before.warnings.includes(said))).toEqual([
    `${cook}: built on Our new smokehouse, edition 2026-1. Our new smokehouse, edition 2026-2, ` +
      'prints 12 min for 145 °F instead of 11 min. Reassess the plan.',
  ]);
  const offered = (await tell(contract.listPublishedLimits, {})).limits.map(({ key }) => key);
  expect(offered).toContain(`${second}/smoked-sausage-core`);
  expect(offered).not.toContain(`${first}/smoked-sausage-core`);
});
