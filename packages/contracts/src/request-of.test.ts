import { route } from './route';
import { expect, test } from 'vitest';
import { z } from 'zod';
import { requestOf } from './request-of';

const plain = { summary: 'for this test', roles: 'anyone', returns: z.object({}), problems: [] } as const;

test('names go into the path, and the rest into the body', () => {
  const recordWeight = route({ ...plain, method: 'PUT', path: '/lots/:lotId/weights/:weightId', body: z.object({ grams: z.number() }) });
  expect(requestOf(recordWeight, { lotId: 'a/b', weightId: '7', grams: 250 })).toEqual({
    method: 'PUT',
    path: '/lots/a%2Fb/weights/7',
    body: { grams: 250 },
  });
});

test('a query goes behind the path; what is undefined is left out', () => {
  const listWeights = route({
    ...plain,
    method: 'GET',
    path: '/weights',
    query: z.object({ of: z.string(), before: z.string().optional() }),
  });
  expect(requestOf(listWeights, { of: 'pork & beef', before: undefined })).toEqual({
    method: 'GET',
    path: '/weights?of=pork%20%26%20beef',
  });
});

test('a route without a body sends none', () => {
  const endSession = route({ ...plain, method: 'DELETE', path: '/session' });
  expect(requestOf(endSession, {})).toEqual({ method: 'DELETE', path: '/session' });
});
