import type { CoolingLimit } from '../limits/limit';
import { boundOf } from '../quantity/bound';
import { addToEnd, beginEnd, copyOfEnd, type EndSoFar } from './cooling-end';
import { addToStart, beginStart, copyOfStart, fallOf, type StartSoFar } from './cooling-start';
import type { Instant } from './instant';

/** What must be known before the first reading of a chill. */
export type CoolingKnown = {
  /** When cooking ended (epoch ms). */
  startAt?: number;
  /** A reading may be wrong by so much either way, on the common scale. */
  error?: number;
};

/** A chill up to the last reading added. It grows with its stages, never with its readings. */
export type CoolingSoFar = {
  readonly limit: CoolingLimit;
  /** Of the first stage its first fall, of every later one its last. */
  starts: StartSoFar[];
  ends: EndSoFar[];
  readings: number;
  last?: Instant;
};

export function beginCooling(limit: CoolingLimit, { startAt, error = 0 }: CoolingKnown): CoolingSoFar {
  const starts = limit.stages.map(({ from }, index) =>
    from
      ? beginStart(boundOf(from), index === 0 ? 'first' : 'last', startAt, error)
      : beginStart(NO_BOUND, 'end of cooking', startAt, error),
  );
  const ends = limit.stages.map(({ to }) => beginEnd(boundOf(to), error));
  return { limit, starts, ends, readings: 0, last: undefined };
}

/** No core is ever at or above it. */
const NO_BOUND = { '°F': Infinity, '°C': Infinity };

/** Adds one reading, later than all before. */
export function addToCooling(cooling: CoolingSoFar, instant: Instant): void {
  const index = cooling.readings;
  const { last, limit } = cooling;
  for (const start of cooling.starts) addToStart(start, index, instant, last);
  for (let stage = 0; stage < cooling.ends.length; stage += 1) {
    const start = startOfStage(cooling, limit, stage);
    addToEnd(cooling.ends[stage] as EndSoFar, index, instant, last, fallOf(start));
  }
  cooling.readings += 1;
  cooling.last = instant;
}

/** A stage counted from the start of the chill shares the first stage's. */
export const startOfStage = ({ starts }: CoolingSoFar, { stages }: CoolingLimit, stage: number): StartSoFar =>
  starts[stages[stage]?.counted === 'start' ? 0 : stage] as StartSoFar;

export const copyOfCooling = (cooling: CoolingSoFar): CoolingSoFar => ({
  limit: cooling.limit,
  starts: cooling.starts.map(copyOfStart),
  ends: cooling.ends.map(copyOfEnd),
  readings: cooling.readings,
  last: cooling.last,
});
