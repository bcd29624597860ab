import type { Cited } from '../../limits/source';
import type { PrintedTemperature } from '../../quantity/temperature';

/** Met when every stage's lower bound is reached in time. */
export type CoolingLimit = Cited & {
  kind: 'cooling';
  stages: CoolingStage[];
  /** Longest time from the end of cooking to the start of chilling, when the source asks for one. */
  startWithinSeconds?: number;
  longestGapSeconds: number;
};
/**
 * `counted: 'stage'` from this stage's `from`; `counted: 'start'` from where the first stage is counted (6 h in all);
 * `counted: 'end of cooking'` from when cooking ended, whatever the core showed then.
 */
export type CoolingStage = { to: PrintedTemperature; withinSeconds: number } & (
  | { from: PrintedTemperature; counted: 'stage' | 'start' }
  | { from?: undefined; counted: 'end of cooking' }
);
