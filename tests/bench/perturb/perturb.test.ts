import { expect, test } from 'vitest';
import { kinds, perturb } from './perturb-cases';

/** The same as `npm run perturb`, in small: of nothing wrong in a series does it follow that its limit was met. */
test.each(kinds)('%s: nothing wrong in a series makes it met, but by a written exception', (kind) => {
  const { runs, wrong } = perturb(kind, 600, 7);
  expect(runs).toBeGreaterThanOrEqual(600);
  expect(wrong.map(({ perturbation, seed }) => [perturbation, seed])).toEqual([]);
});
