import { ofProduct, type ControlPointOnLot, type Lot } from '@larderbook/contracts';
import { forecastPoint, seriesOf, type PointForecast } from '@larderbook/haccp';
import { readsWith, startOf, surroundingsOf, type NewReading } from './preview-curve';

/** Worked out by the function the server uses. */
export function previewForecast(point: ControlPointOnLot, lot: Lot, next?: NewReading, amends?: string): PointForecast | undefined {
  const { controlPoint } = point;
  if (controlPoint.takenAs !== 'curve') return undefined;
  const reads = readsWith(point, next, amends);
  const own = ofProduct(controlPoint, reads);
  const context = { ...startOf(point, lot), ended: point.endedAt !== undefined, now: next?.at };
  return forecastPoint(controlPoint.limits, seriesOf(own).temperatures, surroundingsOf(controlPoint, reads), context);
}

/** The server’s forecast counts, unless this device holds unsent entries; `lot` includes those. */
export function forecastWith(point: ControlPointOnLot, lot: Lot, isAhead: boolean): PointForecast | undefined {
  if (!isAhead) return point.forecast;
  const { controlPointId } = point.controlPoint;
  const here = lot.controlPoints.find(({ controlPoint }) => controlPoint.controlPointId === controlPointId);
  return here && previewForecast(here, lot);
}
