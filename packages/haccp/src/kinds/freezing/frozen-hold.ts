import { boundOf } from '../../quantity/bound';
import { onCommonScale } from '../../quantity/convert-degrees';
import type { PrintedTemperature } from '../../quantity/temperature';
import type { CurveReading } from '../../thermal/curve';

export type FrozenHold = {
  /** Without a break, ms. */
  longest: number;
  /** Start of the stretch still running at the last reading (epoch ms). */
  since?: number;
};

/** Counts only between two readings that both are at or below, no farther apart than tolerated. */
export function frozenHolds(
  readings: readonly CurveReading[],
  temperatures: readonly PrintedTemperature[],
  longestGap: number,
): FrozenHold[] {
  const rows = temperatures.map((at) => ({ bound: boundOf(at), hold: { longest: 0, since: undefined } as FrozenHold }));
  let last = -Infinity;
  for (const { at, temperature } of readings) {
    const isGap = !(at - last <= longestGap);
    const value = onCommonScale(temperature);
    for (const { bound, hold } of rows) addTo(hold, at, value <= bound[temperature.unit], isGap);
    last = at;
  }
  return rows.map(({ hold }) => hold);
}

function addTo(hold: FrozenHold, at: number, isFrozen: boolean, isGap: boolean): void {
  if (!isFrozen) hold.since = undefined;
  else if (hold.since === undefined || isGap) hold.since = at;
  else hold.longest = Math.max(hold.longest, at - hold.since);
}
