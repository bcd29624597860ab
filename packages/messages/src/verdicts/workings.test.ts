import type { Figures } from '@larderbook/haccp';
import { describe, expect, test } from 'vitest';
import { allWords } from '../all';
import type { Language } from '../languages';
import { sampleOfWorkings } from './sample-of-workings.test-data';
import { spoken } from './spoken';
import { toldOfEstimates } from './told-of-estimates.test-data';
import { toldOfExplanations } from './told-of-explanations.test-data';
import { toldOfFindings, toldOfWorkings } from './told-of-workings.test-data';

const places = { explanations: toldOfExplanations, findings: toldOfFindings, workings: [...toldOfWorkings, ...toldOfEstimates] };

describe.each(Object.keys(places) as (keyof typeof places)[])('%s', (place) => {
  const own = new Set(Object.keys(allWords.forecasts.en)); // told in a test of their own
  const keys = Object.keys(allWords[place].en).filter((key) => !own.has(key));
  const asksOf = (key: string) => key.split('+').slice(1);
  const toldBy = (language: Language, key: string) => {
    const [code = ''] = key.split('+');
    const others = keys.filter((other) => other.split('+')[0] === code).flatMap(asksOf);
    const figures: Figures = Object.fromEntries(
      Object.entries(sampleOfWorkings).filter(([name]) => asksOf(key).includes(name) || !others.includes(name)),
    );
    return spoken(allWords[place][language], { language, timeZone: 'UTC', timeStyle: 'US' }, 0)(code, figures);
  };

  test.each(places[place])('%s: %s', (key, text) => expect(toldBy('en', key)).toBe(text));

  test('every text is among them, once', () => expect(places[place].map(([key]) => key).sort()).toEqual(keys.toSorted()));

  test.each(keys)('%s is told in Spanish, with every figure that it takes', (key) => {
    expect(toldBy('es', key)).toBeTruthy();
    expect(toldBy('es', key)).not.toMatch(/[{}]|NaN|undefined/);
  });
});
