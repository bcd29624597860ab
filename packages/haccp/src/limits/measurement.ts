import { isPossible } from '../thermal/curve';
import { scaled } from '../quantity/decimal';
import { degrees } from '../quantity/degrees';
import { isTemperatureUnit, type Degrees } from '../quantity/temperature';
import type { Measured } from '../kinds/range/range-limit';

/** Thousandths: pH 5.3 is 5300, aw 0.85 is 850, 10 % is 10000. */
export type Plain = { thousandths: number };

export type Measurement = Degrees | Plain;

/** Throws a RangeError on more than three decimals. */
export function plain(value: number): Plain {
  const thousandths = scaled(value, 3);
  if (thousandths === undefined) throw new RangeError(`${value} is not a number with at most three decimals`);
  return { thousandths };
}

export const measurementOf = ({ value, unit }: { value: number; unit: string }): Measurement =>
  isTemperatureUnit(unit) ? degrees(value, unit) : plain(value);

export const isDegrees = (measurement: Measurement): measurement is Degrees => 'hundredths' in measurement;

const MOST_THOUSANDTHS: Record<Exclude<Measured, 'temperature'>, number> = { pH: 14_000, aw: 1000, percent: 100_000 };

/** False for impossible values, and for another kind of value than the limit asks for. */
export function isUsable(measurement: Measurement | undefined, measured: Measured): measurement is Measurement {
  if (!measurement) return false;
  if (isDegrees(measurement)) return measured === 'temperature' && isPossible(measurement);
  if (measured === 'temperature' || !Number.isSafeInteger(measurement.thousandths)) return false;
  return measurement.thousandths >= 0 && measurement.thousandths <= MOST_THOUSANDTHS[measured];
}
