import { expect, test } from 'vitest';
import { nextThree, type SetUp } from './first-things';

const nothing: SetUp = { items: 0, suppliers: 0, instruments: 0, products: 0, ready: 0, deliveries: 0 };
const places = (setUp: Partial<SetUp>) => nextThree({ ...nothing, ...setUp }).map(({ to }) => to);

test('a shop opened this minute begins at the door and with its instruments', () => {
  expect(places({})).toEqual(['/receiving/items', '/receiving/suppliers', '/shop/instruments']);
});

test('what is done makes room for what comes next', () => {
  expect(places({ items: 3, instruments: 1 })).toEqual(['/receiving/suppliers', '/products', '/products']);
});

test('with everything set up only the first lot is left', () => {
  expect(places({ items: 1, suppliers: 1, instruments: 1, products: 1, ready: 1, deliveries: 1 })).toEqual(['/lots/new']);
});
