import { expect, test } from 'vitest';
import { breakLines } from './break-lines';
import { words } from './words';

/** A typeface in which every character is one wide. */
const measure = { width: (text: string) => text.length, markWidth: () => 2 };
const broken = (text: string, width: number) =>
  breakLines(words('body', text), width, measure).map(({ pieces }) => pieces.map((piece) => piece.text).join(''));

test('words are set until a line is full', () => {
  expect(broken('held in cooler two under tag', 12)).toEqual(['held in', 'cooler two', 'under tag']);
});

test.each([
  ['kept above 145 °F long', 14, ['kept above', '145 °F long']],
  ['limit of ≥ 145 °F', 11, ['limit of', '≥ 145 °F']],
  ['come-up in 6 h today', 12, ['come-up in', '6 h today']],
])('a figure stays with its sign and its unit: %s', (text, width, lines) => {
  expect(broken(text, width)).toEqual(lines);
});

test('a code that is too long is cut after a hyphen if it has one', () => {
  expect(broken('RS-250904-1-REWORK', 11)).toEqual(['RS-250904-', '1-REWORK']);
});

test('and anywhere if it has none, without losing a character', () => {
  const lines = broken('1234567890123', 5);
  expect(lines).toEqual(['12345', '67890', '123']);
});

test('a line that was begun anew stays so', () => {
  expect(broken('first\nsecond', 40)).toEqual(['first', 'second']);
});

test('styles that follow one another without a space stay together', () => {
  const lines = breakLines(words('body', 'was ', { text: '51', strike: true }, '.'), 40, measure);
  expect(lines).toHaveLength(1);
  expect(lines[0]?.pieces.map(({ text, strike }) => [text, strike])).toEqual([
    ['was ', false],
    ['51', true],
    ['.', false],
  ]);
});
