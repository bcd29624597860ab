import type { Species } from '../../growth/growth-set';
import type { Cited } from '../../limits/source';

/**
 * Growth of C. perfringens, as predicted for cooked meat without cure, in whole hundredths. A screening: it never
 * clears a lot alone.
 */
export type GrowthLimit = Cited & {
  kind: 'growth';
  species: Species | 'mixed or unknown';
  log10: number;
  longestGapSeconds: number;
};
