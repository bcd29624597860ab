import { receivedChilled } from '@larderbook/haccp';
import { expect, test } from 'vitest';
import { receivingRange } from './receiving-range';

test('a receiving range is said in the unit of the shop, as printed for it', () => {
  expect(receivingRange({ receivingLimit: receivedChilled }, '°F')).toBe('≤ 40 °F');
  expect(receivingRange({ receivingLimit: receivedChilled }, '°C')).toBe('≤ 4.4 °C');
  expect(receivingRange({ receivingLimit: { ...receivedChilled, min: { '°C': -200 }, max: { '°C': 300 } } }, '°C')).toBe('≥ -2 °C, ≤ 3 °C');
  expect(receivingRange({}, '°F')).toBe('');
});
