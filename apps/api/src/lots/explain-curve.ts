import type { ExplainedSeries } from '@larderbook/contracts';
import { explainSeries, type GrowthShown, type LethalityFigure, type SeriesExplained, type Species } from '@larderbook/haccp';
import { contextOf } from './judge-control-point';
import type { PointOnLot } from './judge-points';
import { curveOf } from './judge-reading';
import type { LotRows } from './lot-rows';

/** Undefined where no temperature was read over time. */
export function explainCurve(found: PointOnLot, rows: LotRows): ExplainedSeries | undefined {
  const series = seriesOf(found, rows);
  if (!series) return undefined;
  return { ...series, forecast: found.forecast, lethality: lethalityOf(series), growth: growthOf(series) };
}

export function seriesOf(found: PointOnLot, rows: LotRows): SeriesExplained | undefined {
  const { point, judged, bands, records, forecast } = found;
  const readings = curveOf(records.readings);
  if (point.takenAs !== 'curve' || readings.length === 0) return undefined;
  return explainSeries({
    readings,
    surroundings: curveOf(records.surroundings ?? []),
    judged,
    stages: bands,
    context: contextOf(records),
    forecast,
    species: speciesOf(rows.product.species),
    isCured: rows.wentIn.composition.substances.has('sodium nitrite'),
  });
}

const modelled: readonly string[] = ['beef', 'chicken', 'pork'] satisfies Species[];
const speciesOf = (species: string): Species | 'mixed or unknown' =>
  modelled.includes(species) ? (species as Species) : 'mixed or unknown';

const lethalityOf = ({ lethality }: SeriesExplained): ExplainedSeries['lethality'] =>
  lethality && { ...lethality, figures: lethality.figures.map(toFigure) };

const toFigure = ({ set, found, probe, floorCelsius, byStraightLines, atLeast }: LethalityFigure) => ({
  found,
  probe,
  name: set.name,
  organism: set.organism,
  minutesPerLog: set.minutesPerLog,
  referenceCelsius: set.referenceCelsius,
  zCelsius: set.zCelsius,
  floorCelsius,
  note: set.note,
  source: set.source,
  byStraightLines,
  atLeast,
});

const growthOf = ({ growth }: SeriesExplained): ExplainedSeries['growth'] =>
  growth && { ...growth, estimate: growth.estimate && toEstimate(growth.estimate) };

const toEstimate = ({ set, unseen, ...estimate }: GrowthShown) => ({
  ...estimate,
  name: set.name,
  version: set.version,
  source: set.source,
  unseen: [...unseen],
});
