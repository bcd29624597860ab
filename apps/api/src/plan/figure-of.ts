import { canonicalJson, type LimitRow } from '@larderbook/haccp';

/** A figure with its source, to be compared; how long a gap between readings is tolerated is the plan's own to say. */
export const figureOf = (limit: LimitRow['limit']): string =>
  canonicalJson('longestGapSeconds' in limit ? { ...limit, longestGapSeconds: undefined } : limit);
