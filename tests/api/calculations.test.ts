import * as contract from '@larderbook/contracts';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { aShop, type Shop } from '../builders/a-shop';
import { ask } from '../support/ask';
import { aDevice } from '../support/device';
import { startApp, type TestApp } from '../support/start-app';

let larder: TestApp;
let shop: Shop;
beforeAll(async () => {
  larder = await startApp();
  shop = await aShop(larder);
});
afterAll(() => larder.close());

const cure = { meat: { value: 7.3, unit: 'kg' }, strength: 6.25, limit: 'nitrite-comminuted', scale: { value: 0.1, unit: 'g' } } as const;

test('each answers with its working: figures put in, result, source, caution', async () => {
  const { body } = await ask(shop.owner, contract.workOutCure, cure);
  expect(body).toMatchObject({
    results: [{ what: 'At most', said: '18.25 g', value: 18.25, unit: 'g' }, { what: 'On this scale' }],
    steps: [{ gives: '18.25 g' }],
    sources: [{ citation: expect.stringContaining('9 CFR 424.21(c)') }],
    cautions: expect.arrayContaining([expect.stringContaining('toxic')]),
  });
});

test('nothing of it is recorded: the head of the ledger stays where it was', async () => {
  const before = (await ask(shop.owner, contract.ledgerHead, {})).body;
  await ask(shop.owner, contract.workOutCure, cure);
  expect((await ask(shop.owner, contract.ledgerHead, {})).body).toEqual(before);
});

test('the inspector may work things out too; nobody may without signing in', async () => {
  const inspector = await shop.hire('inspector');
  expect((await ask(inspector, contract.workOutBoiling, { metres: 1500, unit: '°C' })).status).toBe(200);
  expect((await ask(aDevice(larder.app), contract.workOutBoiling, { metres: 1500, unit: '°C' })).status).toBe(401);
});

test.each([
  ['time-at-temperature', { value: 120, unit: '°F', limit: 'cooked-meat-6.5-log' }, 422, 'below the coldest row'],
  ['time-at-temperature', { value: 150, unit: '°F', limit: 'nitrite-comminuted' }, 422, 'of another kind'],
  ['time-at-temperature', { value: 150, unit: '°F', limit: 'nowhere' }, 422, 'no published limit'],
  ['curve-against-limit', { unit: '°F', limit: 'cooling-1999-1', readings: [] }, 400, ''],
  ['cure-for-meat', { ...cure, meat: { value: 0, unit: 'kg' } }, 400, ''],
  ['thermometer-in-boiling-water', { hectopascal: 29.92, unit: '°F' }, 400, ''],
])('%s with %j is a problem that says why', async (name, input, status, why) => {
  const { status: got, body } = await shop.owner.post(`/calculations/${name}`, input);
  expect(got).toBe(status);
  expect(JSON.stringify(body)).toContain(why);
});
