import { expect, test } from 'vitest';
import { lotCodeExample } from './lot-code-example';

test('a pattern is shown as the codes of the first two lots of the day', () => {
  expect(lotCodeExample('{YY}{DDD}-{n}', '2026-05-10')).toEqual({ first: '26130-1', second: '26130-2' });
  expect(lotCodeExample(' {product}-{YYYY}{MM}{DD}-{nn} ', '2026-05-10')).toEqual({ first: 'SMK-20260510-01', second: 'SMK-20260510-02' });
});

test.each([
  ['without a number', '{YY}{DDD}', 'pattern-needs-number'],
  ['without a day', 'L{YY}-{n}', 'pattern-needs-day'],
  ['empty', '', 'pattern-needs-number'],
])('a pattern %s says what is wrong instead', (_case, pattern, code) => {
  expect(lotCodeExample(pattern, '2026-05-10')).toEqual({ fault: { code } });
});
