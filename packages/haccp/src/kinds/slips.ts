import type { LimitSlip } from '../limits/limit-fault-code';

/** A limit with a longest gap has to tolerate one. */
export const slipOfGap = ({ longestGapSeconds }: { longestGapSeconds: number }): LimitSlip[] =>
  longestGapSeconds > 0 ? [] : [{ code: 'gap-unusable' }];
