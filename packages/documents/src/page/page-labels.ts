import { inRgb } from './lettering';
import { inks, styles } from './theme';
import type { Typefaces } from './typefaces';

const style = styles.label;

/**
 * "Page 2 of 12" needs the 12 before the last row is read, so each page leaves a content stream open for its label.
 * Pages are sent as they are drawn, and only a few hundred bytes each stay in memory.
 */
export class PageLabels {
  private readonly open: PDFKit.PDFKitReference[] = [];

  constructor(
    private readonly document: PDFKit.PDFDocument,
    private readonly typefaces: Typefaces,
  ) {}

  leaveOpen(): void {
    const { page } = this.document;
    const face = this.typefaces.get(style.face);
    const label = this.document.ref({});
    page.fonts[face.id] ??= face.ref();
    Object.assign(page.dictionary.data, { Contents: [page.content, label] });
    this.open.push(label);
  }

  /** Called once, before the document ends: without it the file never closes. */
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
