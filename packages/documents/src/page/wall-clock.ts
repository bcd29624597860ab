import { isChangedAround, localeOf, zoneName, type Language } from '@larderbook/messages';
import type { EstablishmentData, Instant, Paper } from '../sheet-data';

type TimeStyle = NonNullable<EstablishmentData['timeStyle']>;
type Parts = Partial<Record<Intl.DateTimeFormatPartTypes, string>>;

/** The clock on the shop's wall: instants as they read in the establishment's own time zone. */
export class WallClock {
  private readonly format: Intl.DateTimeFormat;
  private latest: { at: Instant; parts: Parts } | undefined;

  /** @throws RangeError when the time zone is not an IANA name. */
  constructor(
    readonly timeZone: string,
    readonly style: TimeStyle,
    readonly language: Language = 'en',
  ) {
    this.format = new Intl.DateTimeFormat(language === 'en' ? 'en-US' : localeOf({ language, timeStyle: style }), {
      timeZone,
      hourCycle: style === 'US' ? 'h12' : 'h23',
      timeZoneName: 'short',
      year: 'numeric',
      month: 'short',
      day: 'numeric',
      hour: 'numeric',
      minute: '2-digit',
    });
  }

  static of({ timeZone, timeStyle }: EstablishmentData, paper: Paper, language?: Language): WallClock {
    return new WallClock(timeZone, timeStyle ?? (paper === 'Letter' ? 'US' : 'international'), language);
  }

  /** "Sep 4, 2025" or "4 Sep 2025"; in Spanish the day comes first everywhere. */
  day(at: Instant): string {
    const { day: d, month, year } = this.parts(at);
    return this.style === 'US' && this.language === 'en' ? `${month} ${d}, ${year}` : `${d} ${month} ${year}`;
  }

  /** "2:05 pm" or "14:05"; on a day on which clocks are changed with its zone, since an hour may come twice. */
  time(at: Instant): string {
    const parts = this.parts(at);
    return isChangedAround(at, this.timeZone) ? `${this.bare(parts)} ${this.zone(at, parts)}` : this.bare(parts);
  }

  dayAndTime(at: Instant): string {
    return `${this.day(at)}, ${this.time(at)}`;
  }

  withZone(at: Instant): string {
    const parts = this.parts(at);
    return `${this.day(at)}, ${this.bare(parts)} ${this.zone(at, parts)}`;
  }

  /** Whether two instants fall on one calendar day here. */
  sameDay(one: Instant, other: Instant): boolean {
    return this.day(one) === this.day(other);
  }

  /** Minutes since midnight, for the ticks of a time axis. */
  minuteOfDay(at: Instant): number {
    const { hour: h, minute: m, dayPeriod } = this.parts(at);
    const hours = this.style === 'US' ? (Number(h) % 12) + (/^p/i.test(dayPeriod ?? '') ? 12 : 0) : Number(h);
    return hours * 60 + Number(m);
  }

  /** Spanish knows few zones by a short name of their own; people there use the English one. */
  private zone(at: Instant, { timeZoneName }: Parts): string {
    return this.language === 'en' ? (timeZoneName ?? '') : zoneName(at, this.timeZone);
  }

  private bare({ hour: h, minute: m, dayPeriod }: Parts): string {
    return this.style === 'US' ? `${h}:${m} ${dayPeriod?.replace(/\s/g, ' ').toLowerCase()}` : `${h?.padStart(2, '0')}:${m}`;
  }

  private parts(at: Instant): Parts {
    if (this.latest?.at !== at) {
      const parts = Object.fromEntries(this.format.formatToParts(at).map(({ type, value }) => [type, value]));
      this.latest = { at, parts };
    }
    return this.latest?.parts ?? {};
  }
}
