/** A limit with a longest gap has to tolerate one. */
export const slipOfGap = ({ longestGapSeconds }: { longestGapSeconds: number }): string[] =>
  longestGapSeconds > 0 ? [] : ['The longest tolerated gap is missing.'];
