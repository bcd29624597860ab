import { onCommonScale } from '../quantity/convert-degrees';
import { note, type Finding, type FindingKind } from './finding';
import type { CurveReading } from './instant';

const HOUR = 3_600_000;
const DAY = 24 * HOUR;

/**
 * What the clock shows, in the order in which the readings came and before they are sorted. A step of exactly an hour
 * more or less than the usual one is a clock that was changed, not data.
 */
export function noteClock(findings: Finding[], readings: readonly CurveReading[], longestGap: number): void {
  let usual = 0;
  readings.forEach((reading, index) => {
    const before = readings[index - 1];
    if (!before) return;
    const step = reading.at - before.at;
    const kind = clockFinding(step, usual, longestGap) ?? (step === 0 ? sameInstant(before, reading) : undefined);
    if (kind) note(findings, kind, reading, before, false);
    if (step > 0 && !kind) usual = step;
  });
}

function clockFinding(step: number, usual: number, longestGap: number): FindingKind | undefined {
  if (usual > 0 && usual < HOUR && Math.abs(step - usual) === HOUR) return 'an hour off';
  if (step < -DAY || step > 365 * DAY) return 'clock reset';
  if (step < 0) return 'out of order';
  return step > longestGap ? 'gap' : undefined;
}

const sameInstant = (before: CurveReading, after: CurveReading): FindingKind =>
  onCommonScale(before.temperature) === onCommonScale(after.temperature) ? 'repeated' : 'two values';
