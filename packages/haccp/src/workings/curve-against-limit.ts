import type { CurveContext } from '../limits/curve-context';
import { judgeCurve } from '../limits/judge-curve';
import type { CurveLimit } from '../limits/limit';
import { sayLimit } from '../limits/say-limit';
import type { Verdict } from '../limits/verdict';
import { sayDuration } from '../quantity/duration';
import { degrees, sayDegrees } from '../quantity/degrees';
import type { TemperatureUnit } from '../quantity/temperature';
import type { CurveReading } from '../thermal/curve';
import { cautions } from './cautions';
import type { CannotWork, Fact, Working } from './working';

/** A reading as typed on the workbench: minutes since the first. */
export type TypedReading = { minutes: number; value: number };

const MINUTE = 60_000;

/** Typed readings as a curve that begins at instant 0. */
export const curveOf = (readings: readonly TypedReading[], unit: TemperatureUnit): CurveReading[] =>
  readings.map(({ minutes, value }) => ({ at: Math.round(minutes * MINUTE), temperature: degrees(value, unit) }));

/** Readings of one probe against one published limit, judged as a lot would be whose stage has ended. */
export function curveAgainstLimit(
  readings: readonly TypedReading[],
  unit: TemperatureUnit,
  limit: CurveLimit,
  title: string,
): Working | CannotWork {
  if (readings.length === 0) return { cannot: 'There is no reading: give at least one.' };
  const verdict = judgeCurve(curveOf(readings, unit), limit, ended);
  return {
    title,
    given: [{ what: 'Limit', said: sayLimit(limit, unit) }, ...readings.map((reading) => fact(reading, unit))],
    steps: [stepOf(verdict)],
    results: [{ what: 'Measured', said: verdict.measured }],
    verdicts: [verdict],
    notes: verdict.notes,
    sources: [limit.source],
    cautions: [cautions.limits],
  };
}

const ended: CurveContext = { ended: true };

const fact = ({ minutes, value }: TypedReading, unit: TemperatureUnit): Fact => ({
  what: minutes === 0 ? 'At the start' : `After ${sayDuration(minutes * MINUTE)}`,
  said: sayDegrees(degrees(value, unit)),
});

const stepOf = ({ limit, measured, because }: Verdict) => ({
  what: 'Against the limit',
  rule: limit,
  putIn: measured,
  gives: because,
});
