import type { CurveContext } from '../limits/curve-context';
import { judgeCurve } from '../limits/judge-curve';
import type { CurveLimit } from '../limits/limit';
import { sayLimit } from '../limits/say-limit';
import type { Tell } from '../limits/told';
import type { TemperatureUnit } from '../quantity/temperature';
import { cautions } from './cautions';
import { sayPiece, unknownPiece, type Piece } from '../thermal/piece';
import { curveOf, factsOf, type TypedReading } from './typed-reading';
import type { CannotCalculate, Calculation } from './calculation';

const ended: CurveContext = { ended: true };

/**
 * Readings of one probe against one published limit, judged as a lot would be whose stage has ended.
 * @param piece whose core was read: how fast it can move at all
 */
export function curveAgainstLimit(
  readings: readonly TypedReading[],
  unit: TemperatureUnit,
  limit: CurveLimit,
  title: string,
  tell: Tell,
  piece?: Piece,
): Calculation | CannotCalculate {
  if (readings.length === 0) return { cannot: 'There is no reading: give at least one.' };
  const told = tell(judgeCurve(curveOf(readings, unit), limit, { ...ended, piece }), limit);
  return {
    title,
    given: [
      { what: 'Limit', said: sayLimit(limit, unit) },
      { what: 'Piece', said: piece ? sayPiece(piece) : `not said, so as thin as a sausage: ${sayPiece(unknownPiece)}` },
      ...factsOf(readings, unit),
    ],
    steps: [{ what: 'Against the limit', rule: told.limit, putIn: told.measured, gives: told.because }],
    results: [{ what: 'Measured', said: told.measured }],
    verdicts: [told],
    notes: told.notes,
    sources: [limit.source],
    cautions: [cautions.limits],
  };
}
