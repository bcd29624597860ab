import { fault, mass } from '@larderbook/contracts';
import { expect, test } from 'vitest';
import { z } from 'zod';
import { ApiProblem } from './api-problem';
import { check, fieldErrors } from './check';

const form = z.object({ weight: mass });

test('a good form gives its value', () => {
  expect(check(form, { weight: { value: 12.5, unit: 'kg' } })).toEqual({ value: { weight: { value: 12.5, unit: 'kg' } } });
});

test('what is wrong stands under the name of its field, as the contract’s fault', () => {
  expect(check(form, { weight: { value: 0, unit: 'kg' } }).errors).toEqual({ 'weight.value': 'weight-above-zero' });
  expect(check(form, { weight: { value: 1e6, unit: 'kg' } }).errors).toEqual({ 'weight.value': fault('at-most', { most: 999_999 }) });
});

test('what is not there yet is asked for, not called an undefined', () => {
  const choice = z.object({ limit: z.string(), kind: z.enum(['cook', 'chill']), edition: z.enum(['1'], fault('name-the-edition')) });
  expect(check(choice, {}).errors).toEqual({
    limit: 'choose-or-enter',
    kind: 'choose-or-enter',
    edition: 'name-the-edition',
  });
});

test('a problem from the server is read the same way, and any other failure names no field', () => {
  const problem = { type: 'invalid-input', code: 'invalid-input', status: 400, title: 'Some fields are not right.' };
  const errors = [
    { pointer: '/weight/value', detail: 'A weight is more than zero.', code: 'weight-above-zero' },
    { pointer: '/weight/value', detail: 'Later.', code: 'weight-above-zero' },
  ];
  expect(fieldErrors(new ApiProblem({ ...problem, errors }))).toEqual({ 'weight.value': 'A weight is more than zero.' });
  expect(fieldErrors(new Error('anything'))).toEqual({});
});
