import type { Area } from './area';
import { gap, stack, type Block } from './block';
import type { HeadAndFoot } from './head-and-foot';
import type { Pen } from './pen';
import type { Telling } from './telling';

export type SheetParts = Telling & { pen: Pen; area: Area; headAndFoot: HeadAndFoot };

export class Sheet {
  readonly pen: Pen;
  readonly area: Area;
  readonly clock: Telling['clock'];
  readonly say: Telling['say'];
  /** Written again at the top of each page of a list. */
  repeated: () => Block[] = () => [];
  pages = 0;
  /** The paper explains each mark of a figure once. */
  readonly explained = new Set<string>();

  private y = 0;
  private isFresh = false;
  private held: Block[] = [];

  constructor(private readonly parts: SheetParts) {
    ({ pen: this.pen, area: this.area, clock: this.clock, say: this.say } = parts);
    this.turn();
  }

  /** A heading stays on the page of what it heads. */
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

  /** A figure stands with its verdict, unless that leaves more than a third of a page blank. */
  reserve(height: number): void {
    const page = this.area.bottom - this.area.top;
    if (!this.isFresh && height > this.room && height <= page && this.room <= page / 3) this.turn();
  }

  hasRoom(height: number): boolean {
    return height <= this.room;
  }

  /** Left out at the top of a page. */
  space(height: number): void {
    this.hold(gap(height));
  }

  /** Keeps blocks on one page unless they are higher than half a page. */
  putTogether(blocks: Block[]): void {
    const together = stack(blocks);
    if (together.height <= (this.area.bottom - this.area.top) / 2) return this.put(together);
    this.hold(...blocks.slice(0, 2));
    this.put(...blocks.slice(2));
  }

  end(): void {
    if (this.held.length) this.put(gap(0));
    this.parts.headAndFoot.complete();
    this.pen.document.end();
  }

  private get room(): number {
    return this.area.bottom - this.y;
  }

  /** A block higher than a page begins here if a fifth of the page is left. */
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
