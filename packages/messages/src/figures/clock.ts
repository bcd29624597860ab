import { localeOf, type Voice } from '../voice';
import { isChangedAround, minutesAhead, zoneName } from './zone';

const minute = 60_000;
const minutesADay = 24 * 60;

const clocks = new Map<string, Clock>();

export function clockFor(voice: Voice): Clock {
  const key = `${voice.language} ${voice.timeStyle} ${voice.timeZone}`;
  const clock = clocks.get(key) ?? new Clock(voice);
  clocks.set(key, clock);
  return clock;
}

/** Instants are epoch ms. */
export class Clock {
  private readonly days: Intl.DateTimeFormat;
  private readonly labels: Intl.DateTimeFormat;
  private readonly shortDays: Intl.DateTimeFormat;
  private readonly weekDays: Intl.DateTimeFormat;
  private readonly times: Intl.DateTimeFormat;

  /** @throws RangeError when the time zone is not an IANA name. */
  constructor(private readonly voice: Voice) {
    const { timeZone, timeStyle } = voice;
    const locale = localeOf(voice);
    const date = { year: 'numeric', month: 'short', day: 'numeric' } as const;
    const time =
      timeStyle === 'US'
        ? ({ hourCycle: 'h12', hour: 'numeric', minute: '2-digit' } as const)
        : ({ hourCycle: 'h23', hour: '2-digit', minute: '2-digit' } as const);
    this.days = new Intl.DateTimeFormat(locale, { ...date, timeZone });
    this.labels = new Intl.DateTimeFormat(locale, { ...date, timeZone: 'UTC' });
    this.shortDays = new Intl.DateTimeFormat(locale, { month: 'short', day: 'numeric', timeZone });
    this.weekDays = new Intl.DateTimeFormat(locale, { ...date, weekday: 'short', timeZone });
    this.times = new Intl.DateTimeFormat(locale, { ...time, timeZone });
  }

  /** "Nov 29, 2026" or "29 Nov 2026". */
  day(at: number): string {
    return this.days.format(at);
  }

  /** "Sun, Nov 29, 2026". */
  weekDay(at: number): string {
    return this.weekDays.format(at);
  }

  /** "Nov 29", where the year is clear: on the axis of a curve. */
  shortDay(at: number): string {
    return this.shortDays.format(at);
  }

  /** A calendar day ("2026-11-29") has no zone. */
  calendarDay(day: string): string {
    return this.labels.format(Date.parse(`${day}T00:00Z`));
  }

  /** "2:05 pm" or "14:05", with the zone near a change of the clocks, because an hour may come twice. */
  time(at: number): string {
    return isChangedAround(at, this.voice.timeZone) ? this.timeWithZone(at) : this.bare(at);
  }

  timeWithZone(at: number): string {
    return `${this.bare(at)} ${zoneName(at, this.voice.timeZone)}`;
  }

  dayAndTime(at: number): string {
    return `${this.day(at)}, ${this.time(at)}`;
  }

  /** "Nov 29, 2026, 2:05 pm CST": papers name their clock. */
  dayAndTimeWithZone(at: number): string {
    return `${this.day(at)}, ${this.timeWithZone(at)}`;
  }

  /** Since midnight. */
  minuteOfDay(at: number): number {
    const wall = Math.floor(at / minute) + minutesAhead(at, this.voice.timeZone);
    return ((wall % minutesADay) + minutesADay) % minutesADay;
  }

  /** Names the day unless it is today: a bare "by 12:14 am" would mean tonight. */
  when(at: number, now: number): string {
    return this.day(at) === this.day(now) ? this.time(at) : this.dayAndTime(at);
  }

  /** "PM" becomes "pm", and the space before it an ordinary one. */
  private bare(at: number): string {
    return this.times
      .format(at)
      .replace(/\s/g, ' ')
      .replace(/[AP]M$/, (period) => period.toLowerCase());
  }
}
