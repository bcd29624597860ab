import { expect, test } from 'vitest';
import { wrapWords } from './wrap-words';

test.each([
  ['short enough', 'The Inn', ['The Inn']],
  ['at a space', 'The Lantern at Upper Town', ['The Lantern at', 'Upper Town']],
  ['after a dash', 'SAUSAGE-26325-1', ['SAUSAGE-26325-', '1']],
  ['in the middle of a word longer than the line', 'Abcdefghijklmnopqrst', ['Abcdefghijklmn', 'opqrst']],
  ['and what does not fit is cut off', 'The Lantern at Upper Thistlewick by the Mill', ['The Lantern at', 'Upper Thistle…']],
])('%s', (_case, text, lines) => {
  expect(wrapWords(text, 14, 2)).toEqual(lines);
});

test('nothing gives no line', () => {
  expect(wrapWords('  ', 14, 2)).toEqual([]);
});
