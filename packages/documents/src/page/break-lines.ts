import { splitToUnits } from './split-to-units';
import type { StyleName } from './theme';
import type { Mark, Paragraph } from './words';

export type Measure = {
  width(text: string, style: StyleName): number;
  /** Includes the space after the mark. */
  markWidth(style: StyleName): number;
};

/** One style, one place. A mark has no text. */
export type Piece = { text: string; style: StyleName; strike: boolean; mark?: Mark; width: number };
export type Line = { pieces: (Piece & { x: number })[]; width: number; style: StyleName; align: 'left' | 'right' };

export function breakLines(paragraph: Paragraph, width: number, measure: Measure): Line[] {
  const lines: Line[] = [];
  const begin = () => {
    const line: Line = { pieces: [], width: 0, style: paragraph.style, align: paragraph.align ?? 'left' };
    lines.push(line);
    return line;
  };

  let line = begin();
  for (const unit of splitToUnits(paragraph, measure)) {
    const space = line.pieces.length ? (unit.space?.width ?? 0) : 0;
    const isFull = line.pieces.length > 0 && line.width + space + unit.width > width;
    if (unit.startsLine || isFull) line = begin();
    else if (space && unit.space) append(line, unit.space);

    for (const piece of unit.pieces) {
      for (const [index, part] of cutToWidth(piece, width, measure).entries()) {
        if (index) line = begin();
        append(line, part);
      }
    }
  }
  return lines;
}

function append(line: Line, piece: Piece): void {
  const last = line.pieces.at(-1);
  if (last && !last.mark && !piece.mark && last.style === piece.style && last.strike === piece.strike) {
    last.text += piece.text;
    last.width += piece.width;
  } else {
    line.pieces.push({ ...piece, x: line.width });
  }
  line.width += piece.width;
}

/** A word wider than its column is cut. */
function cutToWidth(piece: Piece, width: number, measure: Measure): Piece[] {
  if (piece.width <= width) return [piece];
  const parts: string[] = [];
  let part = '';
  for (const sign of piece.text) {
    if (part && measure.width(part + sign, piece.style) > width) {
      const [kept, carried] = cutAfterHyphen(part);
      parts.push(kept);
      part = carried;
    }
    part += sign;
  }
  return [...parts, part].map((text) => ({ ...piece, text, width: measure.width(text, piece.style) }));
}

function cutAfterHyphen(part: string): [kept: string, carried: string] {
  const hyphen = Math.max(part.lastIndexOf('-'), part.lastIndexOf('/'));
  return hyphen > 0 ? [part.slice(0, hyphen + 1), part.slice(hyphen + 1)] : [part, ''];
}
