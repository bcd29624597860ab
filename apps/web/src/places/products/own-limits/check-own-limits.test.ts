import type { OwnLimitRow } from '@larderbook/contracts';
import { expect, test } from 'vitest';
import { inEnglish } from '../../../ui/in-english.test-data';
import { checkOwnLimits } from './check-own-limits';
import { draftAfter, draftOfRow, edited, emptyDraft, emptyRow, type OwnDraft } from './own-draft';
import { rowIdOf } from './row-id';

const say = inEnglish('own-limits');
const today = '2026-03-02';
const core: OwnLimitRow = {
  rowId: 'core',
  title: 'Core of smoked sausage',
  purpose: 'cooking',
  paragraph: 'Binder 3',
  force: 'industry',
  known: 'read in the source',
  validFrom: '2026',
  conditions: [],
  limit: {
    kind: 'dwell',
    rows: [{ at: { '°C': 6280 }, seconds: 600 }],
    longestGapSeconds: 900,
    source: { citation: 'Our report 7', edition: '2026', confirmed: true },
  },
};
const setId = '0195f2a0-0000-7000-8000-000000000001';
const before = { setId, title: 'Our smokehouse', edition: '1', validFrom: today };
const next = (change: Partial<OwnDraft> = {}) => edited(draftAfter(before, [core], today), { edition: '2', ...change });

test('the next edition carries on what the last one holds, under the same ids', () => {
  const { value } = checkOwnLimits(next(), say, before);
  expect(value).toEqual({
    replaces: before.setId,
    title: 'Our smokehouse',
    edition: '2',
    validFrom: today,
    rows: [core],
  });
});

test('a figure that is new gets an id from its title, which no other row has', () => {
  const { rowId: _none, ...twin } = draftOfRow({ ...core, title: 'Core' });
  const { value } = checkOwnLimits(next({ rows: [draftOfRow(core), twin] }), say);
  expect(value?.rows.map(({ rowId }) => rowId)).toEqual(['core', 'core-2']);
});

test('what is empty is marked beside its field, row by row', () => {
  const { value, errors } = checkOwnLimits({ ...emptyDraft(today), rows: [emptyRow(today)] }, say);
  expect(value).toBeUndefined();
  expect(errors).toMatchObject({
    title: 'write-a-name',
    edition: 'name-the-edition',
    'rows.0.title': 'write-a-name',
    'rows.0.purpose': 'what-it-is-about',
    'rows.0.limit': 'Write the figures first.',
    'rows.0.paragraph': 'where-support-is-filed',
  });
});

test('what contradicts itself stands beside its row, and what is wrong with the whole by itself', () => {
  const ended = { ...draftOfRow(core), rowId: 'ended', validUntil: '2025' };
  const { value, faults } = checkOwnLimits(next({ edition: '1', rows: [draftOfRow(core), ended] }), say, before);
  expect(value).toBeUndefined();
  expect(faults).toEqual([
    { row: 1, because: { code: 'ends-before-it-counts' } },
    { because: { code: 'edition-called-alike', figures: { edition: '1' } } },
  ]);
});

test('other words are another record', () => {
  const draft = next();
  expect(edited(draft, { title: 'Ours' }).ownSetId).not.toBe(draft.ownSetId);
});

test.each([
  ['Core of ham (whole)', 'core-of-ham-whole'],
  ['Jambon sec, été', 'jambon-sec-ete'],
  ['火腿', 'figure'],
  ['taken', 'taken-3'],
])('the id of “%s” is %s', (title, id) => {
  expect(rowIdOf(title, new Set(['taken', 'taken-2']))).toBe(id);
});
