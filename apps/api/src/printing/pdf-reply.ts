import { Readable } from 'node:stream';
import { StreamableFile } from '@nestjs/common';

/** A document as it is drawn, shown in the browser; saved, it has the name of what it is about. */
export function pdfReply(document: PDFKit.PDFDocument, name: string): StreamableFile {
  if (!(document instanceof Readable)) throw new Error('A document is a stream that can be read');
  return new StreamableFile(document, { disposition: `inline; filename="${name.replace(/[^\w.-]+/g, '-')}.pdf"` });
}
