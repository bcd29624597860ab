import { above, boundOf } from '../quantity/bound';
import type { PrintedTemperature } from '../quantity/temperature';
import type { CurveReading } from '../thermal/curve';

export type FrozenHold = {
  /** The longest time without a break, ms. */
  longest: number;
  /** When the stretch that still goes on at the last reading began (epoch ms). */
  since?: number;
};

/** Time at or below a temperature: only between two readings that both are, and no farther apart than tolerated. */
export function frozenHold(readings: readonly CurveReading[], at: PrintedTemperature, longestGap: number): FrozenHold {
  const bound = boundOf(at);
  const hold: FrozenHold = { longest: 0 };
  let last = -Infinity;
  for (const reading of readings) {
    const isBroken = hold.since === undefined || !(reading.at - last <= longestGap);
    last = reading.at;
    if (above(reading.temperature, bound) > 0) hold.since = undefined;
    else if (isBroken) hold.since = reading.at;
    if (hold.since !== undefined) hold.longest = Math.max(hold.longest, reading.at - hold.since);
  }
  return hold;
}
