import * as contract from '@larderbook/contracts';
import request from 'supertest';
import { v7 } from 'uuid';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { aSausageKitchen } from '../builders/a-sausage-kitchen';
import { aCurve, aSausageLot } from '../builders/a-sausage-lot';
import { anotherShop, aShop, done, password } from '../builders/a-shop';
import { decide } from '../builders/a-settlement';
import { aDwellRow, ownLimits } from '../builders/own-limits';
import { ask } from '../support/ask';
import { aDevice } from '../support/device';
import { printed } from '../support/printed';
import { startApp, type TestApp } from '../support/start-app';

let larder: TestApp;
beforeAll(async () => void (larder = await startApp()));
afterAll(() => larder.close());

test.each([
  ['es-MX,es;q=0.9', 'Primero inicie sesión.'],
  ['fr-CA,es;q=0.5', 'Primero inicie sesión.'],
  ['en', 'Sign in first.'],
  ['de', 'Sign in first.'],
])('a problem is told to whoever reads %s in a language it has', async (wishes, title) => {
  const { body, status } = await request(larder.app.getHttpServer()).get('/api/v1/session').set('accept-language', wishes);
  expect([status, body.code, body.title]).toEqual([401, 'not-signed-in', title]);
});

test('and in English to whoever names none', async () => {
  const { body } = await request(larder.app.getHttpServer()).get('/api/v1/session');
  expect(body.title).toBe('Sign in first.');
});

test('a person’s own language is told by every session and comes before what the device asks for', async () => {
  const { owner } = await aShop(larder);
  const { body: before } = await owner.get('/session');
  expect(before.language).toBeUndefined();
  expect((await done<{ language: string }>(owner.post('/session/language', { language: 'es' }))).language).toBe('es');

  const elsewhere = aDevice(larder.app);
  const { body: entered } = await elsewhere.post('/session', { userName: owner.userName, password });
  expect(entered.language).toBe('es');
  expect((await elsewhere.get('/lots/0190aaaa-0000-7000-8000-000000000000')).body.title).toBe(
    'No existe ese registro en este establecimiento.',
  );
  expect((await owner.post('/session/language', { language: 'xx' })).body.code).toBe('invalid-input');
});

test('what a review found, signed in one language, is told on paper and in a problem in another', async () => {
  const shop = await anotherShop(larder);
  const kitchen = await aSausageKitchen(shop, larder);
  const { lotId } = await aSausageLot(kitchen, larder, 'packed');
  await kitchen.weighCure(lotId, { itemId: kitchen.items.salt, weight: { value: 400, unit: 'g' } });
  await done(ask(kitchen.reviewer, contract.signReview, { reviewId: v7(), lotId, statement: 'Completo y cumplido.' }));
  expect((await printed(shop.owner, `/lots/${lotId}/lot-record.pdf?language=en`)).text).toContain('400 g was weighed in for a target of');
  expect((await printed(shop.owner, `/lots/${lotId}/lot-record.pdf?language=es`)).text).toContain('se pesaron 400 g para un objetivo de');

  await kitchen.read(lotId, 'coldRoom', { entered: { value: 52, unit: '°F' } });
  await done(kitchen.reviewer.post('/session/language', { language: 'es' }));
  const { body } = await ask(kitchen.reviewer, contract.signReview, { reviewId: v7(), lotId, statement: 'Otra vez.' });
  expect([body.code, body.detail]).toEqual(['review-incomplete', expect.stringContaining('Cold room: no cumplido. 52 °F')]);
  expect((await printed(shop.owner, `/lots/${lotId}/lot-record.pdf?language=es`)).text).toContain('está abierta');
});

test('a limit, a substance and what a release stands on are named in the reader’s language within a sentence', async () => {
  const shop = await anotherShop(larder);
  const kitchen = await aSausageKitchen(shop, larder);
  const { lotId, code } = await aSausageLot(kitchen, larder, 'cured');
  const { deviationId = '' } = (await aCurve(kitchen, larder, lotId, 'cook', [120, 129])) ?? {};
  await done(decide(shop.owner, deviationId, { reason: 'Llegó a 160 °F.', basis: 'process authority' }));
  const report = await printed(shop.owner, `/deviations/${deviationId}/report.pdf?language=es`);
  expect(report.text).toContain('Con base en: autoridad de procesos. Llegó a 160 °F.');

  const days = `from=${kitchen.now().slice(0, 10)}&to=${kitchen.now().slice(0, 10)}`;
  const log = await printed(shop.owner, `/monitoring-log.pdf?controlPointId=${kitchen.points.cure}&${days}&language=es`);
  expect(log.text.replace(/\s+/g, ' ').split(code).at(1)).toContain('156.25 ppm de nitrito de sodio sobre');

  await done(shop.owner.post('/session/language', { language: 'es' }));
  const asked = { value: 150, unit: '°F' as const, limit: 'nitrite-comminuted' };
  const { body } = await ask(shop.owner, contract.calculateHold, asked);
  expect([body.code, body.detail]).toEqual(['cannot-be-calculated', '“Nitrito en carne molida” es un límite de otro tipo.']);
});

test('what an owner wrote in limits of one’s own stays as typed where sets are laid side by side', async () => {
  const shop = await anotherShop(larder);
  const ownSetId = v7();
  const rows = [aDwellRow({ rowId: 'of-our-own', title: 'Hot holding' })];
  await done(ask(shop.owner, contract.recordOwnLimits, { ownSetId, ...ownLimits({ rows }) }));
  await done(shop.owner.post('/session/language', { language: 'es' }));
  const asked = { here: ownSetId, there: 'us-retail-2022' };
  const told = await done<contract.ReplyOf<typeof contract.compareLimitSets>>(ask(shop.owner, contract.compareLimitSets, asked));
  expect([...told.onlyHere, ...told.notRead]).toContain('Hot holding');
  expect([...told.onlyThere, ...told.notRead]).toContain('Conservación en caliente');
});
