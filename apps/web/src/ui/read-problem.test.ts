import type { SayOf } from '@larderbook/messages';
import { expect, test } from 'vitest';
import { readProblem } from './read-problem';

const code = ((said: string) => said) as unknown as SayOf<'shared'>;

test.each([
  ['no answer', Object.assign(new TypeError('No answer'), { name: 'NoConnection' }), 'no-connection'],
  ['a page that could not be fetched', new TypeError('Failed to fetch dynamically imported module: /assets/a.js'), 'no-connection'],
  ['the same in another browser', new TypeError('Importing a module script failed.'), 'no-connection'],
  ['a mistake of the program', new TypeError("Cannot read properties of undefined (reading 'map')"), 'page-failed'],
])('of %s it is said what it is', (_case, error, title) => {
  expect(readProblem(error, code).title).toBe(title);
});
