import { expect, test } from 'vitest';
import { clockFor, spoken } from '@larderbook/messages';
import { allWords } from '@larderbook/messages/all';
import { writeForecast, type ToldForecast } from './forecast';
import { inEnglish } from './in-english.test-data';

const at = (wall: string) => Date.parse(`2026-03-05T${wall}:00-06:00`);
const clock = clockFor({ language: 'en', timeZone: 'America/Chicago', timeStyle: 'international' });
const told = spoken(allWords.forecasts.en, { language: 'en', timeZone: 'America/Chicago', timeStyle: 'international' });
const reader = { clock, now: at('13:00'), degrees: '°F' as const, say: inEnglish('explaining'), told };
const arrival = { best: at('14:20'), earliest: at('13:50'), latest: at('15:10') };
const medium = { celsius: 1.1111, from: 'set point' as const };
const asked = (parts: Partial<ToldForecast> = {}): ToldForecast => ({
  state: 'at risk',
  target: { value: '40', unit: '°F' },
  by: at('14:55'),
  because: [],
  next: [],
  arrival,
  medium,
  ...parts,
});

test('when it is expected, between what, by when it must be there, and what that rests on', () => {
  expect(writeForecast(asked(), reader)).toEqual({
    word: 'At risk',
    when: 'Expected at 40 °F about 14:20, between 13:50 and 15:10. It must be there by 14:55.',
    basis: 'An estimate, with 34 °F around it (the set point of the plan). Only readings are judged.',
  });
});

test.each([
  ['without a time', { by: undefined }, 'Expected at 40 °F about 14:20, between 13:50 and 15:10.'],
  ['the next day', { arrival: { ...arrival, latest: at('15:10') + 86_400_000 } }, /and 6 Mar 2026, 15:10\. It must/],
  ['perhaps never', { arrival: { best: at('14:20'), earliest: at('13:50') } }, /earliest 13:50, perhaps never\. It must/],
  ['likely never', { arrival: { earliest: at('13:50') } }, /^Expected at 40 °F at the earliest 13:50, perhaps never/],
  ['never', { arrival: {} }, 'Never at 40 °F in what it lies in now. It must be there by 14:55.'],
])('%s', (_case, parts, words) => {
  expect(writeForecast(asked(parts), reader).when).toMatch(words);
});

test('too early to tell says why, and rests on nothing', () => {
  const early = asked({
    state: 'too early to tell',
    because: [{ code: 'few-falling-readings', figures: { count: 2 } }],
    next: [{ code: 'read-core-and-medium' }],
    arrival: undefined,
  });
  expect(writeForecast(early, reader)).toEqual({
    word: 'Too early to tell',
    when: '40 °F: There are 2 falling readings past the first tenth of the way; three over 20 min are needed.',
    next: 'Read the core and the medium, and again ten minutes later.',
  });
});

test('the probe and the medium in the shop’s unit', () => {
  const said = writeForecast(asked({ probe: 'core 2', medium: { celsius: 3.6, from: 'measured' } }), { ...reader, degrees: '°C' });
  expect(said.basis).toMatch(/^An estimate by core 2, with 3\.6 °C around it \(as read\)\./);
});
