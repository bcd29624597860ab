/** ISO 32000-1, 14.8.4 names these roles. */
export type Role = 'H1' | 'H2' | 'H3' | 'P' | 'TH' | 'TD' | 'Figure';
type Group = 'Table' | 'TR';
type About = { alt?: string; bbox?: [left: number, top: number, right: number, bottom: number] };
type Element = ReturnType<PDFKit.PDFDocument['struct']>;

/**
 * A reader that speaks finds headings, tables and the text of a figure. A log drawn while it is read has no tags, which
 * would wait in memory.
 */
export class Tags {
  private readonly parents: Element[] = [];
  private isWithin = false;

  constructor(
    private readonly document: PDFKit.PDFDocument,
    private readonly isOn: boolean,
  ) {
    if (!isOn) return;
    const whole = document.struct('Document');
    document.addStructure(whole);
    this.parents.push(whole);
  }

  element(role: Role, draw: () => void, about: About = {}): void {
    if (!this.isOn || this.isWithin) return draw();
    const element = this.begin(role, about);
    const content = this.document.markStructureContent(role);
    this.within(draw);
    element.add(content);
    element.end();
  }

  /** Lines, running heads and repetitions say nothing of their own. */
  artifact(draw: () => void): void {
    if (!this.isOn || this.isWithin) return draw();
    this.document.markContent('Artifact', { type: 'Layout' });
    this.within(draw);
  }

  group(role: Group, draw: () => void): void {
    if (!this.isOn || this.isWithin) return draw();
    this.open(role);
    draw();
    this.close();
  }

  /** The group may go on over pages until it is closed. */
  open(role: Group): void {
    if (this.isOn) this.parents.push(this.begin(role));
  }
  close(): void {
    if (this.isOn) this.parents.pop()?.end();
  }

  private begin(role: Role | Group, about: About = {}): Element {
    const element = this.document.struct(role, about);
    this.parents.at(-1)?.add(element);
    return element;
  }

  private within(draw: () => void): void {
    this.isWithin = true;
    draw();
    this.isWithin = false;
    this.document.endMarkedContent();
  }
}
