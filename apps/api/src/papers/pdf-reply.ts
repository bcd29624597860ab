import { Readable } from 'node:stream';
import { StreamableFile } from '@nestjs/common';
import { fileName } from './file-name';

/** The browser shows the document; a saved copy is named after `about`. */
export function pdfReply(document: PDFKit.PDFDocument, ...about: string[]): StreamableFile {
  if (!(document instanceof Readable)) throw new Error('A document is a stream that can be read');
  return new StreamableFile(document, { disposition: `inline; filename="${fileName(about)}.pdf"` });
}
