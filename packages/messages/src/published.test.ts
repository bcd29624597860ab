import { catalogue, lethalitySets, limitSets, type LimitRow, type NitriteCountedAs } from '@larderbook/haccp';
import { expect, test } from 'vitest';
import { allWords } from './all';
import { codeOf } from './code-of';
import { languages, type Language } from './languages';

/** What people read of a row that is no figure, citation or place. */
function wordsOfRow({ title, note, limit, conditions }: LimitRow): string[] {
  const asked = conditions.flatMap((condition) => ('says' in condition ? [condition.says] : []));
  const own = limit.kind === 'attestation' ? [limit.statement] : limit.kind === 'figure' ? [limit.of] : [];
  return [title, ...(note ? [note] : []), ...asked, ...own];
}

const inSets = limitSets.flatMap((set) => [set.title, ...set.rows.flatMap(wordsOfRow)]);
const onOffer = catalogue.map(({ title }) => title);
const laws = lethalitySets.filter(({ use }) => use !== 'mean').map(({ note }) => note);
const ions: NitriteCountedAs[] = ['sodium nitrite, NaNO₂', 'the nitrite ion, NO₂'];
const english = new Set<string>([...inSets, ...onOffer, ...laws, ...ions]);
const others = (Object.keys(languages) as Language[]).filter((language) => language !== 'en');

test.each(others)('every word of every published set is said in %s, its figures as printed', (language) => {
  const words: Readonly<Record<string, string>> = { ...allWords.published[language], ...allWords.limits[language] };
  const told = (text: string) => words[codeOf('name', text)] ?? words[text];
  expect([...english].filter((text) => told(text) === undefined)).toEqual([]);
  const figures = (text: string) => text.match(/\d+(?:[.,]\d+)?/g)?.toSorted();
  expect([...english].filter((text) => told(text) !== text && String(figures(text)) !== String(figures(told(text) ?? '')))).toEqual([]);
});

test.each(others)('nothing is said in %s that no published set says', (language) => {
  const own = Object.keys({ ...allWords.published[language], ...allWords.limits[language] });
  expect(own.filter((text) => !english.has(text) && !(text in allWords.limits.en))).toEqual([]);
});
