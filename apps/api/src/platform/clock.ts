import { AsyncLocalStorage } from 'node:async_hooks';
import { Injectable } from '@nestjs/common';

/** Rules never ask for the time; operations take it from here. */
@Injectable()
export class Clock {
  private readonly elsewhere = new AsyncLocalStorage<Date>();

  /** The ledger also writes milliseconds. */
  now(): Date {
    return new Date(this.elsewhere.getStore() ?? Date.now());
  }

  /** Only the demonstration shop works in another time. */
  at<T>(moment: Date, work: () => Promise<T>): Promise<T> {
    return this.elsewhere.run(moment, work);
  }
}
