import type { Surroundings } from '../thermal/around-core';
import type { CriticalLimit } from '../limits/limit';
import { onCommonScale } from '../quantity/convert-degrees';
import { isUsableReading } from '../thermal/curve';

/** Two thermometers, and a compressor that starts and stops. Common practice, no source. */
const SWING = onCommonScale({ hundredths: 100, unit: '°C' });

/**
 * What a core that cools cannot be colder than, on the common scale: the coldest that was read of what it lies in, or
 * its set point where nobody read it, less what the thermometer may be wrong by. Undefined where neither is known.
 */
export function coldestAround(surroundings: Surroundings | undefined, error: number): number | undefined {
  if (!surroundings) return undefined;
  const { setPoint, readings } = surroundings;
  const set = setPoint ? onCommonScale(setPoint) : Infinity;
  const read = readings.filter(isUsableReading).map(({ temperature }) => onCommonScale(temperature));
  const coldest = read.length > 0 ? read.reduce((least, one) => Math.min(least, one)) : set;
  return coldest === Infinity ? undefined : coldest - Math.max(error, SWING);
}

/** Whether what is read at a control point lies in what is colder: its core cannot get colder than that. */
export const isChill = (limits: readonly CriticalLimit[]): boolean =>
  limits.some(({ kind }) => kind === 'cooling' || kind === 'growth');
