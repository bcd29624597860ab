import { expect, test } from 'vitest';
import { type Key, numberOf, press, tidy } from './keypad-text';

const degrees = { decimals: 1, belowZero: true };
const wholeGrams = { decimals: 0, belowZero: false };

const typed = (keys: string[], writing = degrees) => keys.reduce((text, key) => press(text, key as Key, writing), '');

test.each([
  ['a core temperature', ['1', '5', '1', '.', '5'], '151.5'],
  ['a second decimal is not taken where the thermometer has one', ['7', '1', '.', '8', '4'], '71.8'],
  ['a second point is not taken', ['7', '.', '1', '.'], '7.1'],
  ['a point first gets its zero', ['.', '5'], '0.5'],
  ['leading zeros go', ['0', '0', '7'], '7'],
  ['minus comes in front whenever it is pressed', ['1', '8', '-'], '-18'],
  ['and minus again takes it away', ['1', '8', '-', '-'], '18'],
  ['backspace takes the last figure', ['7', '1', 'back'], '7'],
  ['clear takes everything', ['7', '1', 'clear'], ''],
  ['no more than seven figures', [...'12345678'], '1234567'],
])('%s', (_case, keys, text) => {
  expect(typed(keys)).toBe(text);
});

test('whole grams take neither point nor minus', () => {
  expect(typed(['2', '5', '.', '-', '0'], wholeGrams)).toBe('250');
});

test.each([
  ['a decimal comma is a point', '71,8', '71.8'],
  ['a typographic minus is a minus', '−18', '-18'],
  ['a letter changes nothing', '71x', '71'],
  ['an exponent changes nothing', '7e1', '71'],
])('typed or pasted: %s', (_case, next, text) => {
  expect(tidy(next, '71', degrees)).toBe(text);
});

test.each([
  ['', undefined],
  ['-', undefined],
  ['0.', 0],
  ['-18', -18],
  ['151.5', 151.5],
])('the display "%s" holds %s', (text, value) => {
  expect(numberOf(text)).toBe(value);
});
