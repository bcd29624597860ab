import { expect, test } from 'vitest';
import { clarificationsOf, wordOf, type Clarification } from './clarifications';

const said = (clarificationId: string, word: Clarification['word'], time: string): Clarification => ({
  clarificationId,
  word,
  reason: 'Probe in the air',
  made: { personId: 'p', name: 'Ida Marsh', at: time, recordedAt: time, station: '' },
});
const out = said('a', 'not of the core', '2026-03-02T10:00:00Z');
const back = said('b', 'as recorded', '2026-03-02T11:00:00Z');

test('of a reading the last word counts, and taking it back leaves none', () => {
  expect(wordOf({})).toBeUndefined();
  expect(wordOf({ clarifications: [out] })).toBe('not of the core');
  expect(wordOf({ clarifications: [out, back] })).toBeUndefined();
  expect(wordOf({ clarifications: [out, back, said('c', 'time is right', '2026-03-02T12:00:00Z')] })).toBe('time is right');
});

test('each thing said stands once, oldest first, with the readings it was said of', () => {
  const readings = [{ id: 1, clarifications: [back] }, { id: 2, clarifications: [out, back] }, { id: 3 }, { id: 4, clarifications: [out] }];
  expect(clarificationsOf(readings).map(({ clarificationId, readings: of }) => [clarificationId, of.map(({ id }) => id)])).toEqual([
    ['a', [2, 4]],
    ['b', [1, 2]],
  ]);
});
