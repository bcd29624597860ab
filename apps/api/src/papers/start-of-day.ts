import { dayIn } from '../platform/day-in';

const hour = 3_600_000;

/** The day begins after midnight where clocks are set forward then. */
export function startOfDay(day: string, timeZone: string): Date {
  const midnight = Date.parse(`${day}T00:00:00Z`);
  const [before, after] = [offsetAt(midnight - 26 * hour, timeZone), offsetAt(midnight + 26 * hour, timeZone)];
  const candidates = [midnight - before, midnight - after].sort((a, b) => a - b).map((at) => new Date(at));
  return candidates.find((at) => dayIn(timeZone, at) === day) ?? new Date(midnight - after);
}

export const endOfDay = (day: string, timeZone: string): Date =>
  startOfDay(new Date(Date.parse(day) + 24 * hour).toISOString().slice(0, 10), timeZone);

/** Milliseconds by which local time is ahead of UTC. */
function offsetAt(instant: number, timeZone: string): number {
  const format = new Intl.DateTimeFormat('sv-SE', { timeZone, dateStyle: 'short', timeStyle: 'medium' });
  return Date.parse(`${format.format(instant).replace(' ', 'T')}Z`) - instant;
}
