import type { Cited } from '../../limits/source';
import type { PrintedTemperature } from '../../quantity/temperature';

/** Met when the total time between two temperatures does not exceed `maxSeconds`. */
export type BandTimeLimit = Cited & {
  kind: 'bandTime';
  from: PrintedTemperature;
  to: PrintedTemperature;
  maxSeconds: number;
  longestGapSeconds: number;
};
