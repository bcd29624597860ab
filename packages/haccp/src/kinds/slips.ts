import type { LimitSlip } from '../limits/limit-fault-code';

export const slipOfGap = ({ longestGapSeconds }: { longestGapSeconds: number }): LimitSlip[] =>
  longestGapSeconds > 0 ? [] : [{ code: 'gap-unusable' }];
