import { createRequire } from 'node:module';
import PDFDocument from 'pdfkit';
import { laidOnce } from './laid-words';

/**
 * Source Sans 3 and Source Serif 4 (SIL Open Font License 1.1). Figures of Source Sans are of one width, so columns
 * align, and it has every sign of a limit: a typeface without "≥" would print a false record.
 */
const files = {
  text: 'source-sans/TTF/SourceSans3-Regular.ttf',
  strong: 'source-sans/TTF/SourceSans3-Semibold.ttf',
  slanted: 'source-sans/TTF/SourceSans3-It.ttf',
  serif: 'source-serif/TTF/SourceSerif4-Regular.ttf',
  serifStrong: 'source-serif/TTF/SourceSerif4-Semibold.ttf',
  serifSlanted: 'source-serif/TTF/SourceSerif4-It.ttf',
  display: 'source-serif/TTF/SourceSerif4Display-Semibold.ttf',
} as const;
export type FaceName = keyof typeof files;
export const faceNames = Object.keys(files) as FaceName[];

/** In thousandths of the type size. */
export type GlyphPosition = { xAdvance: number; advanceWidth: number; xOffset: number; yOffset: number };

/** The types of pdfkit do not name this part. */
export type Face = {
  id: string;
  ref(): PDFKit.PDFKitReference;
  encode(text: string): [glyphs: string[], positions: GlyphPosition[]];
  /** Both in points. */
  widthOfString(text: string, size: number): number;
  font: {
    hasGlyphForCodePoint(codePoint: number): boolean;
    /** Positions are in units of the face. */
    layout(text: string): {
      glyphs: readonly { id: number; codePoints: readonly number[]; advanceWidth: number }[];
      positions: GlyphPosition[];
      advanceWidth: number;
    };
  };
};

const fromHere = createRequire(import.meta.url);
const faceOf = (document: PDFKit.PDFDocument): Face => (document as unknown as { _font: Face })._font;

/**
 * Parsing takes longer than drawing a lot record, so it is done once. Every document has an object of its own, so none
 * changes another.
 */
const parsed = new Map<FaceName, Face['font']>();

function parse(name: FaceName): Face['font'] {
  const known = parsed.get(name);
  if (known) return known;
  const { font } = faceOf(new PDFDocument({ autoFirstPage: false, font: '' }).font(fromHere.resolve(files[name])));
  const face: Face['font'] = Object.assign(Object.create(font), { layout: laidOnce(name, font) });
  parsed.set(name, face);
  return face;
}

/** Shares the tables, not the glyphs. */
const ownView = (name: FaceName): Face['font'] => Object.assign(Object.create(parse(name)), { _glyphs: {} });

/** A face is opened when its first word is set. */
export class Typefaces {
  private readonly opened = new Map<FaceName, Face>();
  private readonly signs = new Map<string, boolean>();

  constructor(private readonly document: PDFKit.PDFDocument) {}

  get(name: FaceName): Face {
    const known = this.opened.get(name);
    if (known) return known;
    this.document.font(ownView(name) as unknown as PDFKit.Mixins.PDFFontSource);
    const face = faceOf(this.document);
    this.opened.set(name, face);
    return face;
  }

  hasGlyph(name: FaceName, codePoint: number): boolean {
    const key = `${name} ${codePoint}`;
    const known = this.signs.get(key);
    if (known !== undefined) return known;
    const has = this.get(name).font.hasGlyphForCodePoint(codePoint);
    this.signs.set(key, has);
    return has;
  }

  /** pdfkit's own writing then uses the face. */
  use(name: FaceName): void {
    Object.assign(this.document, { _font: this.get(name) });
  }
}
