import { AsyncLocalStorage } from 'node:async_hooks';
import { Injectable } from '@nestjs/common';

/** The server's time. Rules never ask for it; operations take it from here. */
@Injectable()
export class Clock {
  private readonly elsewhere = new AsyncLocalStorage<Date>();

  /** Kept to the millisecond, as the ledger writes it. */
  now(): Date {
    return new Date(this.elsewhere.getStore() ?? Date.now());
  }

  /** Runs `work` as if it were `moment`; only the demonstration shop lives in another time. */
  at<T>(moment: Date, work: () => Promise<T>): Promise<T> {
    return this.elsewhere.run(moment, work);
  }
}
