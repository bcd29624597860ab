import { cautions } from '../calculators/cautions';
import type { Explainer } from './explainer';
import { none } from './none';

export const undrawn = {
  cautions: [cautions.limits],
  lines: none,
  crossings: none,
  stretches: none,
  lawsOfKill: () => undefined,
} satisfies Omit<Explainer<never>, 'explain'>;
