import { inks } from '../page/theme';

/** Probes are told apart by the pattern of their line, so that a copy in black and white can be read. */
const patterns = ['', '5 2.2', '1.1 2', '7 2 1.1 2', '2.6 1.6', '10 2.5'];

/** Makes the next stroke the line of one probe; ends with the document's `restore`. */
export function beginLineOf(document: PDFKit.PDFDocument, probe: number): void {
  document.save().lineWidth(0.95).lineJoin('round').strokeColor(inks.accent);
  document.addContent(`[${patterns[probe % patterns.length]}] 0 d`);
}
