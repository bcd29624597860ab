import type { FigureCrossingData } from '../lot-record-data';
import type { Pen } from '../page/pen';
import { inks, lines } from '../page/theme';
import type { Plot } from './plot';

const [half, diamond] = [3.4, 2.8];

/** A bracket joins the readings either side; a diamond marks where a straight line passes. */
export function drawCrossings({ document }: Pen, { x, y }: Plot, crossings: readonly FigureCrossingData[]): void {
  for (const { value, after, by, straight, chilled } of crossings) {
    const [from, to, height] = [x(after), x(by), y(value)];
    document.save().lineWidth(lines.firm.width).strokeColor(inks.ink).fillColor(inks.paper);
    document
      .moveTo(from, height - half)
      .lineTo(from, height + half)
      .moveTo(from, height)
      .lineTo(to, height);
    document
      .moveTo(to, height - half)
      .lineTo(to, height + half)
      .stroke();
    if (chilled !== undefined) cross(document, x(chilled), height);
    const at = x(straight);
    document.polygon([at, height - diamond], [at + diamond, height], [at, height + diamond], [at - diamond, height]);
    document.fillAndStroke().restore();
  }
}

function cross(document: PDFKit.PDFDocument, x: number, y: number): void {
  document
    .moveTo(x - 2, y - 2)
    .lineTo(x + 2, y + 2)
    .moveTo(x + 2, y - 2)
    .lineTo(x - 2, y + 2)
    .stroke();
}
