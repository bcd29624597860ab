import { buffer } from 'node:stream/consumers';
import { getDocument, VerbosityLevel } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { Readable } from 'node:stream';

/** One stretch of text as a reader finds it: where its baseline begins, in points from the lower left corner. */
export type FoundText = { text: string; x: number; y: number; width: number };
export type FoundPage = { width: number; height: number; items: FoundText[]; text: string };
export type FoundDocument = {
  bytes: Buffer;
  pages: FoundPage[];
  text: string;
  title: string;
  author: string;
  language: string | null;
  /** What the outline lists, in order. */
  outline: string[];
};

type DocumentInfo = { Title: string; Author: string; Language: string | null };

/** Opens a document as another program would, and reads its words back. */
export async function readBack(document: Readable): Promise<FoundDocument> {
  const bytes = await buffer(document);
  const loading = getDocument({ data: new Uint8Array(bytes), verbosity: VerbosityLevel.ERRORS });
  const pdf = await loading.promise;
  const pages: FoundPage[] = [];
  for (let number = 1; number <= pdf.numPages; number++) pages.push(await readPage(await pdf.getPage(number)));
  const { info } = await pdf.getMetadata();
  const { Title: title, Author: author, Language: language } = info as DocumentInfo;
  const outline = ((await pdf.getOutline()) ?? []).map(({ title: entry }) => entry);
  await loading.destroy();
  return { bytes, pages, text: pages.map(({ text }) => text).join('\n'), title, author, language, outline };
}

type PdfPage = Awaited<ReturnType<Awaited<ReturnType<typeof getDocument>['promise']>['getPage']>>;

async function readPage(page: PdfPage): Promise<FoundPage> {
  const { items } = await page.getTextContent();
  const [, , width = 0, height = 0] = page.view;
  const found = items.flatMap((item): FoundText[] => ('str' in item && item.str.trim()
    ? [{ text: item.str, x: Number(item.transform[4]), y: Number(item.transform[5]), width: item.width }] : []));
  const text = items.map((item) => ('str' in item ? item.str + (item.hasEOL ? '\n' : '') : '')).join('');
  return { width, height, items: found, text: text.replace(/\s+/g, ' ') };
}
