import { minutesAhead } from '@larderbook/messages';

/**
 * Between an instant (ISO 8601 with offset) and what the shop's wall clock showed ("2026-03-08T14:05"). A wall time
 * happens once, except when clocks change: never in spring, twice in autumn.
 */

/** To the minute. */
export function wallTime(instant: string | number, zone: string): string {
  const at = typeof instant === 'number' ? instant : Date.parse(instant);
  return new Date(at + minutesAhead(at, zone) * 60_000).toISOString().slice(0, 16);
}

/** None, one, or two (earlier first). */
export function instantsAt(wall: string, zone: string): string[] {
  const asIfUtc = Date.parse(`${wall}Z`);
  if (!/T\d\d:\d\d$/.test(wall) || Number.isNaN(asIfUtc)) return [];
  const day = 24 * 3_600_000; // only the offsets a day before and after can apply
  const offsets = new Set([minutesAhead(asIfUtc - day, zone), minutesAhead(asIfUtc + day, zone)]);
  return [...offsets]
    .filter((offset) => minutesAhead(asIfUtc - offset * 60_000, zone) === offset)
    .sort((a, b) => b - a)
    .map((offset) => `${wall}:00${written(offset)}`);
}

function written(offset: number): string {
  const [hours, minutes] = [Math.floor(Math.abs(offset) / 60), Math.abs(offset) % 60];
  return `${offset < 0 ? '-' : '+'}${String(hours).padStart(2, '0')}:${String(minutes).padStart(2, '0')}`;
}
