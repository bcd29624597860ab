import { allowForError } from '../../instruments/allow-for-error';
import { sayErrors, type InstrumentErrors } from '../../instruments/instrument-errors';
import { above, boundOf, sayPrinted } from '../../quantity/bound';
import { decimalText } from '../../quantity/decimal';
import { sayDegrees } from '../../quantity/degrees';
import { divide, type Rounding } from '../../quantity/divide';
import type { Degrees, PrintedTemperature } from '../../quantity/temperature';
import { cannotBe, impossibleUnder } from '../../limits/impossible-value';
import type { RangeLimit } from './range-limit';
import { isDegrees, isUsable, type Measurement } from '../../limits/measurement';
import { sayLimit } from '../../limits/say-limit';
import type { Saying } from '../../limits/told';

type Side = 'min' | 'max';
/** How far inside (+) or outside (−) one bound, in small exact units of the measurement. */
type Spare = { side: Side; by: number; isOut: boolean };

/**
 * Judged in the unit read, against the figure printed in that unit. A bound is inside unless its sign is strict. The
 * instrument's error is allowed for in the bounds: at least 165 °F and ± 1 °F ask for 166 °F, pH 5.3 and ± 0.05 for
 * 5.25.
 */
export function judgeRange(measurement: Measurement | undefined, limit: RangeLimit, errors?: InstrumentErrors): Saying {
  const error = errorFor(limit, errors);
  return error ? judgeAllowing(measurement, limit, error) : judgePlainly(measurement, limit);
}

/** The error of the instrument that reads what is limited; undefined where none is stated. */
export function errorFor({ measured }: RangeLimit, errors: InstrumentErrors = {}): Measurement | undefined {
  if (measured === 'percent') return undefined;
  const error = errors[measured];
  return error && sizeOf(error) !== 0 ? error : undefined;
}

const sizeOf = (error: Measurement): number => (isDegrees(error) ? error.hundredths : error.thousandths);

function judgeAllowing(measurement: Measurement | undefined, limit: RangeLimit, error: Measurement): Saying {
  const verdict = judgePlainly(measurement, { ...limit, ...boundsAllowing(limit, error) });
  const [said] = sayErrors({ [limit.measured]: error });
  const note = `An error of ${said} is allowed for in the limit.`;
  return { ...verdict, limit: sayLimit(limit), notes: [...verdict.notes, note] };
}

/** Both bounds, temperatures in every unit printed, with the instrument's error allowed for. */
export function boundsAllowing({ min, max }: RangeLimit, error: Measurement): Pick<RangeLimit, 'min' | 'max'> {
  return { min: allowing(min, 'min', error), max: allowing(max, 'max', error) };
}

function allowing(bound: RangeLimit['min'], side: Side, error: Measurement): RangeLimit['min'] {
  if (bound === undefined) return undefined;
  if (typeof bound === 'number') return isDegrees(error) ? bound : bound + (side === 'min' ? 1 : -1) * Math.abs(error.thousandths);
  if (!isDegrees(error)) return bound;
  const units = (['°F', '°C'] as const).filter((unit) => bound[unit] !== undefined);
  return Object.fromEntries(
    units.map((unit) => [unit, allowForError({ hundredths: bound[unit] as number, unit }, error, side).hundredths]),
  );
}

function judgePlainly(measurement: Measurement | undefined, limit: RangeLimit): Saying {
  const shared = { limit: sayLimit(limit), notes: [], source: limit.source };
  if (!isUsable(measurement, limit.measured)) return { ...shared, ...nothingUsable(measurement) };

  const measured = sayMeasurement(measurement, limit);
  const nearest = spares(measurement, limit).reduce<Spare | undefined>(
    (least, spare) => (least === undefined || isWorse(spare, least) ? spare : least),
    undefined,
  );
  if (!nearest || Number.isNaN(nearest.by)) {
    return { ...shared, kind: 'undetermined', measured, because: 'The limit has no figure to compare with.' };
  }
  const impossible = nearest.isOut ? undefined : impossibleUnder(limit, measurement);
  if (impossible) return { ...shared, measured, ...cannotBe(impossible) };
  if (!nearest.isOut) {
    const margin = `${sayBy(nearest.by, measurement, limit, 'down')} to spare`;
    return { ...shared, kind: 'met', measured, margin, spare: nearest.by, because: `${measured} is within the limit.` };
  }
  return { ...shared, kind: 'missed', measured, spare: nearest.by, ...missedBy(nearest, measurement, limit, measured) };
}

/** Further out; at the same distance, the one whose sign excludes its figure. No number is the worst of all. */
const isWorse = (one: Spare, other: Spare): boolean => !(one.by >= other.by) || (one.by === other.by && one.isOut && !other.isOut);

function nothingUsable(measurement: Measurement | undefined) {
  const isThere = measurement !== undefined && (!isDegrees(measurement) || Number.isFinite(measurement.hundredths));
  return {
    kind: 'undetermined' as const,
    measured: 'nothing usable',
    because: isThere ? 'The value cannot be true for this measurement.' : 'There is no usable reading.',
    next: 'Check the instrument and read again.',
  };
}

function spares(measurement: Measurement, { min, max, signs }: RangeLimit): Spare[] {
  return [
    ...(min === undefined ? [] : [spare('min', distanceAbove(measurement, min), signs?.min !== undefined)]),
    ...(max === undefined ? [] : [spare('max', -distanceAbove(measurement, max), signs?.max !== undefined)]),
  ];
}

const spare = (side: Side, by: number, isStrict: boolean): Spare => ({
  side,
  by,
  isOut: by < 0 || (isStrict && by === 0),
});

function distanceAbove(measurement: Measurement, figure: PrintedTemperature | number): number {
  if (isDegrees(measurement)) return typeof figure === 'number' ? NaN : above(measurement, boundOf(figure));
  return typeof figure === 'number' ? measurement.thousandths - figure : NaN;
}

function missedBy({ side, by }: Spare, measurement: Measurement, limit: RangeLimit, measured: string) {
  const amount = sayBy(by, measurement, limit, 'up');
  const bound = sayBound(limit[side] as PrintedTemperature | number, measurement, limit);
  if (by === 0) return missedByNothing(side, bound, measured);
  return side === 'min'
    ? {
        margin: `${amount} short`,
        because: `${measured} is ${amount} below ${bound}.`,
        next: `Bring it to at least ${bound} and read again; until then hold the lot.`,
      }
    : {
        margin: `${amount} over`,
        because: `${measured} is ${amount} above ${bound}.`,
        next: SET_ASIDE,
      };
}

/** On a figure that the source excludes. */
function missedByNothing(side: Side, bound: string, measured: string) {
  const word = side === 'min' ? 'above' : 'below';
  return {
    margin: `not ${word} ${bound}`,
    because: `${measured} is on the limit, which asks for ${word} ${bound}.`,
    next: side === 'min' ? `Bring it above ${bound} and read again; until then hold the lot.` : SET_ASIDE,
  };
}

const SET_ASIDE = 'Set the lot aside and follow the corrective action of the plan.';

const sayMeasurement = (measurement: Measurement, limit: RangeLimit): string =>
  isDegrees(measurement) ? sayDegrees(measurement) : sayNumber(measurement.thousandths, limit);

/** A figure that was compared with: a temperature stands beside degrees only. */
const sayBound = (figure: PrintedTemperature | number, measurement: Measurement, limit: RangeLimit): string =>
  typeof figure === 'number' ? sayNumber(figure, limit) : sayPrinted(figure, (measurement as Degrees).unit);

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
