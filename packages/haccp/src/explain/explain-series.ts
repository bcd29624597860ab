import { speedOf, type CurveContext } from '../limits/curve-context';
import { limitsOfKind } from '../kinds/of-kind';
import type { CriticalLimit } from '../limits/limit';
import type { Verdict } from '../limits/verdict';
import type { PointForecast } from '../forecast/forecast-point';
import type { Species } from '../growth/growth-set';
import type { TemperatureUnit } from '../quantity/temperature';
import type { CurveReading } from '../thermal/curve';
import { examineCurve } from '../thermal/examine-curve';
import type { Drawing, StageDrawn } from './drawing';
import { drawSeries } from './draw-series';
import { drawArrival } from './draw-arrival';
import { explainGrowth, type GrowthExplained } from './growth-explained';
import { explainLethality, type LethalityExplained } from './lethality-explained';
import { tellFinding, type ToldFinding } from './tell-finding';

export type SeriesExplained = {
  drawing: Drawing;
  used: number;
  leftOut: number;
  findings: ToldFinding[];
  lethality?: LethalityExplained;
  growth?: GrowthExplained;
};

export type SeriesToExplain = {
  readings: readonly CurveReading[];
  /** Of the medium that the product lies in. */
  surroundings: readonly CurveReading[];
  judged: readonly { limitId: string; limit: CriticalLimit; verdict: Verdict }[];
  /** Of the probe that governs. */
  stages: readonly StageDrawn[];
  context: CurveContext;
  /** Undefined where no stage runs. */
  forecast?: PointForecast;
  species: Species | 'mixed or unknown';
  /** With nitrite. */
  isCured: boolean;
};

export function explainSeries(asked: SeriesToExplain): SeriesExplained {
  const { surroundings, judged, stages, context, forecast, species, isCured } = asked;
  const examined = examineCurve(asked.readings, gapOf(judged), { speed: speedOf(context), now: context.now });
  const isTooLong = 'fault' in examined;
  const found = isTooLong ? { findings: [], used: 0, leftOut: asked.readings.length } : examined;
  const readings = isTooLong ? [] : asked.readings;
  const unit = unitOf(readings);
  const limits = judged.map(({ limit }) => limit);
  const arrival = forecast && drawArrival(forecast, readings, judged, context, unit);
  return {
    drawing: drawSeries({ readings, judged, stages, context, surroundings, arrival, unit }),
    used: found.used,
    leftOut: found.leftOut,
    findings: found.findings.map(tellFinding),
    lethality: explainLethality(readings, limitsOfKind(limits, 'dwell'), context, unit),
    growth: explainGrowth(readings, limitsOfKind(limits, 'cooling'), species, isCured, context),
  };
}

/** The unit of the last reading, as in the verdict. */
const unitOf = (readings: readonly CurveReading[]): TemperatureUnit => readings.at(-1)?.temperature.unit ?? '°F';

/** A longer gap is a finding; the strictest limit decides. */
function gapOf(judged: SeriesToExplain['judged']): number | undefined {
  const gaps = judged.flatMap(({ limit }) => ('longestGapSeconds' in limit ? [limit.longestGapSeconds * 1000] : []));
  return gaps.length > 0 ? Math.min(...gaps) : undefined;
}
