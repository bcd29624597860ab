import { canonicalJson, type CriticalLimit } from '@larderbook/haccp';

/** A figure with its source, to be compared; how long a gap between readings is tolerated is the plan's own to say. */
export const figureOf = (limit: CriticalLimit): string =>
  canonicalJson('longestGapSeconds' in limit ? { ...limit, longestGapSeconds: undefined } : limit);
