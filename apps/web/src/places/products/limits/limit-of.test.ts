import {
  catalogue,
  coolingCured,
  coolingFoodCode,
  cookedMeat65Log,
  nitriteComminuted,
  receivedChilled,
  withPublishedConditions,
} from '@larderbook/haccp';
import { expect, test } from 'vitest';
import { durationText, secondsOf } from './duration-text';
import { draftOfLimit, emptyLimit, type LimitDraft } from './limit-draft';
import { limitOf } from './limit-of';
import { noPrinted } from './typed';

const noTemperature = 'temperature-in-one-unit';
const noTime = 'length-of-time';
const own = { citation: 'Own validation, March', edition: '2026', confirmed: true };

const offered = catalogue.map(({ key, limit }) => [key, limit] as const);

test.each(offered)('%s can be opened and kept unchanged', (_key, limit) => {
  expect(limitOf(draftOfLimit(limit), limit).value).toEqual(limit);
});

test.each([
  [5400, { amount: '1.5', unit: 'h' }],
  [3798, { amount: '63.3', unit: 'min' }],
  [240, { amount: '4', unit: 'min' }],
  [16.9, { amount: '16.9', unit: 's' }],
  [0, { amount: '0', unit: 's' }],
] as const)('%f s is typed and read back exactly', (seconds, text) => {
  expect(durationText(seconds)).toEqual(text);
  expect(secondsOf(text)).toBe(seconds);
});

test('a length of time that is no number, or finer than a tenth of a second, is not one', () => {
  expect(secondsOf({ amount: '', unit: 'h' })).toBeUndefined();
  expect(secondsOf({ amount: '1.55', unit: 's' })).toBeUndefined();
});

test.each([
  ['concentration', { substance: 'choose-the-substance', printed: 'as-its-source-prints' }],
  ['dwell', { 'rows.0.at': noTemperature, 'rows.0.seconds': noTime }],
  ['cooling', { 'stages.0.from': noTemperature, 'stages.0.to': noTemperature, 'stages.0.withinSeconds': noTime }],
  ['bandTime', { from: noTemperature, maxSeconds: noTime }],
  ['attestation', { statement: 'statement-to-confirm' }],
] as const)('an empty %s says what is missing, field by field', (kind, errors) => {
  expect(limitOf({ ...emptyLimit(kind), source: own }).errors).toMatchObject(errors);
});

test('a range without a bound is said as a whole', () => {
  expect(limitOf({ ...emptyLimit('range'), source: own })).toEqual({ errors: {}, fault: { code: 'neither-least-nor-most' } });
});

test('a limit of one’s own names its source', () => {
  const range: LimitDraft = {
    ...emptyLimit('range'),
    kind: 'range',
    measured: 'pH',
    min: { ...noPrinted, number: '' },
    max: { ...noPrinted, number: '5.3' },
    source: { ...own, citation: '' },
  };
  expect(limitOf(range).errors).toEqual({
    'source.citation': 'name-the-source',
  });
  expect(limitOf({ ...range, source: own }).value).toEqual({
    kind: 'range',
    measured: 'pH',
    min: undefined,
    max: 5300,
    source: own,
  });
});

test('a limit that contradicts itself is refused with what the rules find', () => {
  const swapped: LimitDraft = {
    ...emptyLimit('bandTime'),
    kind: 'bandTime',
    from: { '°F': '130', '°C': '' },
    to: { '°F': '50', '°C': '' },
    most: { amount: '6', unit: 'h' },
    gap: { amount: '2', unit: 'h' },
    source: own,
  };
  expect(limitOf(swapped).fault).toEqual({ code: 'band-not-warmer' });
});

test('other figures under a published source are not let through; another longest gap is', () => {
  const draft = draftOfLimit(coolingFoodCode);
  if (draft.kind !== 'cooling') throw new Error('That limit is a cooling');
  const slower = {
    ...draft,
    stages: draft.stages.map((stage) => ({ ...stage, within: { amount: '7', unit: 'h' as const } })),
  };
  expect(limitOf(slower, coolingFoodCode).errors).toEqual({
    'source.citation': 'source-of-own-figures',
  });
  expect(limitOf({ ...slower, source: own }, coolingFoodCode).value).toMatchObject({ source: own });
  expect(limitOf({ ...draft, gap: { amount: '30', unit: 'min' } }, coolingFoodCode).value).toMatchObject({
    longestGapSeconds: 1800,
    source: coolingFoodCode.source,
  });
});

test('above and less than are kept, changed, and dropped where there is no figure', () => {
  const draft = draftOfLimit(receivedChilled);
  if (draft.kind !== 'range') throw new Error('That limit is a range');
  const strict = { ...draft, signs: { min: '>' as const, max: '<' as const }, source: own };
  expect(limitOf(strict).value).toMatchObject({ signs: { max: '<' } });
  expect(limitOf(strict).value).not.toHaveProperty('signs.min');
  expect(limitOf({ ...strict, signs: { min: undefined, max: undefined } }).value).not.toHaveProperty('signs');
  expect(limitOf({ ...strict, source: draft.source }, receivedChilled).errors).toHaveProperty(['source.citation']);
});

test('a figure of the ion is kept as one, and goes only with another source', () => {
  const ion = catalogue.find(({ limit }) => limit.kind === 'concentration' && limit.countedAs === 'NO₂')?.limit;
  const draft = ion && draftOfLimit(ion);
  if (draft?.kind !== 'concentration') throw new Error('There is one in the sets');
  expect(limitOf(draft, ion).value).toMatchObject({ countedAs: 'NO₂' });
  const salt = { ...draft, countedAs: undefined };
  expect(limitOf(salt, ion).errors).toHaveProperty(['source.citation']);
  expect(limitOf({ ...salt, source: own }, ion).value).not.toMatchObject({ countedAs: 'NO₂' });
});

test('a clock that starts when cooking ends is typed without an upper temperature', () => {
  const draft = draftOfLimit(coolingFoodCode);
  if (draft.kind !== 'cooling') throw new Error('That limit is a cooling');
  const [stage] = draft.stages;
  if (!stage) throw new Error('It has a stage');
  const stages = [{ ...stage, from: noPrinted, counted: 'end of cooking' as const }];
  const { value } = limitOf({ ...draft, stages, source: own });
  expect(value).toMatchObject({ stages: [{ counted: 'end of cooking', to: { '°F': 7000 } }] });
  expect(value).not.toHaveProperty('stages.0.from');
});

test('conditions stay with their source, and go only with another', () => {
  const slow = withPublishedConditions(coolingCured);
  const without = { ...draftOfLimit(slow), conditions: [] };
  expect(limitOf(without, slow).errors).toEqual({
    'source.citation': 'source-of-own-figures',
  });
  expect(limitOf({ ...without, source: own }, slow).value).toMatchObject({ conditions: [], source: own });
});

test('a maximum finer than hundredths of a ppm is kept exactly', () => {
  const draft = draftOfLimit(nitriteComminuted);
  if (draft.kind !== 'concentration') throw new Error('That limit is a concentration');
  expect(limitOf({ ...draft, max: '156.255', source: own }).value).toMatchObject({ max: 15_625, maxThousandths: 156_255 });
});

test('a temperature printed in one unit stays in that unit', () => {
  const draft = draftOfLimit(receivedChilled);
  if (draft.kind !== 'range') throw new Error('That limit is a range');
  expect(limitOf({ ...draft, max: { '°F': '41', '°C': '', number: '' }, source: own }).value).toMatchObject({ max: { '°F': 4100 } });
  const row = { at: { '°F': '145', '°C': expect.any(String) }, time: { amount: '4', unit: 'min' } };
  expect(draftOfLimit(cookedMeat65Log)).toMatchObject({ kind: 'dwell', rows: expect.arrayContaining([row]) });
});
