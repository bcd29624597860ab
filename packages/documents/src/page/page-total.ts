import { inRgb } from './lettering';
import { inks, styles } from './theme';
import type { Typefaces } from './typefaces';

const style = styles.label;

/**
 * "of 12" on every page, written once at the end. Each page refers to one form inside the file whose content is settled
 * when the last page is known, so pages can be sent away as they are drawn: no second pass over the records, no
 * document held in memory, and still every page says how many there are.
 */
export class PageTotal {
  private readonly form: PDFKit.PDFKitReference;

  constructor(private readonly document: PDFKit.PDFDocument, private readonly typefaces: Typefaces) {
    const face = typefaces.get(style.face);
    this.form = document.ref({
      Type: 'XObject', Subtype: 'Form', BBox: [0, -4, 80, 12],
      Resources: { Font: { [face.id]: face.ref() } },
    });
  }

  place(x: number, baseline: number): void {
    this.document.page.xobjects.PageTotal = this.form;
    this.document.addContent(`q 1 0 0 -1 ${x.toFixed(2)} ${baseline.toFixed(2)} cm /PageTotal Do Q`);
  }

  /** To be called once, before the document ends: without it the file never closes. */
  settle(pages: number): void {
    const face = this.typefaces.get(style.face);
    const [glyphs] = face.encode(` of ${pages}`);
    this.form.end(`${inRgb(inks[style.ink])} rg BT /${face.id} ${style.size} Tf <${glyphs.join('')}> Tj ET`);
  }
}
