import type { HumidityKept } from '@larderbook/haccp';
import { expect, test } from 'vitest';
import { allWords } from './all';
import type { Language } from './languages';
import { say } from './say';
import { sayAnswered, sayHumidFrom } from './tell-humidity';

const steam: HumidityKept = { how: 'live steam', intoOven: '2026-03-02T07:40:00Z', from: '2026-03-02T07:50:00Z', minutes: 110 };
const sayIn = (language: Language) => say(allWords.entries[language], { language, timeZone: 'UTC', timeStyle: 'US' });

test.each<[Language, string, string]>([
  ['en', 'live steam, 1 h 50 min in all; door shut', 'into the oven Mar 2, 2026, 7:40 am, humid from Mar 2, 2026, 7:50 am'],
  ['es', 'vapor directo, 1 h 50 min en total; door shut', 'al horno 2 mar 2026, 7:40 a.m., con humedad desde 2 mar 2026, 7:50 a.m.'],
])('how humidity was kept is told beside what was seen, and when: %s', (language, said, times) => {
  expect(sayAnswered({ seen: 'door shut', humidity: steam }, sayIn(language))).toBe(said);
  expect(sayHumidFrom(steam, sayIn(language))).toBe(times);
});

test('what is not asked is not told', () => {
  expect(sayAnswered({ seen: '' }, sayIn('en'))).toBe('');
  expect(sayHumidFrom({ how: 'moisture-proof bag' }, sayIn('en'))).toBeUndefined();
});
