import type { Condition } from '@larderbook/haccp';
import { expect, test } from 'vitest';
import { inEnglish } from '../../../ui/in-english.test-data';
import { conditionOf, withCondition, type ConditionDraft } from './condition-of';

test.each<[ConditionDraft, Condition]>([
  [
    { kind: 'product', said: 'dry sausage' },
    { kind: 'product', among: ['dry sausage'] },
  ],
  [
    { kind: 'place', said: ' Wales ' },
    { kind: 'place', among: ['Wales'] },
  ],
  [
    { kind: 'nitrite', said: '100' },
    { kind: 'nitrite', least: 100_000, per: 'meat block' },
  ],
  [
    { kind: 'accelerator', said: '250.5' },
    { kind: 'accelerator', least: 250_500, per: 'meat block' },
  ],
  [
    { kind: 'salt in water phase', said: '3.5' },
    { kind: 'salt in water phase', least: 3500, formula: 'salt/(salt+water)' },
  ],
  [
    { kind: 'statement', said: 'fan at full speed' },
    { kind: 'statement', says: 'fan at full speed' },
  ],
])('%o is a condition', (draft, value) => {
  expect(conditionOf(draft, inEnglish('own-limits'))).toEqual({ value });
});

test.each<[ConditionDraft, string]>([
  [{ kind: '', said: 'anything' }, 'Choose what kind of condition it is.'],
  [{ kind: 'product', said: '' }, 'Choose the class of product.'],
  [{ kind: 'nitrite', said: '0' }, 'Give the amount, above zero.'],
  [{ kind: 'statement', said: ' ' }, 'Write what has to hold.'],
])('%o is none yet', (draft, fault) => {
  expect(conditionOf(draft, inEnglish('own-limits'))).toEqual({ fault });
});

test('another class or place will do as well, anything else has to hold too', () => {
  const dry: Condition = { kind: 'product', among: ['dry sausage'] };
  const wales: Condition = { kind: 'place', among: ['Wales'] };
  const fan: Condition = { kind: 'statement', says: 'fan on' };
  expect(withCondition([dry, fan], { kind: 'product', among: ['jerky', 'dry sausage'] })).toEqual([
    { kind: 'product', among: ['dry sausage', 'jerky'] },
    fan,
  ]);
  expect(withCondition([wales], { kind: 'place', among: ['Scotland'] })).toEqual([{ kind: 'place', among: ['Wales', 'Scotland'] }]);
  const door: Condition = { kind: 'statement', says: 'door shut' };
  expect(withCondition([fan], door)).toEqual([fan, door]);
});
