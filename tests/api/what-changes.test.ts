import { describedReads, isDayWrite } from '@larderbook/contracts';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { aShop, type Shop } from '../builders/a-shop';
import { aStockedShop, everyRequest, type Stock } from '../builders/every-request';
import { ask } from '../support/ask';
import { routes } from '../support/routes';
import { startApp, type TestApp } from '../support/start-app';

let larder: TestApp;
let shop: Shop;
let stock: Stock;

beforeAll(async () => {
  larder = await startApp();
  shop = await aShop(larder);
  stock = await aStockedShop(shop, larder);
}, 60_000);
afterAll(() => larder.close());

const reads = routes.filter(({ route: { method, path } }) => method === 'GET' && describedReads.includes(path));
const writes = routes.filter(({ route: { method, path } }) => method === 'PUT' && isDayWrite(path));

const answer = async ({ name, route }: (typeof routes)[number]): Promise<unknown> => {
  const reply = await ask(shop.owner, route, everyRequest(stock)[name]);
  expect(reply.status, reply.text).toBe(200);
  return reply.body;
};
const described = async () => Object.fromEntries(await Promise.all(reads.map(async (read) => [read.name, await answer(read)] as const)));

test('every read that is named is one of the contracts', () => {
  expect(reads.map(({ route }) => route.path).sort()).toEqual([...describedReads].sort());
});

test('no record of the day’s work changes what is described', async () => {
  expect(writes.length).toBeGreaterThan(18);
  const before = await described();
  for (const write of writes) await answer(write);
  expect(await described()).toEqual(before);
});
