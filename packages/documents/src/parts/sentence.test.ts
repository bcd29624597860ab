import { expect, test } from 'vitest';
import { sentence } from './sentence';

test.each([
  ['core temperature', 'Core temperature.'],
  ['The operator at the chiller.', 'The operator at the chiller.'],
  ['every cook;', 'Every cook.'],
  ['Is it labelled?', 'Is it labelled?'],
  ['  ', ''],
])('%j is said as %j', (typed, said) => expect(sentence(typed)).toBe(said));
