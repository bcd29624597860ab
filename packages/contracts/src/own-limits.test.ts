import { limitSets } from '@larderbook/haccp';
import { expect, test } from 'vitest';
import { limitCondition, ownLimitRow } from './own-limits';

test('every published figure may be taken into a set of one’s own, word for word', () => {
  for (const { id: rowId, isDefault: _offeredFirst, ...row } of limitSets.flatMap(({ rows }) => rows)) {
    expect(ownLimitRow.parse({ ...row, rowId })).toEqual({ ...row, rowId });
  }
});

test.each([
  ['of a product class that is not known', { kind: 'product', among: ['dumplings'] }],
  ['of no place', { kind: 'place', among: [] }],
  ['of no nitrite', { kind: 'nitrite', least: 0, per: 'meat block' }],
  ['without its words', { kind: 'statement', says: ' ' }],
])('a condition %s is none', (_case, condition) => {
  expect(limitCondition.safeParse(condition).success).toBe(false);
});
