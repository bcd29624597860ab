import { inks, type Style } from './theme';
import type { Face, FaceName, Typefaces } from './typefaces';

/** `glyphs` is the operand of TJ; `width` is in thousandths of the type size. */
type Word = { glyphs: string; width: number };

/** A single figure, or a word up to its space. */
const wordByWord = /\d|[^\d ]+ ?| /g;

/** This bound keeps a year of rows in the memory of a page. */
const mostKept = 20_000;

/**
 * pdfkit's own text takes twice the time and the file, which tells on a log of a thousand pages. Figures are of one
 * width and must not be kerned, so they are set one by one.
 */
export class Lettering {
  private readonly kept = new Map<string, Word | undefined>();

  constructor(
    private readonly document: PDFKit.PDFDocument,
    private readonly typefaces: Typefaces,
  ) {}

  /** In points. */
  width(text: string, { face: name, size }: Style): number {
    const words = this.words(text, name);
    if (!words) return this.typefaces.get(name).widthOfString(text, size);
    return (words.reduce((sum, { width }) => sum + width, 0) * size) / 1000;
  }

  show(text: string, x: number, baseline: number, style: Style): void {
    const { face: name, size, ink } = style;
    const words = this.words(text, name);
    if (!words) return this.showWithMarks(text, x, baseline, style);
    const face = this.typefaces.get(name);
    this.document.page.fonts[face.id] ??= face.ref();
    // the page is upside down, so that y grows downwards; letters are turned back
    const place = `1 0 0 -1 ${x.toFixed(2)} ${baseline.toFixed(2)} Tm`;
    const glyphs = words.map((word) => word.glyphs).join('');
    this.document.addContent(`BT ${inRgb(inks[ink])} rg /${face.id} ${size} Tf ${place} [<${glyphs}>] TJ ET`);
  }

  /** pdfkit sets text with combining marks. */
  private showWithMarks(text: string, x: number, baseline: number, { face, size, ink }: Style): void {
    this.typefaces.use(face);
    this.document.fontSize(size).fillColor(inks[ink]);
    this.document.text(text, x, baseline, { lineBreak: false, baseline: 'alphabetic' });
  }

  private words(text: string, name: FaceName): Word[] | undefined {
    const words: Word[] = [];
    for (const each of text.match(wordByWord) ?? []) {
      const word = this.word(each, name);
      if (!word) return undefined;
      words.push(word);
    }
    return words;
  }

  private word(text: string, name: FaceName): Word | undefined {
    const key = name + text;
    if (!this.kept.has(key)) {
      if (this.kept.size >= mostKept) this.kept.clear();
      this.kept.set(key, laid(text, this.typefaces.get(name)));
    }
    return this.kept.get(key);
  }
}

/** Corrections of the advance stand between glyphs; undefined when a glyph is displaced. */
function laid(text: string, face: Face): Word | undefined {
  const [glyphs, positions] = face.encode(text);
  if (positions.some(({ xOffset, yOffset }) => xOffset || yOffset)) return undefined;
  const parts = glyphs.map((glyph, index) => {
    const { xAdvance = 0, advanceWidth = 0 } = positions[index] ?? {};
    const correction = advanceWidth - xAdvance;
    return correction ? `${glyph}> ${correction.toFixed(1)} <` : glyph;
  });
  return { glyphs: parts.join(''), width: positions.reduce((sum, { xAdvance }) => sum + xAdvance, 0) };
}

/** PDF counts each colour from 0 to 1. */
export function inRgb(hex: string): string {
  return [1, 3, 5].map((at) => (parseInt(hex.slice(at, at + 2), 16) / 255).toFixed(3)).join(' ');
}
