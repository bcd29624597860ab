export type Announcement = {
  words: string;
  /** For screen readers only. */
  unseen: boolean;
  /** Of announcements about the same only the newest is worth hearing: it replaces an earlier one. */
  about?: string;
  number: number;
};

/** Screen readers take up a change within this time; words replaced sooner may stay unread. Our choice, no source. */
const takenUpMs = 1000;
/** The time the last one stays. */
const shownMs = 6000;

/** Each announcement is there long enough to be taken up by a screen reader. */
export class AnnouncementQueue {
  /** The first is being said, the others wait. */
  private said: readonly Announcement[] = [];
  private isTakenUp = false;
  private timer: ReturnType<typeof setTimeout> | undefined;
  private last = 0;

  constructor(private readonly changed: () => void) {}

  get now(): Announcement | undefined {
    return this.said[0];
  }

  add(words: string, unseen: boolean, about?: string): void {
    const isSame = (other: Announcement) => about !== undefined && other.about === about;
    const others = this.said.filter((other) => !isSame(other));
    const isNext = !this.now || this.isTakenUp || isSame(this.now);
    const added = { words, unseen, about, number: (this.last += 1) };
    if (isNext) this.begin([added, ...others.filter((other) => other !== this.now)]);
    else this.said = [...others, added];
  }

  /** Hides the slips and goes on reading them out. */
  hush(): void {
    this.said = this.said.map((each) => ({ ...each, unseen: true }));
    this.changed();
  }

  private begin(said: readonly Announcement[]): void {
    clearTimeout(this.timer);
    this.said = said;
    this.isTakenUp = false;
    if (said.length > 0) this.timer = setTimeout(() => this.goOn(), takenUpMs);
    this.changed();
  }

  private goOn(): void {
    const [, ...waiting] = this.said;
    if (waiting.length > 0) return this.begin(waiting);
    this.isTakenUp = true;
    this.timer = setTimeout(() => this.begin([]), shownMs - takenUpMs);
  }
}
