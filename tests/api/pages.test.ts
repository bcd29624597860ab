import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { projectRoot } from '../../apps/api/src/project-root';
import { buildProgram } from '../support/program';
import { startApp, type TestApp } from '../support/start-app';

let shop: TestApp;
beforeAll(async () => {
  buildProgram();
  shop = await startApp();
}, 120_000);
afterAll(() => shop.close());

const get = (path: string, headers: Record<string, string> = {}) => shop.app.inject({ method: 'GET', url: path, headers });
const asPage = { accept: 'text/html' };
const script = () => `/assets/${readdirSync(join(projectRoot, 'apps/web/dist/assets')).find((name) => name.endsWith('.js'))}`;

describe('the pages', () => {
  test.each(['/', '/lots', '/lots/0190c7a4-0000-7000-8000-000000000000'])(
    '%s is answered with the page, asked for anew each time',
    async (path) => {
      const reply = await get(path, asPage);

      expect(reply.statusCode).toBe(200);
      expect(reply.headers).toMatchObject({ 'content-type': 'text/html; charset=utf-8', 'cache-control': 'no-cache' });
      expect(reply.body).toContain('<div id="');
    },
  );

  test('scripts carry their version in the name and are kept for a year, sent as small as the browser takes them', async () => {
    const [whole, small] = [await get(script()), await get(script(), { 'accept-encoding': 'br' })];

    expect(whole.headers['cache-control']).toBe('public, max-age=31536000, immutable');
    expect(small.headers['content-encoding']).toBe('br');
    expect(small.rawPayload.length).toBeLessThan(whole.rawPayload.length / 2);
  });

  test('a script that is not there is no page', async () => {
    expect((await get('/assets/of-last-year.js')).statusCode).toBe(404);
  });

  test('what is sent compressed is not a file of its own', async () => {
    expect((await get(script())).statusCode).toBe(200);
    for (const ending of ['.br', '.gz']) expect((await get(`${script()}${ending}`)).statusCode).toBe(404);
  });

  test.each(['/api/v1/no-such-route', '/api/no-such-thing'])('%s stays a problem, even when a browser asks', async (path) => {
    const reply = await get(path, asPage);

    expect(reply.statusCode).toBe(404);
    expect(reply.headers['content-type']).toContain('application/problem+json');
  });

  test.each(['/../package.json', '/%2e%2e/package.json', '/assets/..%2f..%2fpackage.json', '/.env', '/%00'])(
    '%s leads to no file outside',
    async (path) => {
      const reply = await get(path);

      expect(reply.statusCode).toBeGreaterThanOrEqual(400);
      expect(reply.statusCode).toBeLessThan(500);
    },
  );
});

describe('every answer', () => {
  test.each(['/', '/health', '/api/openapi.json', '/no-such-file'])('of %s keeps other sites out', async (path) => {
    const { headers } = await get(path, asPage);

    expect(headers['content-security-policy']).toContain("default-src 'self'");
    expect(headers['content-security-policy']).toContain("frame-ancestors 'none'");
    expect(headers).toMatchObject({ 'x-content-type-options': 'nosniff', 'referrer-policy': 'same-origin' });
  });

  test('of the API is left in no cache', async () => {
    expect((await get('/api/openapi.json')).headers['cache-control']).toBe('no-store');
  });
});

describe('what is sent', () => {
  const post = (headers: Record<string, string>, payload: string) =>
    shop.app.inject({ method: 'POST', url: '/api/v1/session', headers, payload });

  test.each([
    ['text', { 'content-type': 'text/plain' }, '{}', 415],
    ['a form', { 'content-type': 'application/x-www-form-urlencoded' }, 'a=b', 415],
    ['half a sentence', { 'content-type': 'application/json' }, '{"userName":', 400],
    ['a whole library', { 'content-type': 'application/json' }, JSON.stringify({ userName: 'x'.repeat(5_000_000) }), 413],
  ])('%s is refused as a problem', async (_case, headers, payload, status) => {
    const reply = await post(headers, payload);

    expect(reply.statusCode).toBe(status);
    expect(reply.headers['content-type']).toContain('application/problem+json');
  });
});
