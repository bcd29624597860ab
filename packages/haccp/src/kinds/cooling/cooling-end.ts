import { above, raised, type Bound } from '../../quantity/bound';
import { crossing } from '../../thermal/crossing';
import type { CurveReading } from '../../thermal/curve';
import type { Fall } from './cooling-start';
import { warmOver, type Instant } from '../../thermal/instant';

/** No later reading is above the bound. */
export type Landing = { index: number; reading: CurveReading; before?: CurveReading };

export type EndSoFar = {
  readonly to: Bound;
  /** Error of a reading, on the common scale. */
  readonly error: number;
  landing?: Landing;
  /** Longest time between readings from the fall to now, and to the landing (ms). */
  gap: number;
  gapAtLanding: number;
  countedFrom?: Fall;
};

export const beginEnd = (to: Bound, error: number): EndSoFar => ({
  to,
  error,
  landing: undefined,
  gap: 0,
  gapAtLanding: 0,
  countedFrom: undefined,
});

export const copyOfEnd = (end: EndSoFar): EndSoFar => ({
  to: end.to,
  error: end.error,
  landing: end.landing,
  gap: end.gap,
  gapAtLanding: end.gapAtLanding,
  countedFrom: end.countedFrom,
});

/** @param fall where the stage counts from, this reading included */
export function addToEnd(end: EndSoFar, index: number, own: Instant, last: Instant | undefined, fall: Fall | undefined): void {
  if (fall !== end.countedFrom) {
    // Readings before the stage show nothing of it.
    end.countedFrom = fall;
    end.landing = undefined;
    end.gap = 0;
  } else if (fall && last && own.at - last.at > end.gap) {
    end.gap = own.at - last.at;
  }
  if (warmOver(own, end.to) > -end.error) end.landing = undefined;
  else if (!end.landing) {
    end.landing = { index, reading: own.warmer, before: last?.warmer };
    end.gapAtLanding = end.gap;
  }
}

/** By a straight line, not before `earliest`. */
export function straightEndOf({ to, error }: EndSoFar, { reading, before }: Landing, earliest: number): number {
  const bound = raised(to, -error);
  const isAbove = before !== undefined && above(before.temperature, bound) > 0;
  return isAbove ? Math.max(earliest, crossing(before, reading, bound)) : reading.at;
}
