import { expect, test } from 'vitest';
import { z } from 'zod';
import { fault, faultOf, readFault } from './fault';

const issueOf = (schema: z.ZodType, given: unknown) => {
  const [issue] = schema.safeParse(given).error?.issues ?? [];
  if (!issue) throw new Error('nothing is wrong');
  return faultOf(issue);
};

test('a fault is carried through zod with its figures', () => {
  expect(readFault(fault('at-most', { most: 80 }))).toEqual({ code: 'at-most', figures: { most: 80 } });
  expect(issueOf(z.number().max(80, fault('at-most', { most: 80 })), 81)).toEqual({ code: 'at-most', figures: { most: 80 } });
  expect(issueOf(z.string().min(1, fault('write-a-name')), '')).toEqual({ code: 'write-a-name' });
});

test.each([
  ['what is not there', z.string(), undefined, { code: 'choose-or-enter' }],
  ['a word that is none of the choices', z.enum(['cook', 'chill']), 'fry', { code: 'choose-or-enter' }],
  ['an empty text', z.string().min(1), '', { code: 'choose-or-enter' }],
  ['too many letters', z.string().max(3), 'abcd', { code: 'at-most-characters', figures: { most: 3 } }],
  ['too small a number', z.number().min(2), 1, { code: 'at-least', figures: { least: 2 } }],
  ['another kind of value', z.number(), 'x', { code: 'not-right' }],
])('%s has a fault though the schema names none', (_case, schema, given, expected) => {
  expect(issueOf(schema, given)).toEqual(expected);
});

test('any other text is no fault', () => {
  expect([readFault('Choose an edition.'), readFault('constructor'), readFault('')]).toEqual([undefined, undefined, undefined]);
});
