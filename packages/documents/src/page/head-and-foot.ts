import type { LedgerHead, SheetData } from '../sheet-data';
import type { Area } from './area';
import type { PageLabels } from './page-labels';
import type { Pen } from './pen';
import type { Telling } from './telling';

/** `about` is the lot or the period. */
export type Title = { name: string; about: string };

export class HeadAndFoot {
  constructor(
    private readonly pen: Pen,
    private readonly area: Area,
    private readonly telling: Telling,
    private readonly labels: PageLabels,
    private readonly data: SheetData,
    private readonly title: Title,
  ) {}

  draw(): void {
    this.drawHead();
    this.drawFoot();
    this.labels.leaveOpen();
    const { margin, top, bottom } = this.area;
    this.pen.rule(margin, top - 14, margin, bottom + 10, 'margin');
  }

  /** Writes the number of pages, known only at the end. */
  complete(): void {
    const { say } = this.telling;
    this.labels.write(this.area.left, this.area.bottom + 21, (page, pages) => say('page-of', { page: String(page), pages: String(pages) }));
  }

  private drawHead(): void {
    const { left, right, top } = this.area;
    const { name, number, address } = this.data.establishment;
    const half = (right - left) * 0.6;
    const rest = right - left - half - 16;
    this.pen.write(name, left, top - 33, 'smallStrong', { within: half });
    this.pen.write(this.title.name, right, top - 33, 'smallStrong', { align: 'right', within: rest });
    const where = number ? this.telling.say('est-and-address', { number, address }) : address;
    this.pen.write(where, left, top - 22, 'label', { within: half });
    this.pen.write(this.title.about, right, top - 22, 'label', { align: 'right', within: rest });
    this.pen.rule(left, top - 14, right, top - 14, 'firm');
  }

  private drawFoot(): void {
    const { left, right, body, bottom } = this.area;
    const { printed, ledgerHead } = this.data;
    const { say, clock } = this.telling;
    this.pen.rule(left, bottom + 10, right, bottom + 10, 'firm');
    const ledger = headInShort(ledgerHead, say);
    const room = right - body - this.pen.width(ledger, 'label') - 14;
    this.pen.write(say('printed-by', { at: clock.dayAndTimeWithZone(printed.at), who: printed.by }), body, bottom + 21, 'label', {
      within: room,
    });
    this.pen.write(ledger, right, bottom + 21, 'label', { align: 'right' });
    this.pen.write(say('printed-copy', { timeZone: this.data.establishment.timeZone }), body, bottom + 31, 'label');
    this.pen.write(say('record-caution'), body, bottom + 41, 'caution');
  }
}

function headInShort(head: LedgerHead | undefined, say: Telling['say']): string {
  if (!head) return say('ledger-empty');
  return say('ledger-head', { sequence: String(head.sequence), hash: inGroups(head.hash.slice(0, 16)) });
}

/** A person compares a hash in groups of four. */
export function inGroups(hash: string): string {
  return (hash.match(/.{1,4}/g) ?? []).join(' ');
}
