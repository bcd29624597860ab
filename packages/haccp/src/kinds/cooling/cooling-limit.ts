import type { Cited } from '../../limits/source';
import type { PrintedTemperature } from '../../quantity/temperature';

/** Met when every stage's lower bound is reached in time. */
export type CoolingLimit = Cited & {
  kind: 'cooling';
  stages: CoolingStage[];
  /** From the end of cooking to the start of chilling, where the source asks for it. */
  startWithinSeconds?: number;
  longestGapSeconds: number;
};
/**
 * A `stage` has the time from its own `from` on, a `start` the time from the first stage's `from` on (6 h in all); an
 * `end of cooking` counts from that record, whatever the core showed.
 */
export type CoolingStage = { to: PrintedTemperature; withinSeconds: number } & (
  | { from: PrintedTemperature; counted: 'stage' | 'start' }
  | { from?: undefined; counted: 'end of cooking' }
);
