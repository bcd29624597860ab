import type { LedgerHead, SheetData } from '../sheet-data';
import type { Area } from './area';
import type { PageTotal } from './page-total';
import type { Pen } from './pen';
import type { WallClock } from './wall-clock';

/** What the sheet is called, and which lot or period it is about. */
export type Title = { name: string; about: string };

const caution = 'A record of what was measured and judged; it does not validate a process. ' +
  'The plan, local codes and the inspector decide.';

/** What stands around the entries on every page: who keeps the record, which page, printed when, ledger head, caution. */
export class Furniture {
  constructor(
    private readonly pen: Pen,
    private readonly area: Area,
    private readonly clock: WallClock,
    private readonly total: PageTotal,
    private readonly data: SheetData,
    private readonly title: Title,
  ) {}

  draw(page: number): void {
    this.drawHead();
    this.drawFoot(page);
    const { margin, top, bottom } = this.area;
    this.pen.rule(margin, top - 14, margin, bottom + 10, 'margin');
  }

  private drawHead(): void {
    const { left, right, top } = this.area;
    const { name, number, address } = this.data.establishment;
    const half = (right - left) * 0.6;
    const rest = right - left - half - 16;
    this.pen.write(name, left, top - 33, 'smallStrong', { within: half });
    this.pen.write(this.title.name, right, top - 33, 'smallStrong', { align: 'right', within: rest });
    this.pen.write(number ? `Est. ${number} · ${address}` : address, left, top - 22, 'label', { within: half });
    this.pen.write(this.title.about, right, top - 22, 'label', { align: 'right', within: rest });
    this.pen.rule(left, top - 14, right, top - 14, 'firm');
  }

  private drawFoot(page: number): void {
    const { left, right, body, bottom } = this.area;
    const { printed, ledgerHead } = this.data;
    const place = `Page ${page}`;
    this.pen.rule(left, bottom + 10, right, bottom + 10, 'firm');
    this.pen.write(place, left, bottom + 21, 'label');
    this.total.place(left + this.pen.width(place, 'label'), bottom + 21);

    const ledger = headInShort(ledgerHead);
    const room = right - body - this.pen.width(ledger, 'label') - 14;
    this.pen.write(`Printed ${this.clock.withZone(printed.at)} by ${printed.by}`, body, bottom + 21, 'label', { within: room });
    this.pen.write(ledger, right, bottom + 21, 'label', { align: 'right' });
    this.pen.write(`Printed copy of electronic records. Times are in ${this.clock.timeZone}.`, body, bottom + 31, 'label');
    this.pen.write(caution, body, bottom + 41, 'caution');
  }
}

function headInShort(head: LedgerHead | undefined): string {
  return head ? `Ledger head ${head.sequence} · ${inGroups(head.hash.slice(0, 16))}` : 'Ledger without entries';
}

/** A hash as a person compares it: in fours. */
export function inGroups(hash: string): string {
  return (hash.match(/.{1,4}/g) ?? []).join(' ');
}
