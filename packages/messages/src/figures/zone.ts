const minute = 60_000;
const hour = 60 * minute;
const day = 24 * hour;

const clocks = new Map<string, Intl.DateTimeFormat>();
const changes = new Map<string, boolean>();
const names = new Map<string, Intl.DateTimeFormat[]>();

/** By how many minutes the clocks of a zone are ahead of UTC at an instant (epoch ms). */
export function minutesAhead(at: number, timeZone: string): number {
  const clock = clocks.get(timeZone) ?? clockOf(timeZone);
  clocks.set(timeZone, clock);
  const figures = Object.fromEntries(clock.formatToParts(at).map(({ type, value }) => [type, Number(value)]));
  const { year, month, day: date, hour: h, minute: m, second } = figures as Record<string, number>;
  const shown = Date.UTC(year as number, (month as number) - 1, date, h, m, second);
  return Math.round((shown - at) / minute);
}

const clockOf = (timeZone: string) =>
  new Intl.DateTimeFormat('en-US', {
    timeZone,
    hourCycle: 'h23',
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: 'numeric',
    minute: 'numeric',
    second: 'numeric',
  });

/** Whether clocks are set forward or back within a few hours of the day (UTC) of an instant; worked out once a day. */
export function isChangedAround(at: number, timeZone: string): boolean {
  const nth = Math.floor(at / day);
  const key = `${timeZone} ${nth}`;
  const known = changes.get(key);
  if (known !== undefined) return known;
  const isChanged = minutesAhead(nth * day - 3 * hour, timeZone) !== minutesAhead((nth + 1) * day + 3 * hour, timeZone);
  changes.set(key, isChanged);
  return isChanged;
}

/** The short name of a zone as people there use it: Intl knows "CDT" in American and "BST" in British English. */
export function zoneName(at: number, timeZone: string): string {
  const formats = names.get(timeZone) ?? ['en-US', 'en-GB'].map((locale) => namer(locale, timeZone));
  names.set(timeZone, formats);
  const found = formats.map((format) => format.formatToParts(at).find(({ type }) => type === 'timeZoneName')?.value ?? '');
  return found.find((name) => !name.startsWith('GMT')) ?? found[0] ?? '';
}

const namer = (locale: string, timeZone: string) => new Intl.DateTimeFormat(locale, { timeZone, timeZoneName: 'short' });
