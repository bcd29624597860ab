import type { CrossingDrawn } from '../../explain/drawing';
import { drawnDegrees, drawnFigure } from '../../explain/drawn-degrees';
import { drawnError } from '../../explain/drawn-error';
import { readingAtInstant } from '../../explain/readings-at';
import type { CurveContext } from '../../limits/curve-context';
import { printedIn } from '../../quantity/quantities';
import type { PrintedTemperature, TemperatureUnit } from '../../quantity/temperature';
import type { CurveReading } from '../../thermal/curve';
import type { CoolingLimit } from './cooling-limit';
import { coolingOf, type Cooled } from './cooling-of';
import type { Passing } from './passing';

export function coolingCrossings(
  limit: CoolingLimit,
  own: readonly CurveReading[],
  context: CurveContext,
  unit: TemperatureUnit,
): CrossingDrawn[] {
  const cooled = coolingOf(own, limit, context);
  if (!cooled) return [];
  const allowed = drawnError(context.instrumentError, unit) + A_HUNDREDTH;
  const drawn = (passing: Passing | undefined, figure: PrintedTemperature | undefined, curve: Cooled['colder']) => {
    if (!passing || !figure) return [];
    const value = heightOf(passing, curve, unit);
    const isPassed = Math.abs(value - drawnFigure(figure, unit)) <= allowed;
    return isPassed ? [{ ...passing, label: printedIn(figure, unit), value }] : [];
  };
  const all = cooled.spans.flatMap(({ passings, from, to }): CrossingDrawn[] => [
    ...drawn(passings?.start, from, cooled.colder),
    ...drawn(passings?.end, to, cooled.warmer),
  ]);
  return all.filter((one, index) => all.findIndex((other) => isSamePassing(one, other)) === index);
}

/** The end of one stage is the start of the next: one mark. */
const isSamePassing = (one: CrossingDrawn, other: CrossingDrawn): boolean =>
  one.label.value === other.label.value && (one.by === other.by || one.straight === other.straight);

const A_HUNDREDTH = 0.011;

/** A stage that begins before its readings, or with a record, has no passing there: a mark would be off the curve. */
function heightOf({ after, by, straight }: Passing, curve: readonly CurveReading[], unit: TemperatureUnit): number {
  const [before, next] = [readingAtInstant(curve, after), readingAtInstant(curve, by)];
  if (!before || !next) return NaN;
  const [a, b] = [drawnDegrees(before.temperature, unit), drawnDegrees(next.temperature, unit)];
  return after === by ? b : a + ((b - a) * (straight - after)) / (by - after);
}
