import type { Measure, Piece } from './break-lines';
import type { Paragraph, Span } from './words';

/** A unit stays on one line; `space` stands before it. */
export type Unit = { pieces: Piece[]; width: number; space?: Piece; startsLine: boolean };

const tied = '\u00a0';
const measured = '(?:°[CF]|°|ppm|log|min|days?|mm|cm|kg|lb|oz|g|h|s|d|%|pm|am)(?![\\p{L}\\d])';
const beforeUnit = new RegExp(`(\\d) (?=${measured})`, 'gu');
const afterSign = /([≥≤<>±×+−→]) (?=[\d.])/g;

/** A figure keeps its sign and unit on one line: "≥ 145 °F". */
const tie = (text: string) => text.replace(beforeUnit, `$1${tied}`).replace(afterSign, `$1${tied}`);

export function splitToUnits(paragraph: Paragraph, measure: Measure): Unit[] {
  const units: Unit[] = [{ pieces: [], width: 0, startsLine: false }];
  for (const piece of paragraph.spans.flatMap((span) => piecesOf(span, paragraph, measure))) {
    if (piece.text === '\n') units.push({ pieces: [], width: 0, startsLine: true });
    else if (piece.text.startsWith(' ')) units.push({ pieces: [], width: 0, space: piece, startsLine: false });
    else add(units.at(-1), piece);
  }
  return units;
}

function add(unit: Unit | undefined, piece: Piece): void {
  if (!unit) return;
  unit.pieces.push(piece);
  unit.width += piece.width;
}

function piecesOf(span: Span, { style: usual }: Paragraph, measure: Measure): Piece[] {
  if ('mark' in span) {
    return [{ text: '', style: usual, strike: false, mark: span.mark, width: measure.markWidth(usual) }];
  }
  const style = span.style ?? usual;
  return tie(span.text)
    .split(/( +|\n)/)
    .filter(Boolean)
    .map((token) => {
      const text = token.replaceAll(tied, ' ');
      return { text, style, strike: span.strike ?? false, width: text === '\n' ? 0 : measure.width(text, style) };
    });
}
