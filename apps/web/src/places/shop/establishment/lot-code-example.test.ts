import { expect, test } from 'vitest';
import { lotCodeExample } from './lot-code-example';

test('a pattern is shown as the codes of the first two lots of the day', () => {
  expect(lotCodeExample('{YY}{DDD}-{n}', '2026-05-10')).toEqual({ first: '26130-1', second: '26130-2' });
  expect(lotCodeExample(' {product}-{YYYY}{MM}{DD}-{nn} ', '2026-05-10')).toEqual({ first: 'SMK-20260510-01', second: 'SMK-20260510-02' });
});

test.each([
  ['without a number', '{YY}{DDD}', 'The pattern needs {n}, so that two lots of a day differ.'],
  ['without a day', 'L{YY}-{n}', 'The pattern needs the year and the day, such as {YY}{DDD}, so that no code comes twice.'],
  ['empty', '', 'The pattern needs {n}, so that two lots of a day differ.'],
])('a pattern %s says what is wrong instead', (_case, pattern, fault) => {
  expect(lotCodeExample(pattern, '2026-05-10')).toEqual({ fault });
});
