import { above, type Bound } from '../quantity/bound';
import type { CurveReading } from './curve';

/** How long a curve stayed at or above each of several temperatures, in milliseconds. */
export type Holds = {
  /** The longest stretch without a break, per bound; −1 where no reading was at or above it. */
  longest: number[];
  /** When the stretch that is still going on at the last reading began, per bound; undefined where there is none. */
  since: (number | undefined)[];
};

/**
 * Only a segment with both its readings at or above the bound counts, and only if it is no longer than `longestGap`.
 * One pass for all bounds: each reading stands at a level, the number of bounds at or below it.
 * @param bounds from the coldest to the hottest
 */
export function measureHolds(readings: readonly CurveReading[], bounds: readonly Bound[], longestGap: number): Holds {
  const longest = bounds.map(() => -1);
  const since: (number | undefined)[] = bounds.map(() => undefined);
  let level = 0;
  let lastAt = 0;

  const close = (from: number, to: number) => {
    for (let row = from; row < to; row += 1) {
      longest[row] = Math.max(longest[row] ?? -1, lastAt - (since[row] ?? lastAt));
      since[row] = undefined;
    }
  };

  for (const { at, temperature } of readings) {
    if (!(at - lastAt <= longestGap)) {
      close(0, level);
      level = 0;
    }
    const now = levelOf(temperature, bounds, level);
    close(now, level);
    for (let row = level; row < now; row += 1) since[row] = at;
    level = now;
    lastAt = at;
  }
  const goingOn = [...since];
  close(0, level);
  return { longest, since: goingOn };
}

/** The number of bounds at or below a temperature, walked from the level of the reading before. */
function levelOf(temperature: CurveReading['temperature'], bounds: readonly Bound[], before: number): number {
  let level = before;
  while (level < bounds.length && above(temperature, bounds[level] as Bound) >= 0) level += 1;
  while (level > 0 && above(temperature, bounds[level - 1] as Bound) < 0) level -= 1;
  return level;
}
