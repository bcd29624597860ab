import { expect, expectTypeOf, it } from 'vitest';
import { codeOf } from './code-of';
import { say } from './say';

const words = { 'species-pork': 'Pork', 'species-other-poultry': 'Other poultry', 'class-ham-pumped': 'Ham, pumped' } as const;

it('names the message of each value of a closed set, and the type knows which', () => {
  const inEnglish = say(words, { language: 'en', timeZone: 'UTC', timeStyle: 'US' });
  const species = ['pork', 'other poultry'] as const;
  expect(species.map((each) => inEnglish(codeOf('species', each)))).toEqual(['Pork', 'Other poultry']);
  expect(inEnglish(codeOf('class', 'ham, pumped'))).toBe('Ham, pumped');
  expectTypeOf(codeOf('class', 'Italian sausage')).toEqualTypeOf<'class-italian-sausage'>();
});
