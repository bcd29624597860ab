import { sayDegrees, sayDifference } from '../quantity/degrees';
import type { Degrees, PrintedTemperature } from '../quantity/temperature';
import { isPossible } from '../thermal/curve';

/** Whether a thermometer read what it should, within its tolerance; both bounds still pass. */
export type CalibrationVerdict = {
  kind: 'met' | 'missed' | 'undetermined';
  measured: string;
  expected: string;
  /** "1.2 °F above" */
  difference?: string;
  because: string;
  next?: string;
};

/** Food thermometers: ± 2 °F, or ± 1 °C where the scale is in °C (FDA Food Code 4-203.11, as copied in state law). */
export const FOOD_THERMOMETER_TOLERANCE: PrintedTemperature = { '°F': 200, '°C': 100 };

/** Compares a reading at a known point with what it should be. The reading and the point are in one unit. */
export function judgeCalibration(
  reading: Degrees | undefined,
  expected: Degrees,
  tolerance: PrintedTemperature = FOOD_THERMOMETER_TOLERANCE,
): CalibrationVerdict {
  const allowed = tolerance[expected.unit];
  if (!isPossible(reading) || reading.unit !== expected.unit || allowed === undefined) {
    const because = isPossible(reading)
      ? 'The reading and the expected value are not in the same unit.'
      : 'There is no usable reading.';
    return {
      kind: 'undetermined',
      measured: 'nothing usable',
      expected: sayDegrees(expected),
      because,
      next: 'Read it again.',
    };
  }
  const off = reading.hundredths - expected.hundredths;
  const difference = off === 0 ? 'none' : `${sayDifference(off, reading.unit)} ${off > 0 ? 'above' : 'below'}`;
  const shared = { measured: sayDegrees(reading), expected: sayDegrees(expected), difference };
  const within = sayDifference(allowed, reading.unit);
  if (Math.abs(off) <= allowed) return { ...shared, kind: 'met', because: `It is within ± ${within}.` };
  return {
    ...shared,
    kind: 'missed',
    because: `It is ${difference} the expected ${sayDegrees(expected)}; ± ${within} is allowed.`,
    next: 'Adjust or withdraw it, and look again at everything measured with it since its last good check.',
  };
}
