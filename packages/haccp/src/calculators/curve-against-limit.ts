import { judgedStep } from '../explain/explain-by-verdict';
import { coded } from '../limits/coded';
import type { CurveContext } from '../limits/curve-context';
import { judgeCurve } from '../limits/judge-curve';
import type { CurveLimit } from '../limits/limit';
import type { Phrase } from '../limits/verdict';
import { decimalText, scaled } from '../quantity/decimal';
import type { TemperatureUnit } from '../quantity/temperature';
import { isStirred, unknownPiece, type Piece } from '../thermal/piece';
import type { Calculation } from './calculation';
import { cannot, type CannotCalculate } from './cannot';
import { cautions } from './cautions';
import { curveOf, factsOf, type TypedReading } from './typed-reading';

const ended: CurveContext = { ended: true };

/** As a lot whose stage has ended; one probe. @param piece whose core was read: it bounds the speed */
export function curveAgainstLimit(
  readings: readonly TypedReading[],
  unit: TemperatureUnit,
  limit: CurveLimit,
  title: string,
  piece?: Piece,
): Calculation | CannotCalculate {
  if (readings.length === 0) return cannot('no-reading-given');
  return {
    given: [
      { what: coded('published-limit'), is: title },
      { what: coded('limit'), is: { limit, unit } },
      { what: coded('piece'), is: piece ? pieceOf(piece) : coded('piece-not-said', { piece: pieceOf(unknownPiece) }) },
      ...factsOf(readings, unit),
    ],
    steps: [judgedStep],
    results: [{ what: coded('measured'), is: { verdict: 'measured' } }],
    judged: [{ verdict: judgeCurve(curveOf(readings, unit), limit, { ...ended, piece }), limit }],
    notes: [],
    sources: [limit.source],
    grounds: [],
    cautions: [cautions.limits],
  };
}

function pieceOf(piece: Piece): Phrase {
  if (isStirred(piece)) return { code: 'piece-stirred' };
  const { value, unit } = piece.smallest;
  const thousandths = scaled(value, 3);
  if (thousandths === undefined) return { code: `piece-${piece.shape}` };
  return { code: `piece-${piece.shape}-of`, figures: { thinnest: { value: decimalText(thousandths, 3), unit } } };
}
