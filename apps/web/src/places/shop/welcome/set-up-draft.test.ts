import { expect, test } from 'vitest';
import { emptyDraft, stepErrors, stepOf } from './set-up-draft';

const draft = emptyDraft('en-US', 'America/Chicago');

test('a new shop needs a name; a number and an address can come later', () => {
  expect(stepErrors('shop', draft)).toEqual({ name: 'write-a-name' });
  expect(stepErrors('shop', { ...draft, establishment: { ...draft.establishment, name: 'Thistlewick Larder' } })).toEqual({});
});

test('the guessed time zone, units and paper will do as they are', () => {
  expect(stepErrors('habits', draft)).toEqual({});
});

test('a time zone that no clock knows is refused', () => {
  expect(stepErrors('habits', { ...draft, establishment: { ...draft.establishment, timeZone: 'Thistlewick' } })).toEqual({
    timeZone: 'zone-by-region',
  });
});

test('the owner’s step says what each field wants', () => {
  expect(stepErrors('owner', { ...draft, owner: { name: 'Mara Quill', userName: 'mq', password: 'short' } })).toEqual({
    userName: 'user-name-letters',
    password: 'password-length',
  });
});

test.each([
  ['a user name somebody has', {}, 'user-name-taken', 'owner'],
  ['the owner’s password', { 'owner.password': 'password-length' }, 'invalid-input', 'owner'],
  ['the time zone', { 'establishment.timeZone': 'zone-by-region' }, 'invalid-input', 'habits'],
  ['the shop’s name', { 'establishment.name': 'write-a-name' }, 'invalid-input', 'shop'],
  ['a place of another jurisdiction', { 'establishment.place': '“Wales” is no place that Canada tells apart.' }, 'invalid-input', 'shop'],
  ['something else', {}, 'already-set-up', undefined],
])('what the server refuses about %s leads back to its step', (_case, errors, code, step) => {
  expect(stepOf(errors, code)).toBe(step);
});
