import { setImmediate as turnOfOthers } from 'node:timers/promises';

/** Draws no faster than it is read, so the longest log needs the memory of a few pages. */
export class Pace {
  private goOn: () => void = () => undefined;

  constructor(private readonly document: PDFKit.PDFDocument) {
    document._read = () => this.goOn();
    document.once('close', () => this.goOn());
  }

  /** Awaited after each page; false when the reader has gone away. */
  async keep(): Promise<boolean> {
    await turnOfOthers();
    const { document } = this;
    if (!document.destroyed && document.readableLength >= document.readableHighWaterMark) {
      await new Promise<void>((resolve) => {
        this.goOn = resolve;
      });
    }
    return !document.destroyed;
  }
}
