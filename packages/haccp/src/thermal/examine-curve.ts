import { byProbe } from './curve';
import { noteClock } from './clock-findings';
import { note, type Finding } from './finding';
import type { CurveReading } from './instant';
import { noteMovement } from './movement-findings';
import { tooMany, type SeriesFault } from './too-many';
import { valueFinding } from './value-findings';

/** What was found in a series, and which readings a result on it rests on. */
export type CurveFindings = { findings: Finding[]; used: number; leftOut: number };

/** Common practice, no source: longer without a reading is worth saying. */
const LONGEST_GAP = 15 * 60_000;

/**
 * Looks through the readings of one or several probes, typed or logged, in the order in which they came. What is wrong
 * is found and said and never mended: nothing is replaced, nothing is moved.
 * @param longestGap a longer time between two readings is a finding (ms)
 */
export function examineCurve(
  readings: readonly CurveReading[],
  longestGap = LONGEST_GAP,
): CurveFindings | SeriesFault {
  const fault = tooMany(readings.length);
  if (fault) return fault;
  const findings: Finding[] = [];
  let used = 0;
  for (const own of byProbe(readings).values()) {
    const usable: CurveReading[] = [];
    let lastBad = -2;
    own.forEach((reading, index) => {
      const kind = valueFinding(reading);
      if (!kind) usable.push(reading);
      else {
        note(findings, kind, reading, reading, lastBad === index - 1);
        lastBad = index;
      }
    });
    used += usable.length;
    noteClock(findings, usable, longestGap);
    noteMovement(findings, [...usable].sort((a, b) => a.at - b.at));
  }
  return { findings, used, leftOut: readings.length - used };
}
