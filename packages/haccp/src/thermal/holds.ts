import type { Bound } from '../quantity/bound';
import type { TemperatureUnit } from '../quantity/temperature';

/** In milliseconds, per bound. */
export type Holds = {
  /** Without a break; −1 where no reading was at or above the bound. */
  longest: number[];
  /** Start of the stretch still running at the last reading; undefined where there is none. */
  since: (number | undefined)[];
};

/** `level` is the number of bounds at or below the last reading. */
export type HoldsSoFar = Holds & { readonly longestGap: number; level: number; lastAt: number };

export const beginHolds = (bounds: readonly Bound[], longestGap: number): HoldsSoFar => ({
  longest: bounds.map(() => -1),
  since: bounds.map(() => undefined),
  longestGap,
  level: 0,
  lastAt: 0,
});

/** Only a segment with both readings at or above the bound counts, no longer than `longestGap`. */
export function addToHolds(holds: HoldsSoFar, at: number, level: number): void {
  if (!(at - holds.lastAt <= holds.longestGap)) {
    close(holds, 0);
    holds.level = 0;
  }
  close(holds, level);
  for (let row = holds.level; row < level; row += 1) holds.since[row] = at;
  holds.level = level;
  holds.lastAt = at;
}

/** Includes the stretch still running. */
export const holdsOf = ({ longest, since, lastAt }: HoldsSoFar): Holds => ({
  longest: longest.map((held, row) => Math.max(held, lastAt - (since[row] ?? Infinity))),
  since: [...since],
});

/** Field by field: a spread makes another hidden class of each copy and slows every reading. */
export const copyOfHolds = (holds: HoldsSoFar, longestGap = holds.longestGap): HoldsSoFar => ({
  longest: [...holds.longest],
  since: [...holds.since],
  longestGap,
  level: holds.level,
  lastAt: holds.lastAt,
});

/**
 * @param value on the common scale @param unit of the reading: a bound has a figure for each @param before level of the
 * last reading
 */
export function levelOf(value: number, unit: TemperatureUnit, bounds: readonly Bound[], before: number): number {
  let level = before;
  while (level < bounds.length && value >= (bounds[level] as Bound)[unit]) level += 1;
  while (level > 0 && value < (bounds[level - 1] as Bound)[unit]) level -= 1;
  return level;
}

function close(holds: HoldsSoFar, from: number): void {
  for (let row = from; row < holds.level; row += 1) {
    holds.longest[row] = Math.max(holds.longest[row] as number, holds.lastAt - (holds.since[row] as number));
    holds.since[row] = undefined;
  }
}
