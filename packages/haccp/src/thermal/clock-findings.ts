import { onCommonScale } from '../quantity/convert-degrees';
import { beginClock, doubtOfClock } from './clock-doubt';
import { note, type Finding, type FindingKind } from './finding';
import type { CurveReading } from './instant';

/**
 * What the clock shows, in the order in which the readings came and before they are sorted.
 * @param now nothing can have been read later (epoch ms)
 */
export function noteClock(
  findings: Finding[],
  readings: readonly CurveReading[],
  longestGap: number,
  now = Infinity,
): void {
  const clock = beginClock();
  readings.forEach((reading, index) => {
    const before = readings[index - 1] ?? reading;
    const { at, word, arrivedAt = now } = reading;
    const doubt = doubtOfClock(clock, { at, word, arrivedAt: Math.min(arrivedAt, now) });
    const kind = doubt ?? (index > 0 ? besides(before, reading, longestGap) : undefined);
    if (kind) note(findings, kind, reading, before, false);
  });
}

function besides(before: CurveReading, after: CurveReading, longestGap: number): FindingKind | undefined {
  if (before.at !== after.at) return after.at - before.at > longestGap ? 'gap' : undefined;
  return onCommonScale(before.temperature) === onCommonScale(after.temperature) ? 'repeated' : 'two values';
}
