import { recordReceipt } from '@larderbook/contracts';
import { receivedChilled } from '@larderbook/haccp';
import { describe, expect, test } from 'vitest';
import { tell } from '../../../ui/tell-here.test-data';
import { inEnglish } from '../../../ui/in-english.test-data';
import type { Item, Supplier } from '../known';
import {
  atTheDoor,
  emptyLabel,
  labelErrors,
  labelFor,
  objectionTo,
  receiptOf,
  stepOf,
  stepsFor,
  verdictOf,
  type DeliveryDraft,
} from './delivery-draft';

const says = { say: inEnglish('receiving'), sayLimits: inEnglish('limits') };

const shoulder: Item = {
  itemId: '01990000-0000-7000-8000-0000000000a1',
  name: 'Pork shoulder',
  kind: 'meat',
  species: 'pork',
  allergens: [],
  receivingLimit: receivedChilled,
};
const cure: Item = {
  itemId: '01990000-0000-7000-8000-0000000000a2',
  name: 'Curing salt 6.25 %',
  kind: 'ingredient',
  substance: 'sodium nitrite',
  fractionPercent: 6.25,
  allergens: [],
};
const holt: Supplier = {
  supplierId: '01990000-0000-7000-8000-0000000000b1',
  name: 'Hollow Holt Meats',
  establishmentNumber: '00981-X',
  address: '',
  contact: '',
};
const label = { ...emptyLabel, supplierLot: 'PO112' };
const today = '2026-05-10';
const measured = (value: number): DeliveryDraft => ({
  item: shoulder,
  supplier: holt,
  label,
  weight: { value: 60, unit: 'lb' },
  temperature: { value, unit: '°F', sure: false },
});
const decided = {
  receiptId: '01990000-0000-7000-8000-0000000000c1',
  decision: 'accepted',
  reason: '',
  takenAt: '2026-05-10T14:05:00Z',
} as const;

test('meat is measured; a bag of salt is not', () => {
  expect(stepsFor(shoulder)).toContain('temperature');
  expect(stepsFor(cure)).not.toContain('temperature');
});

test('the supplier’s number and the item’s percentage stand on the label already', () => {
  expect(labelFor(cure, holt)).toMatchObject({ supplierEstablishmentNumber: '00981-X', fraction: '6.25' });
});

describe('the label', () => {
  test.each([
    ['without a lot number', { supplierLot: ' ' }, shoulder, { supplierLot: 'supplier-lot-from-label' }],
    [
      'packed before it was killed',
      { killDate: '2026-05-08', packDate: '2026-05-07' },
      shoulder,
      { packDate: 'The pack date is before the kill date.' },
    ],
    ['killed tomorrow', { killDate: '2026-05-11' }, shoulder, { killDate: 'The kill date is still to come.' }],
    [
      'of curing salt without its percentage',
      { fraction: '' },
      cure,
      { fractionPercent: 'Copy the percentage of sodium nitrite from the bag.' },
    ],
    ['of curing salt that is more than all of it', { fraction: '101' }, cure, { fractionPercent: 'at-most-percent {"most":100}' }],
    ['from today', { killDate: today, packDate: today }, shoulder, {}],
    ['of curing salt of the other strength', { fraction: '5.88' }, cure, {}],
  ])('%s', (_case, parts, item, errors) => {
    expect(labelErrors({ ...label, ...parts }, item, today, says)).toEqual(errors);
  });
});

test.each([
  ['on the limit', 40, 'met', undefined],
  ['a tenth above it', 40.1, 'missed', 'needs a reason'],
])('a temperature %s is judged as the server will', (_case, value, kind, objection) => {
  expect(verdictOf(shoulder, measured(value).temperature)?.kind).toBe(kind);
  expect(objectionTo(measured(value))).toBe(objection);
});

test('at the door a miss says what to do with the delivery, not with a lot', () => {
  const missed = verdictOf(shoulder, measured(43).temperature);
  expect(missed && atTheDoor(tell(missed), says.say).next).toBe('Refuse it, or say why it is accepted all the same.');
  expect(missed && atTheDoor(tell(missed), says.say, 'accepted').next).toBe('Keep it apart until its deviation is settled.');
  expect(missed && atTheDoor(tell(missed), says.say, 'refused').next).toBeUndefined();
});

test('meat that was not measured cannot be accepted', () => {
  expect(objectionTo({ ...measured(38), temperature: 'none' })).toBe('needs a temperature');
});

test('the record says what was read, and that the person was sure of it', () => {
  const sure: DeliveryDraft = { ...measured(80), temperature: { value: 80, unit: '°F', sure: true } };
  const record = receiptOf(sure, { ...decided, decision: 'refused', reason: 'Too warm' });
  expect(record).toMatchObject({
    temperature: { value: 80, unit: '°F' },
    sure: true,
    decision: 'refused',
    supplierLot: 'PO112',
    fractionPercent: undefined,
  });
  expect(recordReceipt.body.safeParse(record).success).toBe(true);
});

test('nothing is recorded before there is a weight', () => {
  expect(receiptOf({ ...measured(38), weight: undefined }, decided)).toBeUndefined();
});

test.each([
  ['an implausible temperature', {}, 'implausible-value', 'temperature'],
  ['a pack date', { packDate: 'The pack date is before the kill date.' }, 'invalid-input', 'label'],
  ['a weight', { 'weight.value': 'weight-above-zero' }, 'invalid-input', 'weight'],
  ['an item that is gone', {}, 'not-found', undefined],
])('what the server refuses about %s leads back to its step', (_case, fields, code, step) => {
  expect(stepOf(fields, code)).toBe(step);
});
