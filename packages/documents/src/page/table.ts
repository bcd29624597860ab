import type { Instant } from '../sheet-data';
import { bodyColumn, marginColumn } from './area';
import { gap, stack, type Block } from './block';
import { framed } from './frame';
import { row, type Cell } from './row';
import type { Sheet } from './sheet';
import { words, toTheRight, type Paragraph, type Span } from './words';

/** `width` is in points; `share` is of the rest. */
export type Column = { head: string; width?: number; share?: number; align?: 'left' | 'right' };

export type Entry = {
  at?: Instant;
  label?: string;
  /** Letters of what is odd, shown with a flag before the time. */
  flags?: string;
  cells: Paragraph[][];
  /** Notes and amendments, across the columns. */
  under?: Paragraph[];
  /** A missed limit puts the entry in a heavy frame. */
  missed?: Paragraph[];
};

/** Points between columns; more after figures that end at the right. */
const blank = { left: 10, right: 16 };

/** An entry lower than this, in points, does not stand alone under its heading. */
const small = 40;

/** The time stands in the margin, the day wherever it changes. */
export class Table {
  private readonly cells: { x: number; width: number }[];
  private day: string | undefined;
  private dayWritten: string | undefined;
  private readonly waiting: Entry[] = [];
  private count = 0;
  private isOver = false;
  private isOpen = false;

  constructor(
    private readonly sheet: Sheet,
    private readonly columns: Column[],
  ) {
    this.cells = placed(columns, sheet.area.body, sheet.area.right);
    const head = this.head();
    sheet.hold({ ...head, draw: (top) => this.begin(head, top) });
  }

  /** Draws two behind, so that neither the first nor the last entry stands alone on a page. */
  add(entry: Entry): void {
    this.waiting.push(entry);
    const [first, , third] = this.waiting;
    if (!first || !third) return;
    this.waiting.shift();
    this.draw(first, this.count === 0);
  }

  private begin(head: Block, top: number): void {
    if (this.isOver) return head.draw(top);
    this.sheet.pen.tags.open('Table');
    this.isOpen = true;
    head.draw(top);
    this.sheet.repeated = () => this.repeated();
  }

  end(): void {
    for (const [index, entry] of this.waiting.entries()) this.draw(entry, index < this.waiting.length - 1);
    this.isOver = true;
    if (this.isOpen) this.sheet.pen.tags.close();
    this.sheet.repeated = () => [];
  }

  private draw(entry: Entry, staysWithNext: boolean): void {
    this.count += 1;
    this.changeDay(entry.at);
    const block = this.block(entry);
    if (staysWithNext && block.height < small) this.sheet.hold(block);
    else this.sheet.put(block);
  }

  private changeDay(at: Instant | undefined): void {
    const day = at === undefined ? this.day : this.sheet.clock.day(at);
    if (day === undefined || day === this.day) return;
    this.day = day;
    this.sheet.hold(
      whenDrawn(this.dayLine(day), () => {
        this.dayWritten = day;
      }),
    );
  }

  /** The day is repeated unless a new one is about to be written. */
  private repeated(): Block[] {
    return [this.head(), ...(this.day !== undefined && this.day === this.dayWritten ? [this.dayLine(this.day)] : [])];
  }

  private block(entry: Entry): Block {
    const { pen, area } = this.sheet;
    const isPlain = !entry.under?.length && !entry.missed;
    const top = row(pen, [this.margin(entry), ...this.filled(entry.cells)], {
      above: 2.5,
      below: isPlain ? 2.5 : 0.5,
      role: 'TD',
      ...(isPlain ? { under: this.line() } : {}),
    });
    if (isPlain) return top;
    const below = row(pen, [{ ...bodyColumn(area), paragraphs: [...(entry.under ?? []), ...(entry.missed ?? [])] }], {
      above: 0,
      below: 3.5,
      role: 'TD',
      ...(entry.missed ? {} : { under: this.line() }),
    });
    return entry.missed ? stack([gap(5), ...framed(pen, area, [top, below]), gap(5)]) : stack([top, below]);
  }

  private margin({ at, label, flags }: Entry): Cell {
    const flag: Span[] = flags ? [{ mark: 'flag' }, { text: `${flags} `, style: 'smallStrong' }] : [];
    const time = at === undefined ? '' : this.sheet.clock.time(at);
    const said = label ? words('label', ...flag, label) : words('time', ...flag, time);
    return { ...marginColumn(this.sheet.area), paragraphs: [toTheRight(said)] };
  }

  private filled(cells: Paragraph[][]): Cell[] {
    return this.cells.map((place, index) => {
      const paragraphs = cells[index] ?? [];
      return { ...place, paragraphs: this.columns[index]?.align === 'right' ? paragraphs.map(toTheRight) : paragraphs };
    });
  }

  private head(): Block {
    const { pen, area } = this.sheet;
    const heads = this.columns.map(({ head }) => [words('columnHead', head)]);
    const under = { line: 'thin', from: area.left, to: area.right } as const;
    const margin = { ...marginColumn(area), paragraphs: [] };
    return row(pen, [margin, ...this.filled(heads)], { above: 2, below: 2, under, role: 'TH' });
  }

  private dayLine(day: string): Block {
    const { pen, area } = this.sheet;
    const cell = { ...marginColumn(area), paragraphs: [toTheRight(words('day', day))] };
    return row(pen, [cell], { above: 2, below: -1, role: 'TH' });
  }

  private line() {
    const { left, right } = this.sheet.area;
    return { line: 'hair' as const, from: left, to: right };
  }
}

function whenDrawn(block: Block, then: () => void): Block {
  return {
    ...block,
    draw: (top) => {
      block.draw(top);
      then();
    },
  };
}

function placed(columns: Column[], from: number, to: number): { x: number; width: number }[] {
  const blanks = columns.map(({ align = 'left' }, index) => (index === columns.length - 1 ? 0 : blank[align]));
  const fixed = columns.reduce((sum, { width = 0 }, index) => sum + width + (blanks[index] ?? 0), 0);
  const shares = columns.reduce((sum, { share = 0 }) => sum + share, 0);
  let x = from;
  return columns.map(({ width = 0, share = 0 }, index) => {
    const place = { x, width: width + (shares ? ((to - from - fixed) * share) / shares : 0) };
    x += place.width + (blanks[index] ?? 0);
    return place;
  });
}
