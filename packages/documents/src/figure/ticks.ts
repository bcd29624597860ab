import type { Clock } from '@larderbook/messages';
import type { Instant } from '../sheet-data';

const minute = 60_000;
const degreeSteps = [1, 2, 5, 10, 20, 25, 50, 100, 200];
const minuteSteps = [1, 2, 5, 10, 15, 30, 60, 120, 180, 240, 360, 720, 1440, 2880, 10080];

/** Gives at most `most` round figures. */
export function degreeTicks(from: number, to: number, most: number): number[] {
  const step = degreeSteps.find((each) => (to - from) / each <= most) ?? 500;
  const ticks: number[] = [];
  for (let tick = Math.ceil(from / step) * step; tick <= to; tick += step) ticks.push(tick);
  return ticks;
}

/** Gives at most `most` round times by the wall clock. */
export function timeTicks(from: Instant, to: Instant, most: number, clock: Clock): Instant[] {
  const step = minuteSteps.find((each) => (to - from) / minute / each <= most) ?? 20160;
  const whole = Math.ceil(from / minute) * minute;
  const past = clock.minuteOfDay(whole) % step;
  const ticks: Instant[] = [];
  for (let tick = whole + (past ? step - past : 0) * minute; tick <= to; tick += step * minute) ticks.push(tick);
  return ticks;
}
