import { above, raised, type Bound } from '../quantity/bound';
import { crossing } from './crossing';
import type { CurveReading } from './curve';
import type { Fall } from './cooling-start';

/** The first reading at or below the bound after which none is above it again. */
export type Landing = { index: number; reading: CurveReading; before?: CurveReading };

/** Where a curve came down to a bound and stayed, up to the last reading added. */
export type EndSoFar = {
  readonly to: Bound;
  /** A reading may be wrong by so much, on the common scale. */
  readonly error: number;
  landing?: Landing;
  /** The longest time between two readings since the fall the stage is counted from, and up to the landing (ms). */
  gap: number;
  gapAtLanding: number;
  countedFrom?: Fall;
};

export const beginEnd = (to: Bound, error: number): EndSoFar => ({ to, error, gap: 0, gapAtLanding: 0 });

/** Adds one reading. @param fall where the stage is counted from, with this reading known */
export function addToEnd(
  end: EndSoFar,
  index: number,
  reading: CurveReading,
  before: CurveReading | undefined,
  fall: Fall | undefined,
): void {
  if (fall !== end.countedFrom) {
    end.countedFrom = fall;
    end.gap = 0;
  } else if (fall && before) {
    end.gap = Math.max(end.gap, reading.at - before.at);
  }
  if (above(reading.temperature, end.to) > -end.error) end.landing = undefined;
  else if (!end.landing) {
    end.landing = { index, reading, before };
    end.gapAtLanding = end.gap;
  }
}

/** The instant a straight line reaches the bound, not before `earliest`. */
export function straightEndOf({ to, error }: EndSoFar, { reading, before }: Landing, earliest: number): number {
  const bound = raised(to, -error);
  const isAbove = before !== undefined && above(before.temperature, bound) > 0;
  return isAbove ? Math.max(earliest, crossing(before, reading, bound)) : reading.at;
}
