import type { Bound } from '../quantity/bound';
import { onCommonScale } from '../quantity/convert-degrees';
import type { CurveReading } from './curve';
import { addToHolds, beginHolds, holdsOf, levelOf, type Holds } from './holds';

/** @param bounds from the coldest to the hottest */
export function measureHolds(readings: readonly CurveReading[], bounds: readonly Bound[], longestGap: number): Holds {
  const holds = beginHolds(bounds, longestGap);
  let level = 0;
  for (const { at, temperature } of readings) {
    level = levelOf(onCommonScale(temperature), temperature.unit, bounds, level);
    addToHolds(holds, at, level);
  }
  return holdsOf(holds);
}
