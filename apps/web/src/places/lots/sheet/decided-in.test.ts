import { expect, test } from 'vitest';
import { isDecidedIn } from './decided-in';
import type { SheetLine } from './sheet-line';
import type { SheetRow } from './sheet-rows';

const line = (fields: Partial<SheetLine>): SheetLine => ({
  id: 'r',
  kind: 'reading',
  at: 100,
  what: 'Cook',
  notes: [],
  flags: [],
  judged: [],
  corrects: [],
  controlPointId: 'cook',
  ...fields,
});
const span = { from: 100, to: 200, ruled: 1 };
const row = (fields: Partial<SheetLine>, continues?: boolean): SheetRow => ({ kind: 'line', line: line(fields), continues, ...span });
const cook = { controlPointId: 'cook', decidedAt: 100 };

test.each([
  ['at the reading that decided it', row({}), true],
  ['not at a reading of another control point of the same moment', row({ controlPointId: 'chill' }), false],
  ['not at another reading', row({ at: 99 }), false],
  ['not at what is no reading', row({ kind: 'stage end' }), false],
  ['once of a round of probes', row({}, true), false],
  ['where that reading is folded away', { kind: 'folded', id: 'f', lines: [line({ at: 90 }), line({})], ...span } as SheetRow, true],
  ['not where others are', { kind: 'folded', id: 'f', lines: [line({ controlPointId: 'chill' })], ...span } as SheetRow, false],
  ['not at the moment that is now', { kind: 'now', ...span } as SheetRow, false],
])('the word of a stage stands %s', (_case, where, stands) => {
  expect(isDecidedIn(where, cook)).toBe(stands);
});

test('a stage that nothing has decided has no word', () => {
  expect(isDecidedIn(row({}), { controlPointId: 'cook' })).toBe(false);
});
