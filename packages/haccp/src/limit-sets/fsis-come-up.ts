import type { BandTimeLimit } from '../limits/limit';
import { both } from './printed';
import { fsisCooking } from './sources';
import { LONGEST_GAP_SECONDS } from './tolerated-gaps';

/**
 * A critical parameter whenever a cooking table of the guideline is used; keeps *S. aureus* growth to 2 log or less.
 */
export const comeUpWithinSixHours: BandTimeLimit = {
  kind: 'bandTime',
  from: both(50, 10),
  to: both(130, 54.4),
  maxSeconds: 6 * 3600,
  longestGapSeconds: LONGEST_GAP_SECONDS.comeUp,
  source: fsisCooking('pp. 23-25, come-up time ≤ 6 h in all'),
};
