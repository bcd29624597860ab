import { cautions } from '../calculators/cautions';
import type { Explainer } from './explainer';
import { none } from './none';

/** A kind of limit that is drawn by nothing; how it is explained is its own. */
export const undrawn = {
  cautions: [cautions.limits],
  lines: none,
  crossings: none,
  stretches: none,
  lawsOfKill: () => undefined,
} satisfies Omit<Explainer<never>, 'explain'>;
