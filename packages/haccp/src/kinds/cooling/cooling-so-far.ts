import type { CoolingLimit } from './cooling-limit';
import { boundOf, type Bound } from '../../quantity/bound';
import { beginBeforeTheEnd, beginsAnew, copyOfBeforeTheEnd, type BeforeTheEnd } from '../../thermal/before-the-end';
import { addToEnd, beginEnd, copyOfEnd, type EndSoFar } from './cooling-end';
import { addToStart, beginStart, copyOfStart, fallOf, type StartSoFar } from './cooling-start';
import { warmOver, type Instant } from '../../thermal/instant';

export type CoolingKnown = {
  /** End of cooking (epoch ms). */
  startAt?: number;
  /** Error of a reading, either way, on the common scale. */
  error: number;
};

/** Grows with its stages, never with its readings. */
export type CoolingSoFar = {
  readonly limit: CoolingLimit;
  readonly before: BeforeTheEnd;
  /** First fall of the first stage, last fall of later ones. */
  starts: StartSoFar[];
  ends: EndSoFar[];
  /** First bound of the chill; error of a reading on the common scale. */
  readonly upper: Bound;
  readonly error: number;
  /** First reading since cooking ended that is surely below the first bound (epoch ms). */
  coldFrom?: number;
  readings: number;
  last?: Instant;
};

export function beginCooling(limit: CoolingLimit, { startAt, error }: CoolingKnown): CoolingSoFar {
  const before = beginBeforeTheEnd(startAt, error);
  const starts = limit.stages.map(({ from }, index) =>
    from ? beginStart(boundOf(from), index === 0 ? 'first' : 'last', before, error) : beginStart(NO_BOUND, 'end of cooking', before, error),
  );
  const ends = limit.stages.map(({ to }) => beginEnd(boundOf(to), error));
  const [first] = limit.stages;
  const upper = first ? boundOf(first.from ?? first.to) : NO_BOUND;
  return { limit, before, starts, ends, upper, error, coldFrom: undefined, readings: 0, last: undefined };
}

/** No core is ever at or above it. */
const NO_BOUND = { '°F': Infinity, '°C': Infinity };

export function addToCooling(cooling: CoolingSoFar, instant: Instant): void {
  const index = cooling.readings;
  const { last, limit } = cooling;
  const isAnew = beginsAnew(cooling.before, instant);
  if (isAnew) cooling.coldFrom = undefined;
  if (cooling.coldFrom === undefined && warmOver(instant, cooling.upper) < -cooling.error) cooling.coldFrom = instant.at;
  for (const start of cooling.starts) addToStart(start, index, instant, last, isAnew);
  for (let stage = 0; stage < cooling.ends.length; stage += 1) {
    const start = startOfStage(cooling, limit, stage);
    addToEnd(cooling.ends[stage] as EndSoFar, index, instant, last, fallOf(start));
  }
  cooling.readings += 1;
  cooling.last = instant;
}

/** A stage counted from the start of the chill shares the first stage's start. */
export const startOfStage = ({ starts }: CoolingSoFar, { stages }: CoolingLimit, stage: number): StartSoFar =>
  starts[stages[stage]?.counted === 'start' ? 0 : stage] as StartSoFar;

export function copyOfCooling(cooling: CoolingSoFar): CoolingSoFar {
  const before = copyOfBeforeTheEnd(cooling.before);
  return {
    limit: cooling.limit,
    before,
    starts: cooling.starts.map((start) => copyOfStart(start, before)),
    ends: cooling.ends.map(copyOfEnd),
    upper: cooling.upper,
    error: cooling.error,
    coldFrom: cooling.coldFrom,
    readings: cooling.readings,
    last: cooling.last,
  };
}
