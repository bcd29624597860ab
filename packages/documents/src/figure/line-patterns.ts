import { inks } from '../page/theme';

/** Patterns tell probes apart, also on a copy in black and white. */
const patterns = ['', '5 2.2', '1.1 2', '7 2 1.1 2', '2.6 1.6', '10 2.5'];

/** The caller ends the line with the document's `restore`. */
export function beginLineOf(document: PDFKit.PDFDocument, probe: number): void {
  document.save().lineWidth(0.95).lineJoin('round').strokeColor(inks.accent);
  document.addContent(`[${patterns[probe % patterns.length]}] 0 d`);
}
