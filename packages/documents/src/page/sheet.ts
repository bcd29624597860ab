import type { Area } from './area';
import { gap, stack, type Block } from './block';
import type { HeadAndFoot } from './head-and-foot';
import type { Pen } from './pen';
import type { Telling } from './telling';

/** What a sheet is made with. */
export type SheetParts = Telling & { pen: Pen; area: Area; headAndFoot: HeadAndFoot };

/** A ruled sheet that is filled from the top down and turned over when it is full. */
export class Sheet {
  readonly pen: Pen;
  readonly area: Area;
  readonly clock: Telling['clock'];
  readonly say: Telling['say'];
  /** What is written again at the top of the next page while a list goes on: its column heads, the day. */
  repeated: () => Block[] = () => [];
  pages = 0;
  /** Marks of figures that were explained on this paper: once is enough. */
  readonly explained = new Set<string>();

  private y = 0;
  private isFresh = false;
  private held: Block[] = [];

  constructor(private readonly parts: SheetParts) {
    ({ pen: this.pen, area: this.area, clock: this.clock, say: this.say } = parts);
    this.turn();
  }

  /** To be drawn on the same page as whatever is put next: a heading stays with what it heads. */
  hold(...blocks: Block[]): void {
    this.held.push(...blocks);
  }

  put(...blocks: Block[]): void {
    for (const block of blocks) {
      const group = [...this.held, block];
      this.held = [];
      const height = group.reduce((sum, each) => sum + each.height, 0);
      if (height > this.room && !this.isFresh && !this.mustRunOver(height)) this.turn();
      for (const each of group) if (!(each.isGap && this.isFresh)) this.set(each);
    }
  }

  /**
   * Begins a page when less room than this is left, and a page has it: a figure stands with its verdict. Not where that
   * would leave more than a third of a page blank.
   */
  reserve(height: number): void {
    const page = this.area.bottom - this.area.top;
    if (!this.isFresh && height > this.room && height <= page && this.room <= page / 3) this.turn();
  }

  /** Whether so much can still be put on this page. */
  hasRoom(height: number): boolean {
    return height <= this.room;
  }

  /** Blank space before what is put next; none at the top of a page. */
  space(height: number): void {
    this.hold(gap(height));
  }

  /** Keeps blocks on one page while that leaves no more than half a page blank; longer ones run on over the page. */
  putTogether(blocks: Block[]): void {
    const together = stack(blocks);
    if (together.height <= (this.area.bottom - this.area.top) / 2) return this.put(together);
    this.hold(...blocks.slice(0, 2));
    this.put(...blocks.slice(2));
  }

  /** Closes the file. */
  end(): void {
    if (this.held.length) this.put(gap(0));
    this.parts.headAndFoot.complete();
    this.pen.document.end();
  }

  private get room(): number {
    return this.area.bottom - this.y;
  }

  /** What fits no page at all begins here, if there is room to speak of. */
  private mustRunOver(height: number): boolean {
    const page = this.area.bottom - this.area.top;
    return height > page && this.room > page / 5;
  }

  private set(block: Block): void {
    if (block.height <= this.room) return this.draw(block);
    const parts = block.split?.(this.room);
    if (parts) this.draw(parts[0]);
    else if (this.isFresh) return this.draw(block);
    this.turn();
    this.set(parts ? parts[1] : block);
  }

  private draw(block: Block): void {
    block.draw(this.y);
    this.y += block.height;
    this.isFresh = false;
  }

  private turn(): void {
    this.pen.document.addPage();
    this.pages += 1;
    this.pen.tags.artifact(() => this.parts.headAndFoot.draw());
    this.y = this.area.top;
    for (const block of this.repeated()) this.pen.tags.artifact(() => this.draw(block));
    this.isFresh = true;
  }
}
