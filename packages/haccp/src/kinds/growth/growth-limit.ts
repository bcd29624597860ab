import type { Species } from '../../growth/growth-set';
import type { Cited } from '../../limits/source';

/**
 * Met when C. perfringens, as predicted for cooked meat without cure, grows at most `log10` while cooling, in whole
 * hundredths. A screening: it never clears a lot alone.
 */
export type GrowthLimit = Cited & {
  kind: 'growth';
  species: Species | 'mixed or unknown';
  log10: number;
  longestGapSeconds: number;
};
