import * as contract from '@larderbook/contracts';
import type { LinePart } from '@larderbook/haccp';
import { limitTeller, lines, teller } from '@larderbook/messages';
import { allWords, wordsTogether } from '@larderbook/messages/all';
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

const voice = { language: 'en', timeZone: 'UTC', timeStyle: 'US' } as const;
const inEnglish = lines(wordsTogether('workings', 'calculations').en, voice, {
  ...limitTeller(allWords.limits.en, voice),
  ...teller({ verdicts: allWords.verdicts.en, limits: allWords.limits.en }, voice),
});
const cure = { meat: { value: 7.3, unit: 'kg' }, strength: 6.25, limit: 'nitrite-comminuted', scale: { value: 0.1, unit: 'g' } } as const;

const grams = (value: string) => ({ value, unit: 'g' });
const kg = (value: number) => ({ value, unit: 'kg' }) as const;
const pickle = { substance: 'sodium nitrite', pickle: kg(20), pump: 10, ppm: 150, strength: 6.25 } as const;
const natural = {
  natural: { value: 70, unit: 'g' },
  ingredientLot: 'C-17',
  certificateLot: 'C-17',
  percent: 2,
  plusMinus: 0.2,
  as: 'NaNO₂',
  meat: kg(10),
  limit: 'nitrite-comminuted',
} as const;

test('each answers with its working: figures put in, result, source, caution', async () => {
  const { body } = await ask(shop.owner, contract.calculateCure, cure);
  expect(body).toMatchObject({
    results: [{ what: { code: 'at-most' }, is: grams('18.25'), value: 18.25, unit: 'g' }, { what: { code: 'on-this-scale' } }],
    steps: [{ gives: grams('18.25') }],
    sources: [{ citation: expect.stringContaining('9 CFR 424.21(c)') }],
    cautions: [{ code: 'caution-curing' }, { code: 'caution-limits' }],
  });
});

test('nothing of it is recorded: the head of the ledger stays where it was', async () => {
  const before = (await ask(shop.owner, contract.ledgerHead, {})).body;
  await ask(shop.owner, contract.calculateCure, cure);
  expect((await ask(shop.owner, contract.ledgerHead, {})).body).toEqual(before);
});

test('a curve is judged by the piece that is said', async () => {
  const readings = [
    { minutes: 0, value: 141 },
    { minutes: 30, value: 140 },
    { minutes: 45, value: 37 },
  ];
  const given = { unit: '°F' as const, limit: 'cooling-1999-1', readings };
  const kindOf = async (piece: object) =>
    (await ask(shop.owner, contract.calculateCurve, { ...given, ...piece })).body.judged[0]?.verdict.kind;
  expect([
    await kindOf({}),
    await kindOf({ thinnest: 60 }),
    await kindOf({ shape: 'slab', thinnest: 8 }),
    await kindOf({ shape: 'stirred', thinnest: 60 }),
  ]).toEqual(['met', 'undetermined', 'met', 'met']);
  expect((await ask(shop.owner, contract.calculateCurve, { ...given, thinnest: 0 })).status).toBe(400);
});

test('the inspector may work things out too; nobody may without signing in', async () => {
  const inspector = await shop.hire('inspector');
  expect((await ask(inspector, contract.calculateBoiling, { metres: 1500, unit: '°C' })).status).toBe(200);
  expect((await ask(aDevice(larder.app), contract.calculateBoiling, { metres: 1500, unit: '°C' })).status).toBe(401);
});

test.each([
  ['time-at-temperature', { value: 120, unit: '°F', limit: 'cooked-meat-6.5-log' }, 422, 'below the coldest row'],
  ['time-at-temperature', { value: 150, unit: '°F', limit: 'nitrite-comminuted' }, 422, 'of another kind'],
  ['time-at-temperature', { value: 150, unit: '°F', limit: 'nowhere' }, 422, 'no published limit'],
  ['curve-against-limit', { unit: '°F', limit: 'cooling-1999-1', readings: [] }, 400, ''],
  ['cure-for-meat', { ...cure, meat: { value: 0, unit: 'kg' } }, 400, ''],
  ['thermometer-in-boiling-water', { hectopascal: 29.92, unit: '°F' }, 400, ''],
  ['thermometer-in-boiling-water', { unit: '°F' }, 400, ''],
  ['thermometer-in-boiling-water', { hectopascal: 1005, pressureIs: 'reduced to sea level', unit: '°F' }, 400, 'needs the height'],
  ['thermometer-in-boiling-water', { hectopascal: 1005, metres: 1600, unit: '°F' }, 422, 'reduced to sea level'],
  ['humidity-while-cooking', { option: '1', cooking: 60, humid: 61, endpoint: 150, unit: '°F' }, 422, 'within the cooking time'],
  ['humidity-while-cooking', { option: '5', cooking: 60, humid: 60, endpoint: 150, unit: '°F' }, 400, ''],
  ['hold-at-another-temperature', { product: 'burgers', value: 55, unit: '°C' }, 422, 'ask a process authority'],
  ['cure-for-pickle', { ...pickle, ppm: 150.5 }, 400, ''],
  ['cure-for-pickle', { ...pickle, ppm: 90_000, strength: 1 }, 422, 'pump more'],
  ['pump-by-weight', { green: kg(10), pumped: kg(9) }, 422, 'weighs less'],
  ['binders-in-product', { product: 'sausage', finished: kg(10) }, 422, 'No binder'],
  ['nitrite-from-natural-source', { ...natural, certificateLot: 'C-18' }, 422, 'for lot C-18, not for lot C-17'],
  ['nitrite-from-natural-source', { ...natural, limit: 'phosphate' }, 422, 'choose one on sodium nitrite'],
  ['nitrite-from-natural-source', { ...natural, limit: 'cooling-1999-1' }, 422, 'of another kind'],
  ['water-in-finished-product', { product: 'frankfurter or bologna', moisture: 56, protein: 11 }, 422, 'give the fat too'],
  ['percent-and-weight', { base: kg(10) }, 422, 'one of them'],
  ['batch-by-percent', { from: 'packages', lines: [], trimmedMeat: kg(1), yieldOn: 'everything' }, 400, 'how many packages'],
  ['batch-by-percent', { from: 'trimmed meat', lines: [], yieldOn: 'everything' }, 400, 'Give the trimmed meat'],
])('%s with %j is a problem that says why', async (name, input, status, why) => {
  const { status: got, body } = await shop.owner.post(`/calculators/${name}`, input);
  expect(got).toBe(status);
  expect(JSON.stringify(body)).toContain(why);
});

test.each([
  ['thermometer-in-boiling-water', { hectopascal: 1005, metres: 1600, pressureIs: 'reduced to sea level', unit: '°C' }, '94.4 °C'],
  ['humidity-while-cooking', { option: '3', cooking: 180, humid: 60, endpoint: 131, unit: '°F' }, '1 h'],
  ['hold-at-another-temperature', { product: 'cooked product', value: 75, unit: '°C' }, '30 s'],
  ['cure-for-pickle', pickle, '480 g'],
  ['strength-of-brine', { salt: kg(1), water: kg(9) }, '10 %'],
  ['pump-by-weight', { green: kg(10), pumped: kg(11.2) }, '12 %'],
  ['phosphate-in-pumped-meat', { pickle: 5, pump: 10 }, '0.5 %'],
  ['binders-in-product', { product: 'sausage', finished: kg(100), usual: kg(1.75), isolatedSoy: kg(1) }, '3.5 %'],
  ['citric-for-accelerator', { accelerator: kg(1), citric: kg(1) }, '50 %'],
  ['nitrite-from-natural-source', natural, '126 ppm'],
  ['water-in-formula', { product: 'fresh pork sausage', others: { value: 102, unit: 'lb' } }, '3.154 lb'],
  ['water-in-finished-product', { product: 'dry sausage', moisture: 38, protein: 20 }, '1.9'],
  ['percent-and-weight', { base: kg(10), percent: 0.25 }, '25 g'],
  [
    'batch-by-percent',
    { from: 'packages', lines: [{ name: 'Salt', percent: 10 }], packages: 11, net: kg(1), yieldPercent: 100, yieldOn: 'everything' },
    '10 kg',
  ],
])('%s with %j works out %s first, with steps and a source', async (name, input, first) => {
  const { status, body } = await shop.owner.post(`/calculators/${name}`, input);
  expect([status, body]).toEqual([200, expect.objectContaining({ results: expect.any(Array) })]);
  const { results, steps, sources, grounds } = contract.calculation.parse(body);
  expect(inEnglish(results[0]?.is as LinePart)).toBe(first);
  expect(steps.length).toBeGreaterThan(0);
  expect(sources.length + grounds.length).toBeGreaterThan(0);
});
