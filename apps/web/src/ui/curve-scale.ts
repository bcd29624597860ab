import { wallTime } from './wall-time';

/** Maps `from..to` of the data onto `start..end` of the paper. */
export function scale([from, to]: Span, [start, end]: Span): (figure: number) => number {
  const factor = to === from ? 0 : (end - start) / (to - from);
  return (figure) => start + (figure - from) * factor;
}
export type Span = [number, number];

/** Round values, about `count` of them, covering `span`. */
export function valueTicks([low, high]: Span, count: number): number[] {
  const step = niceStep((high - low || 1) / count);
  const first = Math.floor(low / step) * step;
  const ticks: number[] = [];
  for (let i = 0; first + i * step < high + step; i++) ticks.push(Number((first + i * step).toFixed(6)));
  return ticks;
}

function niceStep(rough: number): number {
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].find((nice) => nice * power >= rough) ?? 10;
  return step * power;
}

const minute = 60_000;
const steps = [1, 2, 5, 10, 15, 30, 60, 120, 180, 240, 360, 720, 1440].map((minutes) => minutes * minute);

/** Instants (epoch ms) at which the wall clock in `zone` shows a round time, at most `count`. */
export function timeTicks([from, to]: Span, count: number, zone: string): number[] {
  const step = steps.find((each) => (to - from) / each <= count) ?? (to - from) / count;
  const wall = Date.parse(`${wallTime(from, zone)}Z`);
  const first = from - (from % minute) + (Math.ceil(wall / step) * step - wall);
  const ticks: number[] = [];
  for (let at = first; at <= to; at += step) if (at >= from) ticks.push(at);
  return ticks;
}
