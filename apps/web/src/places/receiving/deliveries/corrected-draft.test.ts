import { expect, test } from 'vitest';
import { aReceipt } from './a-receipt.test-data';
import { draftOf, receivedOf } from './corrected-draft';

test('a temperature that is added is in the shop’s degrees, one that is corrected in its own', () => {
  const added = { ...draftOf(aReceipt({ temperature: undefined }), '°C'), temperature: '3' };
  expect(receivedOf(added).temperature).toEqual({ value: 3, unit: '°C' });
  const corrected = draftOf(aReceipt({ temperature: { value: 38, unit: '°F' } }), '°C');
  expect(receivedOf(corrected).temperature).toEqual({ value: 38, unit: '°F' });
});
