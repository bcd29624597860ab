import { setImmediate as turnOfOthers } from 'node:timers/promises';

/** Lets a document be drawn no faster than it is read, so that the longest one needs the memory of a few pages. */
export class Pace {
  private goOn: () => void = () => undefined;

  constructor(private readonly document: PDFKit.PDFDocument) {
    document._read = () => this.goOn();
    document.once('close', () => this.goOn());
  }

  /** To be awaited after each page; false when the reader has gone away and drawing on would be in vain. */
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
