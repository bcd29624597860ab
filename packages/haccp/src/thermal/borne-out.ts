import { onCommonScale } from '../quantity/convert-degrees';
import type { Surroundings } from './around-core';
import { isUsableReading } from './curve';

/** Two values so near are of one medium. Common practice, no source. */
const NEAR = onCommonScale({ hundredths: 400, unit: '°C' });

/**
 * On the common scale, confirmed by a reading of another time or by the set point. One value alone may be a slip: of
 * two far apart the less extreme counts.
 */
export function borneOut({ setPoint, readings }: Surroundings, end: 'coldest' | 'hottest'): number | undefined {
  const byTime = new Map(readings.filter(isUsableReading).map(({ at, temperature }) => [at, onCommonScale(temperature)]));
  const way = end === 'coldest' ? 1 : -1;
  let furthest: number | undefined;
  let next: number | undefined;
  for (const value of byTime.values()) {
    if (furthest === undefined || value * way < furthest * way) [furthest, next] = [value, furthest];
    else if (next === undefined || value * way < next * way) next = value;
  }
  const others = [next, setPoint && onCommonScale(setPoint)];
  const isNear = others.some((one) => one !== undefined && furthest !== undefined && Math.abs(one - furthest) <= NEAR);
  return isNear ? furthest : next;
}
