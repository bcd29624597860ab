import { recordItem } from '@larderbook/contracts';
import { receivedChilled } from '@larderbook/haccp';
import { expect, test } from 'vitest';
import { check } from '../../../api/check';
import { inEnglish } from '../../../ui/in-english.test-data';
import { draftOf, emptyItem, itemFieldsOf, ownRangeErrors, type ItemDraft } from './item-draft';

const pork: ItemDraft = { ...emptyItem('°F'), name: 'Pork shoulder' };
const cure: ItemDraft = {
  ...emptyItem('°F'),
  name: 'Curing salt 6.25 %',
  kind: 'ingredient',
  substance: 'sodium nitrite',
  fraction: '6.25',
  receiving: 'none',
};
const back = (draft: ItemDraft) => draftOf({ itemId: '01990000-0000-7000-8000-0000000000a1', ...itemFieldsOf(draft) }, '°F');

test('meat is received under the published figure unless somebody says otherwise', () => {
  expect(itemFieldsOf(pork)).toMatchObject({ kind: 'meat', species: 'pork', receivingLimit: receivedChilled, substance: undefined });
});

test('a form opened to correct an item shows what was recorded', () => {
  const frozen: ItemDraft = { ...pork, receiving: 'own', own: { least: '', most: '0', unit: '°F' } };
  expect([pork, { ...cure, species: 'none' as const }, frozen].map(back)).toEqual([pork, { ...cure, species: 'none' }, frozen]);
});

test('a range of one’s own is kept to the hundredth, in the unit it was written in', () => {
  expect(itemFieldsOf({ ...pork, receiving: 'own', own: { least: '-2', most: '3.5', unit: '°C' } }).receivingLimit).toMatchObject({
    min: { '°C': -200 },
    max: { '°C': 350 },
  });
});

test.each([
  ['without a figure', { least: '', most: '' }, { most: 'Give the warmest it may be, or choose another answer.' }],
  ['upside down', { least: '45', most: '40' }, { least: '45 °F is warmer than 40 °F.' }],
  ['with only a warmest', { least: '', most: '41' }, {}],
])('a range of one’s own %s', (_case, own, errors) => {
  expect(ownRangeErrors({ ...pork, receiving: 'own', own: { ...own, unit: '°F' } }, inEnglish('items'))).toEqual(errors);
});

test('curing salt without its percentage is refused beside the field', () => {
  expect(check(recordItem.body, itemFieldsOf({ ...cure, fraction: '' })).errors).toEqual({
    fractionPercent: 'substance-with-percentage',
  });
});

test('what was chosen for an ingredient is dropped when it becomes packaging', () => {
  const casing = itemFieldsOf({
    ...cure,
    kind: 'packaging',
    receiving: 'own',
    allergens: ['wheat'],
    own: { least: '', most: '41', unit: '°F' },
  });
  expect(casing).toEqual({
    name: 'Curing salt 6.25 %',
    kind: 'packaging',
    allergens: [],
    species: undefined,
    substance: undefined,
    fractionPercent: undefined,
    receivingLimit: undefined,
  });
});
