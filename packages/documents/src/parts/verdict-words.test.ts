import { expect, test } from 'vitest';
import { tellingOf } from '../page/telling';
import { aSheet } from '../samples.test-data';
import { sourceInWords } from './verdict-words';

const { say } = tellingOf(aSheet());
const source = { citation: 'a guideline, option 2', edition: 'December 2021', confirmed: false };

test.each([
  ['read in the source', { confirmed: true }, 'Source: a guideline, option 2, December 2021'],
  ['read by nobody', {}, 'Source: a guideline, option 2, December 2021. This figure has not been confirmed against its source.'],
  [
    'read by the shop',
    { support: { read: 'December 2021, p. 20' } },
    'Source: a guideline, option 2, December 2021. Read in the source by the shop: December 2021, p. 20',
  ],
  [
    'supported by the shop and inside a gap',
    { support: { gap: 'large mass, p. 31', own: 'letter in folder 3' } },
    'Source: a guideline, option 2, December 2021. Inside a scientific gap of the guideline in force: large mass, p. 31. ' +
      'Support on file: letter in folder 3',
  ],
  ['without an edition', { edition: '', confirmed: true }, 'Source: a guideline, option 2'],
])('a figure %s', (_case, more, said) => {
  expect(sourceInWords({ ...source, ...more }, say)).toBe(said);
});
