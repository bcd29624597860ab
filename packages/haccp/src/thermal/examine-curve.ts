import { byProbe, isBesideCore } from './curve';
import { noteClock } from './clock-findings';
import { note, type Finding } from './finding';
import { aroundCore } from './around-core';
import { inOrderOfArrival } from './clock-doubt';
import { beginSpeed, copyOfSpeed, rateOf, type CoreSpeed } from './core-speed';
import type { CurveReading } from './instant';
import { noteMovement } from './movement-findings';
import { unknownPiece } from './piece';
import { tooMany, type SeriesFault } from './too-many';
import { valueFinding } from './value-findings';

export type CurveFindings = { findings: Finding[]; used: number; leftOut: number };

/** Common practice, no source. */
const LONGEST_GAP = 15 * 60_000;

/** `now`: nothing can have been read later (epoch ms). */
export type ExaminedWith = { speed: CoreSpeed; now?: number };

const ANY_PIECE = beginSpeed(rateOf(unknownPiece) as number, aroundCore(undefined, 0));

/**
 * In order of arrival. Faults are reported, never mended: nothing is replaced or moved. @param longestGap a longer time
 * between two readings is a finding (ms)
 */
export function examineCurve(
  readings: readonly CurveReading[],
  longestGap = LONGEST_GAP,
  { speed, now }: ExaminedWith = { speed: ANY_PIECE },
): CurveFindings | SeriesFault {
  const fault = tooMany(readings.length);
  if (fault) return fault;
  const findings: Finding[] = [];
  let used = 0;
  for (const own of byProbe(inOrderOfArrival(readings)).values()) {
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
    noteClock(findings, usable, longestGap, now);
    noteMovement(findings, inTime(usable), inTime(own.filter(isBesideCore)), copyOfSpeed(speed));
  }
  return { findings, used, leftOut: readings.length - used };
}

const inTime = (readings: readonly CurveReading[]): CurveReading[] => [...readings].sort((a, b) => a.at - b.at);
