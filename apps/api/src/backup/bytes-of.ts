const newline = 10;
const longestLine = 1_048_576;

/** Bytes that come in pieces of any size, read by number or by line. */
export class BytesOf {
  private readonly pieces: AsyncIterator<Buffer>;
  private held: Buffer[] = [];
  private size = 0;
  private ended = false;

  constructor(source: AsyncIterable<Buffer>) {
    this.pieces = source[Symbol.asyncIterator]();
  }

  /** Fewer at the end alone. */
  async upTo(count: number): Promise<Buffer> {
    while (this.size < count && (await this.more()));
    return this.take(Math.min(count, this.size));
  }

  /** The next bytes, which are read again. */
  async peek(count: number): Promise<Buffer> {
    while (this.size < count && (await this.more()));
    return this.all().subarray(0, count);
  }

  async *rest(): AsyncGenerator<Buffer> {
    do {
      if (this.size > 0) yield this.take(this.size);
    } while (await this.more());
  }

  async isAtEnd(): Promise<boolean> {
    while (this.size === 0 && (await this.more()));
    return this.size === 0;
  }

  /** With its line feed, which is missing at the end and where a line is longer than any of a backup. */
  async line(): Promise<Buffer> {
    for (let searched = 0; ; ) {
      const all = this.all();
      const at = all.indexOf(newline, searched);
      if (at !== -1) return this.take(at + 1);
      searched = all.length;
      if (searched > longestLine || !(await this.more())) return this.take(this.size);
    }
  }

  /** Whole lines, as many as there are, up to a line that reads `end`, which is taken too. False when it never comes. */
  async *linesUntil(end: Buffer): AsyncGenerator<Buffer, boolean> {
    const within = Buffer.concat([Buffer.of(newline), end]);
    for (;;) {
      const all = this.all();
      const found = all.subarray(0, end.length).equals(end) ? 0 : all.indexOf(within) + 1 || undefined;
      const whole = found ?? all.lastIndexOf(newline) + 1;
      if (whole > 0) yield this.take(whole);
      if (found !== undefined) return this.take(end.length).length > 0;
      if (!(await this.more())) return false;
    }
  }

  private async more(): Promise<boolean> {
    if (this.ended) return false;
    const { value, done } = await this.pieces.next();
    this.ended = done === true;
    if (done) return false;
    this.held.push(value);
    this.size += value.length;
    return true;
  }

  private all(): Buffer {
    const all = this.held.length === 1 && this.held[0] ? this.held[0] : Buffer.concat(this.held);
    this.held = [all];
    return all;
  }

  private take(count: number): Buffer {
    const all = this.all();
    this.held = [all.subarray(count)];
    this.size -= count;
    return all.subarray(0, count);
  }
}
