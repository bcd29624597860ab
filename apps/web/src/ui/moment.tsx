import { isTwoTimes } from '@larderbook/haccp';
import { useClock, useSay } from './voice';
import { wallTime, zoneByChange } from './wall-time';

type MomentProps = {
  /** ISO 8601 or epoch ms. */
  at: string | number;
  /** The establishment's time zone. */
  zone: string;
  show?: 'time' | 'day' | 'both';
};

/** A moment by the clock on the shop's wall, written as the reader's language and the shop write it. */
export function Moment({ at, zone, show = 'both' }: MomentProps) {
  const clock = useClock(zone);
  const instant = new Date(at);
  const written = { time: clock.time, day: clock.day, both: clock.dayAndTime }[show].call(clock, instant.getTime());
  return <time dateTime={instant.toISOString()}>{written}</time>;
}

/** A moment as it was stated, and beside it when it was entered where that is another. */
export function BothMoments({ at, recordedAt, zone, show }: MomentProps & { recordedAt: string | number }) {
  const entered = useEntered({ at, recordedAt });
  return (
    <>
      <Moment at={at} zone={zone} show={show} />
      {entered && `, ${entered}`}
    </>
  );
}

/** "entered 2:05 pm", where a record states another moment than the one it was entered at. */
export function useEntered({ at, recordedAt }: { at: string | number; recordedAt: string | number }): string | undefined {
  const say = useSay('shared');
  const clock = useClock();
  const [stated, entered] = [new Date(at).getTime(), new Date(recordedAt).getTime()];
  return isTwoTimes({ at: stated, enteredAt: entered }) ? say('entered-at', { when: clock.when(entered, stated) }) : undefined;
}

/** "entered Mon 2 Mar 2026, 14:05", where a record states another moment than the one it was entered at. */
export function enteredWords({ at, enteredAt }: { at: number; enteredAt?: number }, zone: string): string | undefined {
  if (enteredAt === undefined || !isTwoTimes({ at, enteredAt })) return undefined;
  return `entered ${whenWords(enteredAt, at, zone)}`;
}

/** "14:05"; "01:30 CDT" within half a day of a change of the clocks. */
export const timeWords = (at: string | number, zone: string) =>
  [wallTime(at, zone).slice(11), zoneByChange(at, zone)].filter(Boolean).join(' ');

/** "14:05" while it is of today, else with its day: a fermentation is due in days, and "by 00:14" would mean tonight. */
export const whenWords = (at: string | number, now: number, zone: string) =>
  dayWords(at, zone) === dayWords(now, zone) ? timeWords(at, zone) : `${dayWords(at, zone)}, ${timeWords(at, zone)}`;

/** "Mon 2 Mar 2026": the month in letters, so that no reader swaps day and month. */
export function dayWords(at: string | number, zone: string): string {
  return dateWords(wallTime(at, zone).slice(0, 10));
}

/** The same for a calendar day without a zone ("2026-03-02"). */
export function dateWords(date: string): string {
  const parts = new Intl.DateTimeFormat('en-GB', {
    timeZone: 'UTC',
    weekday: 'short',
    day: 'numeric',
    month: 'short',
    year: 'numeric',
  }).formatToParts(Date.parse(`${date}T00:00Z`));
  const part = (type: string) => parts.find((each) => each.type === type)?.value ?? '';
  return `${part('weekday')} ${part('day')} ${part('month')} ${part('year')}`;
}
