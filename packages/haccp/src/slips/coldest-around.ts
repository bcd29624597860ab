import type { Surroundings } from '../thermal/around-core';
import type { CriticalLimit } from '../limits/limit';
import { kindOf } from '../kinds/registry';
import { onCommonScale } from '../quantity/convert-degrees';
import { borneOut } from '../thermal/borne-out';
import { isUsableReading } from '../thermal/curve';

/** Two thermometers, and a compressor that starts and stops. Common practice, no source. */
const SWING = onCommonScale({ hundredths: 100, unit: '°C' });

/**
 * What a core that cools cannot be colder than, on the common scale: the coldest that was read of what it lies in and
 * that is borne out, or its set point where nobody read it, less what the thermometer may be wrong by. A value that
 * stands alone may be a slip: beside a set point it counts for nothing. Undefined where neither is known.
 */
export function coldestAround(surroundings: Surroundings | undefined, error: number): number | undefined {
  if (!surroundings) return undefined;
  const { setPoint, readings } = surroundings;
  const [read] = readings.filter(isUsableReading);
  const alone = setPoint ?? read?.temperature;
  const coldest = borneOut(surroundings, 'coldest') ?? (alone && onCommonScale(alone));
  return coldest === undefined ? undefined : coldest - Math.max(error, SWING);
}

/** Whether what is read at a control point lies in what is colder: its core cannot get colder than that. */
export const isChill = (limits: readonly CriticalLimit[]): boolean => limits.some((limit) => kindOf(limit).isChill);
