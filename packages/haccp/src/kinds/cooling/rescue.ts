import { onCommonScale } from '../../quantity/convert-degrees';
import type { Degrees } from '../../quantity/temperature';
import type { CoolingSoFar } from './cooling-so-far';
import type { CurveReading } from '../../thermal/instant';
import type { CoolingContext, StageSpan } from './stage-span';

/** Whether chilling still brings a stage to its bound in time, and how. */
export type Rescue = { stage: number } & (
  | {
      can: true;
      /** Epoch ms. */
      by: number;
      /** Average fall of the core, in the unit of the reading. */
      hundredthsPerHour: number;
      /** In a chiller of known temperature: the most the core may show half way there. */
      halfway?: { at: number; temperature: Degrees };
    }
  | { can: false; why: 'time is over' | 'chiller too warm' }
);

const HOUR = 3_600_000;

/** Begun and not at their bounds; none once the chill is ended. */
export function rescuesOf({ ends, last }: CoolingSoFar, spans: readonly StageSpan[], { ended, now, chiller }: CoolingContext): Rescue[] {
  if (ended || !last) return [];
  const { warmer } = last;
  return ends.flatMap(({ to, error, landing }, stage) => {
    const deadline = spans[stage]?.deadline;
    if (deadline === undefined || landing) return [];
    const bound = to[warmer.temperature.unit] - error;
    return [{ stage, ...rescue(warmer, bound, deadline, Math.max(now ?? warmer.at, warmer.at), chiller) }];
  });
}

type Answer = Rescue extends infer R ? (R extends Rescue ? Omit<R, 'stage'> : never) : never;

function rescue(last: CurveReading, to: number, by: number, now: number, chiller: Degrees | undefined): Answer {
  if (by <= now) return { can: false, why: 'time is over' };
  const air = chiller && onCommonScale(chiller);
  if (air !== undefined && air >= to) return { can: false, why: 'chiller too warm' };
  const { unit } = last.temperature;
  const perHundredth = unit === '°C' ? 9 : 5;
  const core = onCommonScale(last.temperature);
  const hundredthsPerHour = ((core - to) / perHundredth / (by - now)) * HOUR;
  if (air === undefined) return { can: true, by, hundredthsPerHour };
  const half = Math.sqrt((core - air) * (to - air)) + air;
  const hundredths = Math.floor(half / perHundredth) + (unit === '°F' ? 3200 : 0);
  return { can: true, by, hundredthsPerHour, halfway: { at: (now + by) / 2, temperature: { hundredths, unit } } };
}
