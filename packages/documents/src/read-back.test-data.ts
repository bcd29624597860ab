import { buffer } from 'node:stream/consumers';
import { getDocument, OPS, VerbosityLevel } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { Readable } from 'node:stream';
import { lines } from './page/theme';

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
  /** What each stretch is, page by page in reading order, and the words given for figures. */
  roles: string[];
  alternatives: string[];
};

type DocumentInfo = { Title: string; Author: string; Language: string | null };

/** Opens a document as another program would, and reads its words back. */
export async function readBack(document: Readable): Promise<FoundDocument> {
  const bytes = await buffer(document);
  const loading = getDocument({ data: new Uint8Array(bytes), verbosity: VerbosityLevel.ERRORS });
  const pdf = await loading.promise;
  const pages: FoundPage[] = [];
  const structure: Tagged[] = [];
  for (let number = 1; number <= pdf.numPages; number++) {
    const page = await pdf.getPage(number);
    pages.push(await readPage(page));
    structure.push(...flattened(await page.getStructTree()));
  }
  const { info } = await pdf.getMetadata();
  const { Title: title, Author: author, Language: language } = info as DocumentInfo;
  const outline = ((await pdf.getOutline()) ?? []).map(({ title: entry }) => entry);
  await loading.destroy();
  const roles = structure.map(({ role }) => role);
  const alternatives = structure.flatMap(({ alt }) => alt ?? []);
  const text = pages.map((page) => page.text).join('\n');
  return { bytes, pages, text, title, author, language, outline, roles, alternatives };
}

type PdfPage = Awaited<ReturnType<Awaited<ReturnType<typeof getDocument>['promise']>['getPage']>>;

/** How many lines are drawn as text is struck through. */
export async function strikesIn({ bytes }: Pick<FoundDocument, 'bytes'>): Promise<number> {
  const loading = getDocument({ data: new Uint8Array(bytes), verbosity: VerbosityLevel.ERRORS });
  const pdf = await loading.promise;
  let strikes = 0;
  for (let number = 1; number <= pdf.numPages; number++) {
    const { fnArray, argsArray } = await (await pdf.getPage(number)).getOperatorList();
    strikes += fnArray.filter((what, i) => what === OPS.setLineWidth && (argsArray[i] as number[])[0] === lines.strike.width).length;
  }
  await loading.destroy();
  return strikes;
}

async function readPage(page: PdfPage): Promise<FoundPage> {
  const { items } = await page.getTextContent();
  const [, , width = 0, height = 0] = page.view;
  const found = items.flatMap((item): FoundText[] =>
    'str' in item && item.str.trim()
      ? [{ text: item.str, x: Number(item.transform[4]), y: Number(item.transform[5]), width: item.width }]
      : [],
  );
  const text = items.map((item) => ('str' in item ? item.str + (item.hasEOL ? '\n' : '') : '')).join('');
  return { width, height, items: found, text: text.replace(/\s+/g, ' ') };
}

type Tagged = { role: string; alt?: string; children?: unknown[] };

function flattened(node: unknown): Tagged[] {
  if (!node || typeof node !== 'object' || !('role' in node)) return [];
  const tagged = node as Tagged;
  return [tagged, ...(tagged.children ?? []).flatMap(flattened)];
}
