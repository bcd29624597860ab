import { above, boundOf, sayPrinted } from '../quantity/bound';
import { decimalText } from '../quantity/decimal';
import { sayDegrees } from '../quantity/degrees';
import { divide, type Rounding } from '../quantity/divide';
import type { PrintedTemperature } from '../quantity/temperature';
import type { RangeLimit } from './limit';
import { isDegrees, isUsable, type Measurement } from './measurement';
import { sayLimit } from './say-limit';
import type { Verdict } from './verdict';

type Side = 'min' | 'max';
/** How far inside (+) or outside (−) one bound, in small exact units of the measurement. */
type Spare = { side: Side; by: number };

/** Judged in the unit read, against the figure printed in that unit. Both bounds are still inside. */
export function judgeRange(measurement: Measurement | undefined, limit: RangeLimit): Verdict {
  const shared = { limit: sayLimit(limit), notes: [], source: limit.source };
  if (!isUsable(measurement, limit.measured)) return { ...shared, ...nothingUsable(measurement) };

  const measured = sayMeasurement(measurement, limit);
  const nearest = spares(measurement, limit).reduce<Spare | undefined>(
    (least, spare) => (least === undefined || !(spare.by >= least.by) ? spare : least),
    undefined,
  );
  if (!nearest || Number.isNaN(nearest.by)) {
    return { ...shared, kind: 'undetermined', measured, because: 'The limit has no figure to compare with.' };
  }
  if (nearest.by >= 0) {
    const margin = `${sayBy(nearest.by, measurement, limit, 'down')} to spare`;
    return { ...shared, kind: 'met', measured, margin, spare: nearest.by, because: `${measured} is within the limit.` };
  }
  return { ...shared, kind: 'missed', measured, spare: nearest.by, ...missedBy(nearest, measurement, limit, measured) };
}

function nothingUsable(measurement: Measurement | undefined) {
  const isThere = measurement !== undefined && (!isDegrees(measurement) || Number.isFinite(measurement.hundredths));
  return {
    kind: 'undetermined' as const,
    measured: 'nothing usable',
    because: isThere ? 'The value cannot be true for this measurement.' : 'There is no usable reading.',
    next: 'Check the instrument and read again.',
  };
}

function spares(measurement: Measurement, { min, max }: RangeLimit): Spare[] {
  return [
    ...(min === undefined ? [] : [{ side: 'min' as const, by: distanceAbove(measurement, min) }]),
    ...(max === undefined ? [] : [{ side: 'max' as const, by: -distanceAbove(measurement, max) }]),
  ];
}

function distanceAbove(measurement: Measurement, figure: PrintedTemperature | number): number {
  if (isDegrees(measurement)) return typeof figure === 'number' ? NaN : above(measurement, boundOf(figure));
  return typeof figure === 'number' ? measurement.thousandths - figure : NaN;
}

function missedBy({ side, by }: Spare, measurement: Measurement, limit: RangeLimit, measured: string) {
  const amount = sayBy(by, measurement, limit, 'up');
  const bound = sayBound(limit[side], measurement, limit);
  return side === 'min'
    ? {
        margin: `${amount} short`,
        because: `${measured} is ${amount} below ${bound}.`,
        next: `Bring it to at least ${bound} and read again; until then hold the lot.`,
      }
    : {
        margin: `${amount} over`,
        because: `${measured} is ${amount} above ${bound}.`,
        next: 'Set the lot aside and follow the corrective action of the plan.',
      };
}

const sayMeasurement = (measurement: Measurement, limit: RangeLimit): string =>
  isDegrees(measurement) ? sayDegrees(measurement) : sayNumber(measurement.thousandths, limit);

function sayBound(
  figure: PrintedTemperature | number | undefined,
  measurement: Measurement,
  limit: RangeLimit,
): string {
  if (figure === undefined) return 'the limit';
  if (typeof figure === 'number') return sayNumber(figure, limit);
  return isDegrees(measurement) ? sayPrinted(figure, measurement.unit) : 'the limit';
}

function sayNumber(thousandths: number, { measured }: RangeLimit): string {
  const text = decimalText(thousandths, 3);
  return measured === 'percent' ? `${text} %` : `${measured} ${text}`;
}

/**
 * A distance for reading. Only a figure converted from the other unit ever needs rounding: never in the lot's favour.
 */
function sayBy(by: number, measurement: Measurement, limit: RangeLimit, rounding: Rounding): string {
  const size = BigInt(Math.abs(by));
  if (isDegrees(measurement)) {
    const perHundredth = measurement.unit === '°C' ? 9n : 5n;
    return `${decimalText(divide(size, perHundredth, rounding), 2)} ${measurement.unit}`;
  }
  return `${decimalText(size, 3)}${limit.measured === 'percent' ? ' %' : ''}`;
}
