import type { Surroundings } from '../thermal/around-core';
import type { CriticalLimit } from '../limits/limit';
import { kindOf } from '../kinds/registry';
import { onCommonScale } from '../quantity/convert-degrees';
import { borneOut } from '../thermal/borne-out';
import { isUsableReading } from '../thermal/curve';

/** Two thermometers, and a compressor that starts and stops. Common practice, no source. */
const SWING = onCommonScale({ hundredths: 100, unit: '°C' });

/**
 * Lower bound of a cooling core, on the common scale: the coldest confirmed reading of its medium, else the set point,
 * less the thermometer's error. Beside a set point an unconfirmed value, perhaps a slip, counts for nothing.
 */
export function coldestAround(surroundings: Surroundings | undefined, error: number): number | undefined {
  if (!surroundings) return undefined;
  const { setPoint, readings } = surroundings;
  const [read] = readings.filter(isUsableReading);
  const alone = setPoint ?? read?.temperature;
  const coldest = borneOut(surroundings, 'coldest') ?? (alone && onCommonScale(alone));
  return coldest === undefined ? undefined : coldest - Math.max(error, SWING);
}

export const isChill = (limits: readonly CriticalLimit[]): boolean => limits.some((limit) => kindOf(limit).isChill);
