import { expect, test } from 'vitest';
import { sayForecast, type ToldForecast } from './say-forecast';

const at = (wall: string) => Date.parse(`2026-03-05T${wall}:00-06:00`);
const wall = { zone: 'America/Chicago', now: at('13:00'), degrees: '°F' as const };
const arrival = { best: at('14:20'), earliest: at('13:50'), latest: at('15:10') };
const medium = { celsius: 1.1111, from: 'set point' as const };
const told = (parts: Partial<ToldForecast> = {}): ToldForecast => ({
  state: 'at risk',
  target: '40 °F',
  by: at('14:55'),
  because: '',
  arrival,
  medium,
  ...parts,
});

test('when it is expected, between what, by when it must be there, and what that rests on', () => {
  expect(sayForecast(told(), wall)).toEqual({
    word: 'At risk',
    when: 'Expected at 40 °F about 14:20, between 13:50 and 15:10; it must be there by 14:55.',
    basis: 'An estimate, with 34 °F around it, the set point of the plan. Only readings are judged.',
  });
});

test.each([
  ['without a time', { by: undefined }, 'Expected at 40 °F about 14:20, between 13:50 and 15:10.'],
  ['the next day', { arrival: { ...arrival, latest: at('15:10') + 86_400_000 } }, /and Fri 6 Mar 2026, 15:10; it must/],
  ['perhaps never', { arrival: { best: at('14:20'), earliest: at('13:50') } }, /earliest 13:50, perhaps never; it must/],
  ['likely never', { arrival: { earliest: at('13:50') } }, /^Expected at 40 °F, at the earliest 13:50, perhaps never/],
  ['never', { arrival: {} }, 'Never at 40 °F in what it lies in now; it must be there by 14:55.'],
])('%s', (_case, parts, words) => {
  expect(sayForecast(told(parts), wall).when).toMatch(words);
});

test('too early to tell says why, and rests on nothing', () => {
  const early = told({ state: 'too early to tell', because: 'There are 2 falling readings.', arrival: undefined });
  expect(sayForecast(early, wall)).toEqual({ word: 'Too early to tell', when: '40 °F: There are 2 falling readings.' });
});

test('the probe and the medium in the shop’s unit', () => {
  const said = sayForecast(told({ probe: 'core 2', medium: { celsius: 3.6, from: 'measured' } }), { ...wall, degrees: '°C' });
  expect(said.basis).toMatch(/^An estimate by core 2, with 3\.6 °C around it, as read\./);
});
