import type { ControlPoint } from '@larderbook/contracts';
import { forecastPoint, type PointForecast } from '@larderbook/haccp';
import { contextOf, type PointRecords } from './judge-control-point';
import { curveOf } from './judge-reading';
import { surroundingsAt } from './surroundings-at';

/** Advice only: no verdict or standing is derived from it. */
export function forecastAt(point: ControlPoint, records: PointRecords): PointForecast | undefined {
  // Skips finished points early, so that a list does not read their curves again.
  if (point.takenAs !== 'curve' || records.endedAt) return undefined;
  const surroundings = surroundingsAt(point, records.surroundings);
  return forecastPoint(point.limits, curveOf(records.readings), surroundings, contextOf(records));
}
