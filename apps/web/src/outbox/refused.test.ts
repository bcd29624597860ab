import { correctReceipt, recordReading, type InputOf } from '@larderbook/contracts';
import { expect, test } from 'vitest';
import { inEnglish } from '../ui/in-english.test-data';
import { refusedByContract, refusedByServer } from './refused';

const say = inEnglish('faults');
const id = (last: number) => `0193a5f0-0000-7000-8000-00000000000${last}`;
const takenAt = '2026-03-02T08:00:00-06:00';
const reading: InputOf<typeof recordReading> = {
  ...{ readingId: id(1), lotId: id(2), controlPointId: id(3), takenAt },
  entered: { value: 37, unit: '°F' },
};

test('what the contract takes is kept', () => {
  expect(refusedByContract(recordReading, reading, say)).toBeUndefined();
});

test('a time half typed, a figure that is none and a reason left out are refused before they are kept', () => {
  expect(refusedByContract(recordReading, { ...reading, takenAt: '' }, say)?.fields).toEqual({ takenAt: 'give-date-and-time' });
  const receipt = {
    ...{ itemId: id(4), supplierId: id(5), supplierLot: 'HH-1', decision: 'accepted' as const, takenAt },
    ...{ reason: '', weight: { value: NaN, unit: 'lb' as const } },
  };
  const refused = refusedByContract(correctReceipt, { correctionId: id(6), amends: id(7), reason: '', receipt }, say);
  expect(Object.keys(refused?.fields ?? {})).toEqual(expect.arrayContaining(['reason', 'receipt.weight.value']));
  expect(refused?.code).toBe('invalid-input');
});

test('what the server refused is said once, with its fields', () => {
  const [title, detail] = ['Some fields are not right.', 'A weight is more than zero.'];
  const errors = [{ pointer: '/weight/value', detail, code: 'weight-above-zero' }];
  expect(refusedByServer({ type: '', code: 'invalid-input', status: 400, title, errors })).toEqual({
    code: 'invalid-input',
    words: `${title} ${detail}`,
    fields: { 'weight.value': detail },
  });
});
