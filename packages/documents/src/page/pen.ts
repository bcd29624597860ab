import { breakLines, type Line, type Measure } from './break-lines';
import { Lettering } from './lettering';
import { printable } from './printable';
import type { Tags } from './tags';
import { inks, lines, styles, type Ink, type LineName, type StyleName } from './theme';
import { Typefaces } from './typefaces';
import { drawMark, markAdvance } from './draw-mark';
import type { Paragraph } from './words';

/** Capitals of both families stand about this share of their size above the baseline. */
const capHeight = 0.66;

type Fit = { align?: 'left' | 'center' | 'right'; within?: number };

/** Places are in points from the upper left corner. */
export class Pen implements Measure {
  private readonly lettering: Lettering;

  constructor(
    readonly document: PDFKit.PDFDocument,
    private readonly typefaces: Typefaces,
    readonly tags: Tags,
  ) {
    this.lettering = new Lettering(document, typefaces);
  }

  width(text: string, style: StyleName): number {
    return this.lettering.width(text, styles[style]);
  }

  markWidth(): number {
    return markAdvance;
  }

  lay(paragraph: Paragraph, width: number): Line[] {
    const spans = paragraph.spans.map((span) =>
      'mark' in span ? span : { ...span, text: this.printable(span.text, span.style ?? paragraph.style) },
    );
    return breakLines({ ...paragraph, spans }, width, this);
  }

  /** The line's leading begins at `top`. */
  set(line: Line, x: number, top: number, width: number): void {
    const baseline = top + this.baselineOf(line.style);
    const from = line.align === 'right' ? x + width - line.width : x;
    for (const piece of line.pieces) {
      if (piece.mark) drawMark(this.document, piece.mark, from + piece.x, baseline);
      else this.lettering.show(piece.text, from + piece.x, baseline, styles[piece.style]);
      if (piece.strike) this.strike(from + piece.x, baseline, piece.width, piece.style);
    }
  }

  /** Text wider than `within` ends in "…". */
  write(text: string, x: number, baseline: number, style: StyleName, fit: Fit = {}): void {
    const { align = 'left', within = Infinity } = fit;
    const shown = this.fitted(this.printable(text, style), style, within);
    const shift = { left: 0, center: 0.5, right: 1 }[align] * this.width(shown, style);
    this.lettering.show(shown, x - shift, baseline, styles[style]);
  }

  rule(x1: number, y1: number, x2: number, y2: number, line: LineName): void {
    const { width, ink } = lines[line];
    this.document.lineWidth(width).strokeColor(inks[ink]).moveTo(x1, y1).lineTo(x2, y2).stroke();
  }

  fill(x: number, y: number, width: number, height: number, ink: Ink): void {
    this.document.rect(x, y, width, height).fill(inks[ink]);
  }

  /** Measured from the top of the leading. */
  baselineOf(style: StyleName): number {
    const { size, leading } = styles[style];
    return (leading + capHeight * size) / 2;
  }

  private strike(x: number, baseline: number, width: number, style: StyleName): void {
    const y = baseline - styles[style].size * 0.23;
    this.rule(x - 0.8, y, x + width + 0.8, y, 'strike');
  }

  private fitted(text: string, style: StyleName, within: number): string {
    if (this.width(text, style) <= within) return text;
    let kept = text;
    while (kept && this.width(`${kept}…`, style) > within) kept = kept.slice(0, -1).trimEnd();
    return `${kept}…`;
  }

  private printable(text: string, style: StyleName): string {
    const { face } = styles[style];
    return printable(text, (codePoint) => this.typefaces.hasGlyph(face, codePoint));
  }
}
