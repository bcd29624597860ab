import { expect, test } from 'vitest';
import { massOf } from '../quantity/weigh';
import { massBalance, type Movements } from './mass-balance';

const kg = (value: number) => massOf({ value, unit: 'kg' });
const whole: Movements = {
  made: kg(100),
  used: kg(10),
  packed: kg(80),
  shipped: kg(60),
  removed: kg(5),
  onHand: kg(25),
};

test('a lot whose every gram is accounted for', () => {
  expect(massBalance(whole)).toMatchObject({ unexplained: 0n, percentAccounted: '100', fault: undefined });
});

test.each([
  ['less', { ...whole, removed: kg(4.5) }, '99.5', 'unexplained'],
  ['more', { ...whole, removed: kg(9.5) }, '104.5', 'more-than-went-in'],
  ['a gram less', { ...whole, made: kg(100_000), onHand: kg(99_924.999) }, '99.99', 'unexplained'],
  ['a gram more', { ...whole, made: kg(100_000), onHand: kg(99_925.001) }, '100.01', 'more-than-went-in'],
])('%s than went in is a fault, and is never rounded to 100 %%', (_case, movements, percentAccounted, fault) => {
  expect(massBalance(movements)).toMatchObject({ percentAccounted, fault });
});

test('more shipped than packed is a fault of its own', () => {
  expect(massBalance({ ...whole, packed: kg(50) }).fault).toBe('more-shipped-than-packed');
});

test('nothing made has no percentage', () => {
  const nothing = { made: 0n, used: 0n, packed: 0n, shipped: 0n, removed: 0n, onHand: 0n };
  expect(massBalance(nothing).percentAccounted).toBeUndefined();
  expect(massBalance(nothing).fault).toBeUndefined();
  expect(massBalance({ ...nothing, onHand: kg(1) }).fault).toBe('more-than-went-in');
});

test('a lot made below nothing is a fault and has no share accounted for', () => {
  const balance = massBalance({ ...whole, made: -1n });
  expect(balance).toMatchObject({ fault: 'below-zero' });
  expect(balance).not.toHaveProperty('percentAccounted');
});
