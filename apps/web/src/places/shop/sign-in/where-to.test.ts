import { expect, test } from 'vitest';
import { whereTo } from './where-to';

test.each([
  ['a page of the book', '/lots/7?part=sheet', '/lots/7?part=sheet'],
  ['nothing asked for', undefined, '/'],
  ['another site', 'https://elsewhere.invalid/lots', '/'],
  ['another site without its scheme', '//elsewhere.invalid', '/'],
  ['another site behind a backslash', '/\\elsewhere.invalid', '/'],
  ['the door itself', '/sign-in?then=%2Flots', '/'],
])('after signing in, %s leads to the right page', (_case, asked, page) => {
  expect(whereTo(asked)).toBe(page);
});
