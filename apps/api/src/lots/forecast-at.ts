import type { ControlPoint } from '@larderbook/contracts';
import { forecastPoint, type PointForecast } from '@larderbook/haccp';
import { contextOf, type PointRecords } from './judge-control-point';
import { curveOf } from './judge-reading';
import { surroundingsAt } from './surroundings-at';

/**
 * When the stage that runs at a control point will reach the bound it waits for, as its records tell it. Advice to act
 * in time: no verdict and no standing is derived from it. Undefined where no stage runs.
 */
export function forecastAt(point: ControlPoint, records: PointRecords): PointForecast | undefined {
  // Most control points of a list are finished: their readings need not be read as a curve once more.
  if (point.takenAs !== 'curve' || records.endedAt) return undefined;
  const surroundings = surroundingsAt(point, records.surroundings);
  return forecastPoint(point.limits, curveOf(records.readings), surroundings, contextOf(records));
}
