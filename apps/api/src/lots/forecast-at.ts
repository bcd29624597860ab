import type { ControlPoint } from '@larderbook/contracts';
import { degrees, forecastPoint, type PointForecast } from '@larderbook/haccp';
import { contextOf, type PointRecords } from './judge-control-point';
import { curveOf } from './judge-reading';

/**
 * When the stage that runs at a control point will reach the bound it waits for, as its records tell it. Advice to act
 * in time: no verdict and no standing is derived from it. Undefined where no stage runs.
 */
export function forecastAt(point: ControlPoint, records: PointRecords): PointForecast | undefined {
  // Most control points of a list are finished: their readings need not be read as a curve once more.
  if (point.takenAs !== 'curve' || records.endedAt) return undefined;
  const setPoint = point.surroundings?.setPoint;
  const surroundings = point.surroundings && {
    setPoint: setPoint && degrees(setPoint.value, setPoint.unit),
    readings: curveOf(records.surroundings ?? []),
  };
  return forecastPoint(point.limits, curveOf(records.readings), surroundings, contextOf(records));
}
