import { onCommonScale } from '../quantity/convert-degrees';
import { beginClock, doubtOfClock, inOrderOfArrival, type ClockSoFar } from './clock-doubt';
import { byProbe, isInstant, isSetAside } from './curve';
import { note, type Finding, type FindingKind, type Noted } from './finding';
import type { AsKept, CurveReading } from './instant';

/** Readings come in order of arrival, before they are sorted. @param now nothing can have been read later (epoch ms) */
export function noteClock(findings: Finding[], readings: readonly CurveReading[], longestGap: number, now = Infinity): void {
  const clock = beginClock();
  readings.forEach((reading, index) => {
    const before = readings[index - 1] ?? reading;
    const kind = doubtAt(clock, reading, now) ?? (index > 0 ? besides(before, reading, longestGap) : undefined);
    if (kind) note(findings, kind, reading, before, false);
  });
}

/** For weights and pH. Their judge takes times that no calendar holds. */
export function clockFindings(readings: readonly (AsKept & Noted)[], now = Infinity): Finding[] {
  const findings: Finding[] = [];
  for (const own of byProbe(inOrderOfArrival(readings)).values()) {
    const clock = beginClock();
    const usable = own.filter((reading) => isInstant(reading.at) && !isSetAside(reading));
    usable.forEach((reading, index) => {
      const doubt = doubtAt(clock, reading, now);
      if (doubt) note(findings, doubt, reading, usable[index - 1] ?? reading, false);
    });
  }
  return findings;
}

/** A reading of unknown arrival was kept by now at the latest, which tells only of the future. */
const doubtAt = (clock: ClockSoFar, { at, word, arrivedAt = Infinity }: AsKept & Noted, now: number) =>
  doubtOfClock(clock, { at, word, arrivedAt: arrivedAt === Infinity && at <= now ? undefined : Math.min(arrivedAt, now) });

function besides(before: CurveReading, after: CurveReading, longestGap: number): FindingKind | undefined {
  if (before.at !== after.at) return after.at - before.at > longestGap ? 'gap' : undefined;
  return onCommonScale(before.temperature) === onCommonScale(after.temperature) ? 'repeated' : 'two values';
}
