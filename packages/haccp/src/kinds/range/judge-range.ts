import { allowForError } from '../../instruments/allow-for-error';
import type { InstrumentErrors } from '../../instruments/instrument-errors';
import { notedError } from '../../instruments/noted-error';
import { above, boundOf } from '../../quantity/bound';
import type { Rounding } from '../../quantity/divide';
import { amountOf, degreesApart, degreesOf, differenceOf, printedIn } from '../../quantity/quantities';
import type { Quantity, QuantityUnit } from '../../quantity/quantity';
import type { Degrees, PrintedTemperature } from '../../quantity/temperature';
import { cannotBe, impossibleUnder } from '../../limits/impossible-value';
import type { Measured, RangeLimit } from './range-limit';
import { isDegrees, isUsable, type Measurement } from '../../limits/measurement';
import type { Found, Verdict, VerdictKind } from '../../limits/verdict';

type Side = 'min' | 'max';
/** Inside (+) or outside (−) one bound, in exact steps of the measurement. */
type Spare = { side: Side; by: number; isOut: boolean };

/**
 * Compared with the figure printed in the unit read. A bound is inside unless its sign is strict. Bounds allow for the
 * instrument's error: at least 165 °F and ± 1 °F ask for 166 °F, pH 5.3 and ± 0.05 for 5.25.
 */
export function judgeRange(measurement: Measurement | undefined, limit: RangeLimit, errors?: InstrumentErrors): Verdict {
  const error = errorFor(limit, errors);
  return error ? judgeAllowing(measurement, limit, error) : judgePlainly(measurement, limit);
}

export function errorFor({ measured }: RangeLimit, errors: InstrumentErrors = {}): Measurement | undefined {
  if (measured === 'percent') return undefined;
  const error = errors[measured];
  return error && sizeOf(error) !== 0 ? error : undefined;
}

const sizeOf = (error: Measurement): number => (isDegrees(error) ? error.hundredths : error.thousandths);

function judgeAllowing(measurement: Measurement | undefined, limit: RangeLimit, error: Measurement): Verdict {
  const verdict = judgePlainly(measurement, { ...limit, ...boundsAllowing(limit, error) });
  const { measured } = limit as { measured: Exclude<Measured, 'percent'> }; // a percentage has no error
  return { ...verdict, notes: [...verdict.notes, notedError(error, measured)] };
}

/** Within the instrument's error; temperatures in every unit printed. */
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

function judgePlainly(measurement: Measurement | undefined, limit: RangeLimit): Verdict {
  if (!isUsable(measurement, limit.measured)) return { ...nothingUsable(measurement), notes: [] };
  const read = figureOf(measurement, limit);
  const nearest = spares(measurement, limit).reduce<Spare | undefined>(
    (least, spare) => (least === undefined || isWorse(spare, least) ? spare : least),
    undefined,
  );
  if (!nearest || Number.isNaN(nearest.by)) {
    return { kind: 'undetermined', finding: 'limit-without-figure', figures: { read }, notes: [] };
  }
  const impossible = nearest.isOut ? undefined : impossibleUnder(limit, measurement);
  if (impossible) return { ...cannotBe(impossible), notes: [] };
  const { by } = nearest;
  if (nearest.isOut) return { kind: 'missed', ...missedBy(nearest, read, measurement, limit), spare: by, notes: [] };
  const spare = differenceBy(by, measurement, limit, 'down');
  return { kind: 'met', finding: 'value-within', figures: { read, spare }, spare: by, notes: [] };
}

/** Further out, or excluded by its sign at the same distance. NaN is the worst. */
const isWorse = (one: Spare, other: Spare): boolean => !(one.by >= other.by) || (one.by === other.by && one.isOut && !other.isOut);

function nothingUsable(measurement: Measurement | undefined): { kind: VerdictKind } & Found {
  const isThere = measurement !== undefined && (!isDegrees(measurement) || Number.isFinite(measurement.hundredths));
  return { kind: 'undetermined', finding: isThere ? 'value-untrue' : 'value-missing', figures: {} };
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

/** An excluded figure has no distance to its bound. */
function missedBy({ side, by }: Spare, read: Quantity, measurement: Measurement, limit: RangeLimit): Found {
  const bound = boundFigure(limit[side] as PrintedTemperature | number, measurement, limit);
  if (by === 0) return { finding: side === 'min' ? 'range-not-above' : 'range-not-below', figures: { read, bound } };
  const figures = { read, by: differenceBy(by, measurement, limit, 'up'), bound };
  return { finding: side === 'min' ? 'range-below' : 'range-above', figures };
}

const figureOf = (measurement: Measurement, limit: RangeLimit): Quantity =>
  isDegrees(measurement) ? degreesOf(measurement) : amountOf(measurement.thousandths, unitOf(limit));

/** Temperature bounds are compared only with degrees. */
const boundFigure = (figure: PrintedTemperature | number, measurement: Measurement, limit: RangeLimit): Quantity =>
  typeof figure === 'number' ? amountOf(figure, unitOf(limit)) : printedIn(figure, (measurement as Degrees).unit);

/** A temperature has the unit it was read in. */
const unitOf = ({ measured }: RangeLimit): QuantityUnit => (measured === 'percent' ? '%' : (measured as 'pH' | 'aw'));

/** Only a converted figure needs rounding: never in the lot's favour. */
const differenceBy = (by: number, measurement: Measurement, limit: RangeLimit, rounding: Rounding): Quantity =>
  isDegrees(measurement) ? degreesApart(by, measurement.unit, rounding) : differenceOf(by, unitOf(limit));
