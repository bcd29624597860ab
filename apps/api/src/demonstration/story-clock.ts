import { Clock } from '../platform/clock';

/** The whole server shares the story's moment. */
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
