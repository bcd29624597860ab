import { ofProduct, type ControlPointOnLot, type Lot } from '@larderbook/contracts';
import { forecastPoint, seriesOf, type PointForecast } from '@larderbook/haccp';
import { readsWith, startOf, surroundingsOf, type NewReading } from './preview-curve';

/**
 * When a running stage will reach the bound it waits for, worked out on this device by the function the server uses:
 * with one more reading, or with what waits here to be sent.
 */
export function previewForecast(point: ControlPointOnLot, lot: Lot, next?: NewReading, amends?: string): PointForecast | undefined {
  const { controlPoint } = point;
  if (controlPoint.takenAs !== 'curve') return undefined;
  const reads = readsWith(point, next, amends);
  const own = ofProduct(controlPoint, reads);
  const context = { ...startOf(point, lot), ended: point.endedAt !== undefined, now: next?.at };
  return forecastPoint(controlPoint.limits, seriesOf(own).temperatures, surroundingsOf(controlPoint, reads), context);
}

/** The server’s forecast counts, unless entries it has not seen wait on this device; `lot` holds those too. */
export function forecastWith(point: ControlPointOnLot, lot: Lot, isAhead: boolean): PointForecast | undefined {
  if (!isAhead) return point.forecast;
  const { controlPointId } = point.controlPoint;
  const here = lot.controlPoints.find(({ controlPoint }) => controlPoint.controlPointId === controlPointId);
  return here && previewForecast(here, lot);
}
