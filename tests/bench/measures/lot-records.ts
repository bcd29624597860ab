import { createRequire } from 'node:module';
import { lotRecord } from '@larderbook/documents';
import PDFDocument from 'pdfkit';
import { aLotRecord } from '../../../packages/documents/src/lot-record.test-data';
import type { Measured } from '../report/figure';

const records = 40;
const [rows, columns] = [40, 5];
const face = createRequire(import.meta.url).resolve('source-sans/TTF/SourceSans3-Regular.ttf');

/** Lot records of several pages, one after the other, beside as many documents with as many pages of bare table cells. */
export async function lotRecords(): Promise<Measured> {
  const data = aLotRecord();
  await pagesASecond(5, () => lotRecord(data));
  const ours = await pagesASecond(records, () => lotRecord(data));
  const bare = await pagesASecond(records, () => bareDocument(ours.pages / records));
  const beside = { what: `bare pdfkit, ${rows} rows of ${columns} columns`, value: bare.perSecond };
  return {
    title: 'Lot records printed',
    figures: [{ what: 'pages', value: ours.perSecond, unit: '/s', beside, note: `${ours.pages / records} pages each` }],
  };
}

async function pagesASecond(documents: number, draw: () => PDFKit.PDFDocument): Promise<{ perSecond: number; pages: number }> {
  const began = performance.now();
  let pages = 0;
  for (let drawn = 0; drawn < documents; drawn++) pages += await pagesOf(draw());
  return { perSecond: (pages / (performance.now() - began)) * 1000, pages };
}

/** Read to its end and thrown away; the number of its pages stands in it. */
async function pagesOf(document: PDFKit.PDFDocument): Promise<number> {
  let pages = 0;
  for await (const chunk of document) pages += [...String(chunk).matchAll(/\/Type \/Page\b/g)].length;
  return pages;
}

function bareDocument(pages: number): PDFKit.PDFDocument {
  const document = new PDFDocument({ autoFirstPage: false, size: 'LETTER' });
  document.registerFont('text', face);
  for (let page = 0; page < pages; page++) {
    document.addPage().font('text').fontSize(9);
    for (let row = 0; row < rows; row++) {
      for (let column = 0; column < columns; column++)
        document.text(`${page + 1}.${row + 1} met 151.5 °F`, 40 + column * 105, 50 + row * 16, { lineBreak: false });
    }
  }
  document.end();
  return document;
}
