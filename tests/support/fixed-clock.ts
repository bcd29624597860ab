import { AsyncLocalStorage } from 'node:async_hooks';
import { Clock } from '../../apps/api/src/platform/clock';

/** A clock that stands still until it is moved. */
export class FixedClock extends Clock {
  private readonly away = new AsyncLocalStorage<Date>();

  constructor(private moment: Date) {
    super();
  }

  override now(): Date {
    return new Date(this.away.getStore() ?? this.moment);
  }

  override at<T>(moment: Date, work: () => Promise<T>): Promise<T> {
    return this.away.run(moment, work);
  }

  moveTo(moment: Date): void {
    this.moment = moment;
  }

  moveOn(milliseconds: number): void {
    this.moment = new Date(this.moment.getTime() + milliseconds);
  }
}
