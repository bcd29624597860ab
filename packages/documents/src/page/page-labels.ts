import { inRgb } from './lettering';
import { inks, styles } from './theme';
import type { Typefaces } from './typefaces';

const style = styles.label;

/**
 * "Page 2 of 12" on every page, although nobody knows the 12 before the last row was read. The label of each page is a
 * second stream of content that is left open and written at the very end. So pages are sent away as they are drawn,
 * the records are read once, and what stays in memory is a few hundred bytes a page.
 */
export class PageLabels {
  private readonly open: PDFKit.PDFKitReference[] = [];

  constructor(
    private readonly document: PDFKit.PDFDocument,
    private readonly typefaces: Typefaces,
  ) {}

  /** Leaves the label of the current page open. */
  leaveOpen(): void {
    const { page } = this.document;
    const face = this.typefaces.get(style.face);
    const label = this.document.ref({});
    page.fonts[face.id] ??= face.ref();
    Object.assign(page.dictionary.data, { Contents: [page.content, label] });
    this.open.push(label);
  }

  /** To be called once, before the document ends: without it the file never closes. */
  write(x: number, baseline: number, label: (page: number, pages: number) => string): void {
    const face = this.typefaces.get(style.face);
    const place = `1 0 0 -1 ${x.toFixed(2)} ${baseline.toFixed(2)} Tm`;
    for (const [index, open] of this.open.entries()) {
      const [glyphs] = face.encode(label(index + 1, this.open.length));
      const text = `BT ${inRgb(inks[style.ink])} rg /${face.id} ${style.size} Tf ${place} <${glyphs.join('')}> Tj ET`;
      open.end(`/Artifact BMC ${text} EMC`);
    }
  }
}
