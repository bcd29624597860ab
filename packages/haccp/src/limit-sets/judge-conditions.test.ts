import { describe, expect, test } from 'vitest';
import { aRow } from './a-row.test-data';
import type { Condition } from './condition';
import { judgeConditions, type LotFigures } from './judge-conditions';
import type { LimitRow } from './limit-set';

const rowWith = (...conditions: Condition[]): LimitRow => aRow({ of: 'life', figure: '≤ 10 days' }, { conditions });

test('what supports a figure is answered as a statement is', () => {
  const says = 'Only inside a gap.';
  const row = rowWith({ kind: 'support', says });
  expect(judgeConditions(row, {}).kind).toBe('undetermined');
  expect(judgeConditions(row, { answered: new Map([[says, true]]) }).kind).toBe('met');
});

test('a product is among those it is for, is not, or is not said', () => {
  const kindOf = (product?: LotFigures['product']) => judgeConditions(rowWith({ kind: 'product', among: ['jerky'] }), { product }).kind;
  expect([kindOf('jerky'), kindOf('roast beef'), kindOf()]).toEqual(['met', 'missed', 'undetermined']);
});

describe('a statement', () => {
  const says = 'The pack is free of oxygen.';
  const judged = (answered?: LotFigures['answered']) => judgeConditions(rowWith({ kind: 'statement', says }), { answered });

  test.each([
    ['answered yes is met', new Map([[says, true]]), 'met', 'plan-says-yes'],
    ['answered no is missed', new Map([[says, false]]), 'missed', 'plan-says-no'],
    ['beside another answer is not answered', new Map([['The pack is dry.', true]]), 'undetermined', 'plan-does-not-answer'],
    ['of a plan without answers is not answered', undefined, 'undetermined', 'plan-does-not-answer'],
  ])('%s', (_case, answered, kind, finding) => {
    expect(judged(answered)).toMatchObject({ kind, conditions: [{ verdict: { kind, finding } }] });
  });
});

describe('salt in the water phase', () => {
  const row = rowWith({ kind: 'salt in water phase', least: 3500, formula: 'salt/(salt+water)' });

  test.each([
    ['not analysed', {}, 'undetermined'],
    ['without the water', { salt: 35n }, 'undetermined'],
    ['exactly at the least', { salt: 35n, water: 965n }, 'met'],
    ['just below it', { salt: 349n, water: 9651n }, 'missed'],
  ])('%s', (_case, lot, kind) => {
    expect(judgeConditions(row, lot).kind).toBe(kind);
  });
});

test('one condition missed is missed, whatever is not known of another', () => {
  const row = rowWith({ kind: 'place', among: ['Scotland'] }, { kind: 'statement', says: 'It is dry.' });
  expect(judgeConditions(row, { place: 'Wales' }).kind).toBe('missed');
  expect(judgeConditions(row, { place: 'Scotland' }).kind).toBe('undetermined');
});
