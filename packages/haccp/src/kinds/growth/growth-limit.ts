import type { Species } from '../../growth/growth-set';
import type { Cited } from '../../limits/source';

/**
 * Met when the growth of C. perfringens while cooling, as predicted for cooked meat without cure, stays at or below
 * `log10`, in whole hundredths. A screening: it informs, and it never clears a lot alone.
 */
export type GrowthLimit = Cited & {
  kind: 'growth';
  species: Species | 'mixed or unknown';
  log10: number;
  longestGapSeconds: number;
};
