import { once } from '../limits/once';
import { explainerOf } from '../kinds/explainers';
import type { CurveContext } from '../limits/curve-context';
import type { CriticalLimit } from '../limits/limit';
import type { Verdict } from '../limits/verdict';
import type { TemperatureUnit } from '../quantity/temperature';
import { byProbe, isUsableReading, type CurveReading } from '../thermal/curve';
import { drawnDegrees } from './drawn-degrees';
import { withError } from './drawn-error';
import type { ArrivalDrawn, Drawing, PointDrawn, StageDrawn } from './drawing';
import { governing } from './governing';
import { drawLethality } from './lethality-explained';

export type ToDraw = {
  readings: readonly CurveReading[];
  /** Of several probes, the verdict of the one that governs. */
  judged: readonly { limit: CriticalLimit; verdict: Verdict }[];
  stages: readonly StageDrawn[];
  context: CurveContext;
  surroundings: readonly CurveReading[];
  arrival?: ArrivalDrawn;
  unit: TemperatureUnit;
};

export function drawSeries({ readings, judged, stages, context, surroundings, arrival, unit }: ToDraw): Drawing {
  const usable = readings.filter(isUsableReading);
  const probes = [...byProbe(usable)].map(([probe, own]) => ({ probe, points: pointsOf(own, unit) }));
  const peak = probes.flatMap(({ points }) => points).reduce((most, { value }) => Math.max(most, value), -Infinity);
  const lines = judged.flatMap(({ limit }) => explainerOf(limit).lines(limit, unit, peak));
  const laws = judged.map(({ limit }) => explainerOf(limit).lawsOfKill(limit)).filter((sets) => sets !== undefined);
  return {
    unit,
    probes: usable.length === 0 ? [] : probes,
    surroundings: pointsOf(surroundings.filter(isUsableReading), unit),
    lines: once(lines, ({ value, label }) => [value, label]).map((line) => withError(line, context.instrumentError, unit)),
    stages: stages.map(({ label, startAt, endAt, deadline, kind }) => ({ label, startAt, endAt, deadline, kind })),
    crossings: judged.flatMap(({ limit, verdict }) => explainerOf(limit).crossings(limit, governing(usable, verdict), context, unit)),
    lethality: laws.length > 0 && usable.length > 0 ? drawLethality(usable, laws.flat()) : [],
    arrival,
  };
}

const pointsOf = (readings: readonly CurveReading[], unit: TemperatureUnit): PointDrawn[] =>
  [...readings].sort((a, b) => a.at - b.at).map(({ at, temperature }) => ({ at, value: drawnDegrees(temperature, unit) }));
