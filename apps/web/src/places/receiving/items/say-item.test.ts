import { receivedChilled } from '@larderbook/haccp';
import { expect, test } from 'vitest';
import { sayKind, sayReceiving, saySubstance } from './say-item';

test('a receiving range is said in the unit of the shop, as printed for it', () => {
  expect(sayReceiving({ receivingLimit: receivedChilled }, '°F')).toBe('≤ 40 °F');
  expect(sayReceiving({ receivingLimit: receivedChilled }, '°C')).toBe('≤ 4.4 °C');
  expect(sayReceiving({ receivingLimit: { ...receivedChilled, min: { '°C': -200 }, max: { '°C': 300 } } }, '°C')).toBe('≥ -2 °C, ≤ 3 °C');
  expect(sayReceiving({}, '°F')).toBe('');
});

test('what an item is and holds is said in a few words', () => {
  expect(saySubstance({ substance: 'sodium nitrite', fractionPercent: 5.88 })).toBe('5.88 % sodium nitrite');
  expect(sayKind({ kind: 'meat', species: 'pork' })).toBe('meat, pork');
  expect(sayKind({ kind: 'ingredient' })).toBe('ingredient');
});
