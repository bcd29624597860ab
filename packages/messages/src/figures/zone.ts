const minute = 60_000;
const hour = 60 * minute;
const day = 24 * hour;
const halfADay = 12 * hour;

const clocks = new Map<string, Intl.DateTimeFormat>();
const changes = new Map<string, boolean>();
const names = new Map<string, Intl.DateTimeFormat[]>();

/** `at` is epoch ms. */
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

/** An hour may come twice or not at all within half a day. The check of a whole day (UTC) is kept. */
export const isChangedAround = (at: number, timeZone: string): boolean =>
  isChangedNear(Math.floor(at / day), timeZone) && isChangedBetween(at - halfADay, at + halfADay, timeZone);

function isChangedNear(nth: number, timeZone: string): boolean {
  const key = `${timeZone} ${nth}`;
  const isChanged = changes.get(key) ?? isChangedBetween(nth * day - halfADay, (nth + 1) * day + halfADay, timeZone);
  changes.set(key, isChanged);
  return isChanged;
}

const isChangedBetween = (from: number, to: number, timeZone: string): boolean =>
  minutesAhead(from, timeZone) !== minutesAhead(to, timeZone);

/** Intl knows "CDT" only in American and "BST" only in British English. */
export function zoneName(at: number, timeZone: string): string {
  const formats = names.get(timeZone) ?? ['en-US', 'en-GB'].map((locale) => namer(locale, timeZone));
  names.set(timeZone, formats);
  const found = formats.map((format) => format.formatToParts(at).find(({ type }) => type === 'timeZoneName')?.value ?? '');
  return found.find((name) => !name.startsWith('GMT')) ?? found[0] ?? '';
}

const namer = (locale: string, timeZone: string) => new Intl.DateTimeFormat(locale, { timeZone, timeZoneName: 'short' });
