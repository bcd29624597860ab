import { expect, test } from 'vitest';
import { inEnglish } from '../../../ui/in-english.test-data';
import { distanceTo, isPast } from './use-by';

test.each([
  ['2026-03-14', 'in 12 days', false],
  ['2026-03-03', 'tomorrow', false],
  ['2026-03-02', 'today', false],
  ['2026-03-01', '1 day past', true],
  ['2026-02-25', '5 days past', true],
  ['', '', false],
])('on 2 March a use-by of %s is %s', (useBy, words, past) => {
  expect(distanceTo(useBy, '2026-03-02', inEnglish('shipping'))).toBe(words);
  expect(isPast(useBy, '2026-03-02')).toBe(past);
});
