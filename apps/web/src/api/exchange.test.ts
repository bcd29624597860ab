import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { ApiProblem, NoConnection } from './api-problem';
import { exchange } from './exchange';

const answer = (status: number, body: string, type: string) =>
  vi.stubGlobal(
    'fetch',
    vi.fn(async () => new Response(body, { status, headers: { 'content-type': type } })),
  );
const put = { method: 'PUT', path: '/readings/1', body: { value: 71.8 } } as const;

beforeEach(() => {
  vi.stubGlobal('localStorage', { getItem: (place: string) => (place === 'larderbook.language' ? 'es' : null) });
});
afterEach(() => void vi.unstubAllGlobals());

test('it is asked in the language of this device, from the first request on', async () => {
  answer(200, '{}', 'application/json');
  await exchange({ method: 'GET', path: '/starter-plans' });
  const headers = expect.objectContaining({ 'accept-language': 'es' }) as unknown;
  expect(fetch).toHaveBeenCalledWith('/api/v1/starter-plans', expect.objectContaining({ headers }));
});

test('the server’s 2xx is its JSON, and a write carries the mark that it comes from our own page', async () => {
  answer(200, '{"verdict":"met"}', 'application/json; charset=utf-8');
  expect(await exchange(put)).toEqual({ verdict: 'met' });
  expect(fetch).toHaveBeenCalledWith(
    '/api/v1/readings/1',
    expect.objectContaining({
      method: 'PUT',
      body: '{"value":71.8}',
      redirect: 'error',
      headers: expect.objectContaining({ 'x-larderbook': '1' }),
    }),
  );
});

test('a problem is thrown with its sentence and its code', async () => {
  answer(
    409,
    '{"type":"about:sent-differently","code":"sent-differently","status":409,"title":"Sent before."}',
    'application/problem+json',
  );
  const thrown = await exchange(put).catch((error: unknown) => error);
  expect(thrown).toBeInstanceOf(ApiProblem);
  expect(thrown).toMatchObject({ status: 409, code: 'sent-differently', message: 'Sent before.' });
});

test.each([
  ['the welcome page of a guest network, with status 200', 200, '<html>', 'text/html'],
  ['a gateway’s error page', 502, '<html>', 'text/html'],
  ['a 404 that is not ours', 404, '{"message":"no route"}', 'application/json'],
  ['an answer that breaks off', 200, '{"verdict":', 'application/json'],
])('%s is no answer', async (_case, status, body, type) => {
  answer(status, body, type);
  await expect(exchange(put)).rejects.toBeInstanceOf(NoConnection);
});

test('no network is no answer', async () => {
  vi.stubGlobal(
    'fetch',
    vi.fn(async () => Promise.reject(new TypeError('Failed to fetch'))),
  );
  await expect(exchange(put)).rejects.toBeInstanceOf(NoConnection);
});
