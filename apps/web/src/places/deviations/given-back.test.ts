import type { Disposition, ProductConcerned } from '@larderbook/contracts';
import { expect, test } from 'vitest';
import { givenBack } from './given-back';

const kg = (value: number) => ({ value, unit: 'kg' as const, grams: value * 1000 });
const product = {
  lotId: 'a',
  code: 'A',
  what: 'Sausage',
  atStake: kg(10),
  undecided: kg(2),
  here: kg(6),
  left: kg(1),
  alsoOpen: [],
} satisfies ProductConcerned;
const decided = (decision: Disposition['decision'], lotId = 'a') => ({ lotId, decision, weight: kg(3) }) as Disposition;

test.each<[Disposition['decision'], number, number]>([
  ['release', 6, 1],
  ['rework', 6, 1],
  ['condemn', 9, 1],
  ['return', 9, 1],
  ['recall', 6, 4],
])('what a decision to %s was about is to decide again, and is where it would be', (decision, here, left) => {
  expect(givenBack(product, decided(decision))).toMatchObject({ undecided: kg(5), here: kg(here), left: kg(left) });
});

test('a decision about another product gives nothing back', () => {
  expect(givenBack(product, decided('condemn', 'b'))).toEqual(product);
});
