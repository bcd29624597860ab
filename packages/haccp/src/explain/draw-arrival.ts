import { awaitedUnder } from '../forecast/awaited';
import type { PointForecast } from '../forecast/forecast-point';
import type { CurveContext } from '../limits/curve-context';
import type { CriticalLimit } from '../limits/limit';
import type { TemperatureUnit } from '../quantity/temperature';
import type { CurveReading } from '../thermal/curve';
import { drawnFigure } from './drawn-degrees';
import type { ArrivalDrawn } from './drawing';

export function drawArrival(
  forecast: PointForecast,
  readings: readonly CurveReading[],
  judged: readonly { limitId: string; limit: CriticalLimit }[],
  context: CurveContext,
  unit: TemperatureUnit,
): ArrivalDrawn | undefined {
  const limit = judged.find(({ limitId }) => limitId === forecast.limitId)?.limit;
  if (!limit || !('arrival' in forecast)) return undefined;
  const own = readings.filter(({ probe = '' }) => probe === (forecast.probe ?? probe));
  const awaited = awaitedUnder(limit, own, context);
  if (!awaited) return undefined;
  const { target, by, state, arrival } = forecast;
  return { label: target, value: drawnFigure(awaited.target, unit), ...arrival, deadline: by, state };
}
