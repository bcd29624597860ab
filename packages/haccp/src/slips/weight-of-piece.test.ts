import { expect, test } from 'vitest';
import { massOf } from '../quantity/weigh';
import { askAboutPiece, usualOfPiece, type UsualOfPiece } from './weight-of-piece';

test('a piece weighs at least half of what it did, and hardly more than at its heaviest', () => {
  expect(usualOfPiece([1000n, 800n])).toEqual({ least: 400n, most: 1050n });
  expect(usualOfPiece([800n, 1000n])).toEqual({ least: 500n, most: 1050n });
});

test('of a piece that was never weighed nothing is known', () => {
  expect(usualOfPiece([])).toBeUndefined();
});

test('10.0 kg, and then 8.2 "lb", asks whether it was 8.2 kg', () => {
  const usual = usualOfPiece([massOf({ value: 10, unit: 'kg' })]) as UsualOfPiece;
  expect(askAboutPiece({ value: 8.2, unit: 'lb' }, usual)).toEqual({ meant: { value: 8.2, unit: 'kg' } });
  expect(askAboutPiece({ value: 8.2, unit: 'kg' }, usual)).toBeUndefined();
  expect(askAboutPiece({ value: 10.6, unit: 'kg' }, usual)).toEqual({ meant: undefined });
});
