import { inks } from './theme';
import type { Mark } from './words';

/** Points. */
const side = 5.4;
export const markAdvance = side + 4.4;

/**
 * Shapes tell verdicts apart in black and white; the word always stands beside them. Met is full, undetermined hatched,
 * missed struck through.
 */
export function drawMark(document: PDFKit.PDFDocument, mark: Mark, x: number, baseline: number): void {
  const top = baseline - side - 0.2;
  document.save().strokeColor(inks.ink).fillColor(inks.ink);
  if (mark === 'met') document.rect(x, top, side, side).fill();
  if (mark === 'undetermined') hatched(document, x, top);
  if (mark === 'missed') struck(document, x, top);
  if (mark === 'flag') pennant(document, x + side + 1.6, top);
  document.restore();
}

function hatched(document: PDFKit.PDFDocument, x: number, top: number): void {
  document.save().rect(x, top, side, side).clip().lineWidth(0.55);
  for (let step = 1.8; step < side * 2; step += 1.8)
    document
      .moveTo(x + step, top)
      .lineTo(x, top + step)
      .stroke();
  document
    .restore()
    .lineWidth(0.6)
    .rect(x + 0.3, top + 0.3, side - 0.6, side - 0.6)
    .stroke();
}

function struck(document: PDFKit.PDFDocument, x: number, top: number): void {
  const beyond = 1.4;
  document
    .lineWidth(0.9)
    .rect(x + 0.45, top + 0.45, side - 0.9, side - 0.9)
    .stroke();
  document
    .lineWidth(1.2)
    .moveTo(x - beyond, top + side + beyond)
    .lineTo(x + side + beyond, top - beyond)
    .stroke();
}

/** The pole stands at the right, against the letter. */
function pennant(document: PDFKit.PDFDocument, x: number, top: number): void {
  document
    .moveTo(x, top - 1)
    .lineTo(x - side + 0.6, top + 1.2)
    .lineTo(x, top + 3.4)
    .fill();
  document
    .lineWidth(0.7)
    .moveTo(x, top - 1.4)
    .lineTo(x, top + side + 0.4)
    .stroke();
}
