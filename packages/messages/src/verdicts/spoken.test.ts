import type { Figures } from '@larderbook/haccp';
import { expect, test } from 'vitest';
import { allWords } from '../all';
import type { Language } from '../languages';
import { sampleFor } from './sample-figures.test-data';
import { spoken } from './spoken';
import { toldOfCurves } from './told-of-curves.test-data';
import { toldOfEstimates } from './told-of-estimates.test-data';
import { toldOfFaults } from './told-of-faults.test-data';
import { toldOfLots } from './told-of-lots.test-data';
import { toldOfSums } from './told-of-sums.test-data';

const keys = Object.keys(allWords.verdicts.en);
const asksOf = (key: string) => key.split('+').slice(1);

/** One text, told with every figure but those for which another text of its code would be said. */
function toldBy(language: Language, key: string): string | undefined {
  const [code = ''] = key.split('+');
  const asks = asksOf(key);
  const others = keys.filter((other) => other.split('+')[0] === code).flatMap(asksOf);
  const figures: Figures = Object.fromEntries(
    Object.entries(sampleFor(code)).filter(([name]) => asks.includes(name) || !others.includes(name)),
  );
  return spoken(allWords.verdicts[language], { language, timeZone: 'UTC', timeStyle: 'US' })(code, figures);
}

const table = [...toldOfFaults, ...toldOfEstimates, ...toldOfCurves, ...toldOfLots, ...toldOfSums];

test.each(table)('%s: %s', (key, text) => {
  expect(toldBy('en', key)).toBe(text);
});

test('every text is among them, once', () => {
  expect(table.map(([key]) => key).sort()).toEqual(keys.toSorted());
});

test.each(keys)('%s is told in Spanish, with every figure that it takes', (key) => {
  const text = toldBy('es', key);
  expect(text).toBeTruthy();
  expect(text).not.toMatch(/[{}]|NaN|undefined/);
});

test('one reading is not many', () => {
  const told = spoken(allWords.verdicts.en, { language: 'en', timeZone: 'UTC', timeStyle: 'US' });
  expect(told('cannot-be', { count: 1 })).toBe('1 reading left out: the value or its time cannot be true.');
  expect(told('set-aside', { count: 1 })).toBe('1 reading left out: a person said that it was not of the core.');
  expect(told('no such code')).toBeUndefined();
});
