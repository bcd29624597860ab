import type { LimitThatApplies } from '@larderbook/contracts';
import { coldHolding, cookedMeat65Log } from '@larderbook/haccp';
import { expect, test } from 'vitest';
import { byPurpose } from './by-purpose';
import { firstForProduct } from './first-for-product';
import { inEnglish } from '../../../ui/in-english.test-data';
import { inPlanWords } from './in-plan-words';
import { needsWords } from './needs-words';
import { shownWhen } from './showing';

const inForce = { planId: 'p', version: 3, inForce: true };
const aLimit = (own: Partial<LimitThatApplies> = {}): LimitThatApplies => ({
  rowId: 'cold-holding',
  title: 'Cold holding',
  purpose: 'cold holding',
  says: ['≤ 41 °F (5 °C)'],
  alsoNeeds: [],
  isForClass: false,
  paragraph: '3-501.16(A)(2)',
  force: 'standard',
  known: 'read in the source',
  source: coldHolding.source,
  offeredFirst: true,
  inPlan: { kind: 'no plan', at: [], from: [] },
  limit: coldHolding,
  ...own,
});

test('limits stand under what they are about, as they come', () => {
  const cooking = aLimit({ rowId: 'cook', purpose: 'cooking' });
  const groups = byPurpose([aLimit(), cooking, aLimit({ rowId: 'thaw' })]);
  expect(groups.map(([heading, own]) => [heading, own.length])).toEqual([
    ['cold holding', 2],
    ['cooking', 1],
  ]);
});

test.each([
  ['the very figure', 'this figure', inForce, { state: 'met', word: 'Judged in plan 3', margin: 'at Cold room' }],
  [
    'another',
    'another figure',
    inForce,
    { state: 'undetermined', word: 'Judged by another figure in plan 3', margin: 'at Cold room, from Food Code 2017' },
  ],
  ['none, in a draft', 'nothing', { ...inForce, inForce: false }, { state: 'undetermined', word: 'Not judged in plan 3, not adopted' }],
  [
    'none at any step',
    'not at a step',
    inForce,
    { state: 'undetermined', word: 'Not judged at a step', margin: 'show it by your formula, label or analysis' },
  ],
  ['nothing, for there is no plan', 'no plan', undefined, undefined],
] as const)('a plan that judges by %s', (_case, kind, plan, said) => {
  expect(inPlanWords({ kind, at: ['Cold room'], from: ['Food Code 2017'] }, plan, inEnglish('product-limits'))).toEqual(said);
});

test('of the published limits those of the product come first, and none is offered twice', () => {
  const published = [
    { key: 'cold-holding', title: 'Cold holding', said: '', limit: coldHolding },
    { key: 'cooked-meat-6.5-log', title: 'Cooked meat', said: '', limit: cookedMeat65Log },
  ];
  const limits = [aLimit(), aLimit({ rowId: 'fat', limit: undefined }), aLimit({ rowId: 'old', ended: '2017' })];
  const { own, others } = firstForProduct({ limits, published, kinds: ['range', 'dwell'] });
  expect(own.map(({ key }) => key)).toEqual(['cold-holding']);
  expect(others.map(({ key }) => key)).toEqual(['cooked-meat-6.5-log']);
});

test('a limit that cannot be judged from what is recorded there is not offered', () => {
  expect(firstForProduct({ limits: [aLimit()], published: [], kinds: ['dwell'] })).toEqual({ own: [], others: [] });
});

test.each([
  ['all', [true, true]],
  ['judged', [true, false]],
  ['not judged', [false, true]],
  ['confirmed', [true, false]],
] as const)('shown when %s', (when, shown) => {
  const judged = aLimit({ inPlan: { kind: 'this figure', at: ['Cold room'], from: [] } });
  const other = aLimit({
    inPlan: { kind: 'another figure', at: ['Cold room'], from: [] },
    source: { ...coldHolding.source, confirmed: false },
  });
  expect([judged, other].map(shownWhen[when])).toEqual(shown);
});

test('what a limit also needs is one sentence, whether its parts were sentences or not', () => {
  const needs = ['Humidity is controlled (pp. 24-26).', 'in Scotland'];
  expect(needsWords(needs)).toBe('Humidity is controlled (pp. 24-26); in Scotland');
});
