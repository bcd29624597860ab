import type { Cited } from '../../limits/source';
import type { PrintedTemperature } from '../../quantity/temperature';

export type BandTimeLimit = Cited & {
  kind: 'bandTime';
  from: PrintedTemperature;
  to: PrintedTemperature;
  maxSeconds: number;
  longestGapSeconds: number;
};
