import { errorOf, type CurveContext } from '../limits/curve-context';
import type { CriticalLimit } from '../limits/limit';
import { coded } from '../limits/coded';
import { aboutTime, printedIn } from '../quantity/quantities';
import type { Quantity } from '../quantity/quantity';
import type { Surroundings } from '../thermal/around-core';
import { byProbe, isUsableReading, type CurveReading } from '../thermal/curve';
import { awaitedUnder, type Awaited } from './awaited';
import type { Medium } from './course';
import { ADVICE, type Forecast } from './forecast';
import { MEDIUM_UNKNOWN } from './forecast-of';
import { bestOf, forecastProbe, named } from './forecast-probes';
import { mediaOf } from './media';

/** `by` in epoch ms. */
export type PointForecast = Forecast & { limitId: string; target: Quantity; by?: number };

/**
 * Of several limits and probes, the most pressing forecast. Undefined while nothing is awaited or usable. @param
 * readings of the product alone; the surroundings stand apart
 */
export function forecastPoint(
  limits: readonly { limitId: string; limit: CriticalLimit }[],
  readings: readonly CurveReading[],
  surroundings: Surroundings | undefined,
  context: CurveContext,
): PointForecast | undefined {
  const usable = readings.filter(isUsableReading);
  const error = errorOf(context);
  if (context.ended || usable.length === 0 || error === undefined) return undefined;
  const media = mediaOf(surroundings?.readings ?? []);
  const setPoint = surroundings?.setPoint;
  const medium: Medium | undefined = setPoint && { temperature: setPoint, is: 'set point' };
  const forecasts = limits.flatMap(({ limitId, limit }) =>
    [...byProbe(usable)].flatMap(([probe, own]): PointForecast[] => {
      const awaited = awaitedUnder(limit, own, context);
      if (!awaited) return [];
      const { by, way, target } = awaited;
      const said = toName(forecastProbe(farther(own, way, error), { way, target, medium }, by, media), surroundings);
      const { unit } = (own[own.length - 1] as CurveReading).temperature;
      return said.state === 'reached' ? [] : [named({ ...said, limitId, target: printedIn(target, unit), by }, probe)];
    }),
  );
  const [first] = forecasts.sort(morePressing);
  return first && asOf(first, context.now);
}

/** As far from the target as the thermometer's error allows (common scale), as it will be judged. */
function farther(readings: readonly CurveReading[], way: Awaited['way'], error: number): readonly CurveReading[] {
  const side = way === 'cooling' ? 1 : -1;
  return readings.map(({ temperature: { hundredths, unit }, ...reading }) => ({
    ...reading,
    temperature: { hundredths: hundredths + side * Math.ceil(error / (unit === '°C' ? 9 : 5)), unit },
  }));
}

/** A medium that the plan does not name cannot be read either. */
const toName = (said: Forecast, surroundings: Surroundings | undefined): Forecast =>
  surroundings === undefined && said === MEDIUM_UNKNOWN ? { ...said, next: [coded('name-the-medium')] } : said;

const PRESSING: Record<Forecast['state'], number> = {
  'will miss': 0,
  'at risk': 1,
  undetermined: 2,
  'too early to tell': 3,
  'on course': 4,
  expected: 4,
  reached: 5,
};

/** Too late first; then the earliest deadline, then the last arrival. */
const morePressing = (one: PointForecast, other: PointForecast): number =>
  PRESSING[one.state] - PRESSING[other.state] || dueOf(one) - dueOf(other) || bestOf(other) - bestOf(one);

const dueOf = ({ by }: PointForecast): number => by ?? Number.MAX_SAFE_INTEGER;

/** Overdue and without a new reading, a forecast says nothing. */
export function asOf(said: PointForecast, now: number | undefined): PointForecast {
  if (now === undefined || !('arrival' in said) || said.state === 'will miss') return said;
  const { limitId, target, by, probe } = said;
  const over = now - Math.min(by ?? Infinity, said.arrival.latest ?? Infinity);
  if (!(over > 0)) return said;
  return {
    use: ADVICE,
    state: 'undetermined',
    because: [coded('should-have-been-reached', { target, time: aboutTime(over) })],
    next: [coded('read-core-now')],
    limitId,
    target,
    by,
    ...(probe !== undefined && { probe }),
  };
}
