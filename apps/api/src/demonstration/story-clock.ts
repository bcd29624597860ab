import { Clock } from '../platform/clock';

/** A clock for a program that has the whole server to itself: it stands where the story has got to. */
export class StoryClock extends Clock {
  private moment?: Date;

  override now(): Date {
    return this.moment ? new Date(this.moment) : super.now();
  }

  override at<T>(moment: Date, work: () => Promise<T>): Promise<T> {
    this.moment = moment;
    return work();
  }
}
