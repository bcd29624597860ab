import { expect, test } from 'vitest';
import { foundByWords } from './found-by-words';

const named = (...names: string[]) => names.map((name) => ({ name }));
const items = named('Pork shoulder', 'Pork trim 80/20', 'Jalapeño, dried', 'Curing salt 6.25 %');
const found = (words: string) => foundByWords(items, words).map(({ name }) => name);

test.each([
  ['', items.map(({ name }) => name)],
  ['  ', items.map(({ name }) => name)],
  ['pork', ['Pork shoulder', 'Pork trim 80/20']],
  ['TRIM pork', ['Pork trim 80/20']],
  ['jalapeno', ['Jalapeño, dried']],
  ['6.25', ['Curing salt 6.25 %']],
  ['beef', []],
])('“%s”', (words, names) => {
  expect(found(words)).toEqual(names);
});
