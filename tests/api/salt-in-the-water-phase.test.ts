import * as contract from '@larderbook/contracts';
import { coolingCured } from '@larderbook/haccp';
import { v7 } from 'uuid';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aCurve } from '../builders/a-sausage-lot';
import { aShop, done, type Shop } from '../builders/a-shop';
import { ask } from '../support/ask';
import { startApp, type TestApp } from '../support/start-app';
import { told } from '../support/told';

let larder: TestApp;
let shop: Shop;
let kitchen: SausageKitchen;

/** Asks for 2.5 % of salt in the water phase, as validated by an invented shop. */
const salty = {
  ...coolingCured,
  conditions: [{ kind: 'salt in water phase' as const, least: 2500, formula: 'salt/(salt+water)' as const }],
};

beforeAll(async () => {
  larder = await startApp();
  shop = await aShop(larder);
  kitchen = await aSausageKitchen(shop, larder, { chilledBy: salty });
});
afterAll(() => larder.close());

/** 10 kg of pork with 70 % of water: 2.5 % asks for 7 × 0.025 ÷ 0.975 = 0.179487… kg of salt. */
async function salted(grams: number) {
  const { lotId } = await kitchen.startLot();
  await kitchen.putIn(lotId);
  const receiptId = await kitchen.receive('salt');
  await done(
    ask(kitchen.operator, contract.weighIn, {
      weighingId: v7(),
      lotId,
      itemId: kitchen.items.salt,
      receiptId,
      weight: { value: grams, unit: 'g' },
      takenAt: kitchen.now(),
    }),
  );
  await aCurve(kitchen, larder, lotId, 'cook', [120, 140, 159, 160]);
  return lotId;
}
const chill = (lotId: string) => aCurve(kitchen, larder, lotId, 'chill', [140, 100, 78, 55, 44]);
const describeItem = (item: keyof SausageKitchen['items'], fields: object) =>
  ask(shop.owner, contract.recordItem, {
    itemId: v7(),
    amends: kitchen.items[item],
    allergens: [],
    kind: 'ingredient',
    name: item,
    ...fields,
  });

test('what nobody has said leaves it undetermined, and names the item', async () => {
  expect(told(await chill(await salted(180)))).toMatchObject({
    verdicts: [{ verdict: { kind: 'undetermined', next: expect.stringContaining('salt and water Pork shoulder holds') } }],
  });
});

test('more than the whole is refused', async () => {
  expect(await describeItem('salt', { saltPercent: 99, waterPercent: 2 })).toMatchObject({
    status: 400,
    body: { errors: [{ pointer: '#/waterPercent' }] },
  });
});

test('from then on the weighings decide, on the figure and just below it', async () => {
  await done(describeItem('pork', { kind: 'meat', species: 'pork', saltPercent: 0, waterPercent: 70 }));
  await done(describeItem('salt', { saltPercent: 100, waterPercent: 0 }));
  const { items } = await done<contract.ReplyOf<typeof contract.listItems>>(ask(shop.owner, contract.listItems, {}));
  expect(items.find(({ name }) => name === 'pork')).toMatchObject({ saltPercent: 0, waterPercent: 70 });
  expect(await chill(await salted(179.488))).toMatchObject({ verdicts: [{ verdict: { kind: 'met' } }] });
  expect(told(await chill(await salted(179.487)))).toMatchObject({
    verdicts: [{ verdict: { kind: 'missed', because: expect.stringContaining('at least 2.5 % salt in the water phase') } }],
  });
});
