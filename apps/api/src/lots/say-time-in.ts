import type { SayTime } from '@larderbook/haccp';
import { zoneName } from '@larderbook/messages';
import { dayIn } from '../platform/day-in';

const clock = { hour: '2-digit', minute: '2-digit' } as const;
const withDay = { weekday: 'short', day: 'numeric', month: 'short', ...clock } as const;

/**
 * An instant on the clock of the shop as the screens show it: "14:05", and "Wed 14 Oct, 05:50" where what is told of
 * lies on several of its days. Where the clocks were changed in between, an hour may come twice or not at all, so each
 * time carries its zone: "01:30 CDT" and then "01:10 CST".
 */
export function sayTimeIn(timeZone: string, told: readonly Date[]): SayTime {
  const days = new Set(told.map((instant) => dayIn(timeZone, instant)));
  const format = new Intl.DateTimeFormat('en-GB', { ...(days.size > 1 ? withDay : clock), timeZone });
  const zoneOf = (at: Date | number) => zoneName(Number(at), timeZone);
  const isChanged = new Set(told.map(zoneOf)).size > 1;
  return (at) => (isChanged ? `${format.format(at)} ${zoneOf(at)}` : format.format(at));
}
