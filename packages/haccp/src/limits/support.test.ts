import { expect, test } from 'vitest';
import { isSaid, isUnconfirmed } from './support';

const source = { citation: 'a guideline', edition: '2021', confirmed: false };

test.each([
  ['nothing', undefined, false],
  ['blanks', '          ', false],
  ['a tick in words', ' p. 12  ', false],
  ['an edition and a page', 'December 2021, p. 12', true],
])('%s said', (_case, says, isEnough) => {
  expect(isSaid(says)).toBe(isEnough);
});

test.each([
  ['not read and nothing said', {}, true],
  ['not read, a gap named', { support: { gap: 'large mass, p. 31' } }, true],
  ['read by the shop', { support: { read: 'edition 2021, p. 20' } }, false],
  ['supported by the shop', { support: { own: 'study in folder 3' } }, false],
  ['read in the source', { confirmed: true }, false],
])('%s', (_case, more, unconfirmed) => {
  expect(isUnconfirmed({ ...source, ...more })).toBe(unconfirmed);
});
