import request from 'supertest';
import { afterAll, beforeAll, expect, test } from 'vitest';
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
