import { DEGREE } from '../../lethality/celsius';
import type { GrowthLimit } from './growth-limit';
import { millisecondsOf } from '../../quantity/duration';
import { beginBeforeTheEnd, beginsAnew, copyOfBeforeTheEnd, type BeforeTheEnd } from '../../thermal/before-the-end';
import type { Instant } from '../../thermal/instant';
import { growthOver, withLag } from '../../growth/growth-over';
import { fastestBetween, fastestCelsius } from '../../growth/growth-rate';
import { growthSetsFor, type GrowthSet } from '../../growth/growth-set';

const HOUR = 3_600_000;

/** Growth while cooling up to the last reading added, by every set that may apply. It never grows with its readings. */
export type GrowthSoFar = {
  readonly limit: GrowthLimit;
  /** What a reading may be wrong by, °C. */
  readonly error: number;
  readonly before: BeforeTheEnd;
  readonly longestGap: number;
  sums: SetSum[];
  /** The longest gap with growth in it (ms); 0 where there is none. */
  gap: number;
  readings: number;
  /** The first reading of the chill was already where spores grow, so that some of it was not seen. */
  startUnseen: boolean;
  last?: Instant;
  lastCold: number;
  lastWarm: number;
};

/** log10 without lag by one set: at most, with the fastest rate between two readings; and by straight lines. */
type SetSum = {
  readonly set: GrowthSet;
  readonly fastest: number;
  atMost: number;
  byStraightLines: number;
  /** The fastest rate of the last step, and the temperature of it where it was level; NaN where it was not. */
  most: number;
  level: number;
};

export const beginGrowthLimit = (limit: GrowthLimit, error: number, startAt: number | undefined): GrowthSoFar => ({
  limit,
  error: error / DEGREE,
  before: beginBeforeTheEnd(startAt, error),
  longestGap: millisecondsOf(limit.longestGapSeconds),
  sums: growthSetsFor(limit.species).map((set) => beginSum(set, fastestCelsius(set))),
  gap: 0,
  readings: 0,
  startUnseen: false,
  last: undefined,
  lastCold: NaN,
  lastWarm: NaN,
});

const beginSum = (set: GrowthSet, fastest: number): SetSum => ({
  set,
  fastest,
  atMost: 0,
  byStraightLines: 0,
  most: 0,
  level: NaN,
});

/** Adds one reading, later than all before. What belongs to heating is not counted: the chill begins anew after it. */
export function addToGrowthLimit(growth: GrowthSoFar, instant: Instant): void {
  if (beginsAnew(growth.before, instant)) beginChill(growth);
  const cold = instant.cold / DEGREE - growth.error;
  const warm = instant.warm / DEGREE + growth.error;
  if (growth.last) addSpan(growth, cold, warm, instant.at - growth.last.at);
  else growth.startUnseen = growth.sums.some(({ set }) => cold < set.maxCelsius);
  growth.readings += 1;
  growth.last = instant;
  growth.lastCold = cold;
  growth.lastWarm = warm;
}

/** Each reading of a heating core begins it anew: what is there already is left. */
function beginChill(growth: GrowthSoFar): void {
  if (growth.readings === 0) return;
  growth.sums = growth.sums.map(({ set, fastest }) => beginSum(set, fastest));
  growth.gap = 0;
  growth.readings = 0;
  growth.last = undefined;
}

function addSpan(growth: GrowthSoFar, cold: number, warm: number, span: number): void {
  const low = Math.min(growth.lastCold, cold);
  const high = Math.max(growth.lastWarm, warm);
  const isLevel = low === high;
  const hours = span / HOUR;
  let grows = false;
  for (const sum of growth.sums) {
    if (!(isLevel && low === sum.level)) rateAt(sum, low, high);
    if (sum.most === 0) continue;
    grows = true;
    sum.atMost += hours * sum.most;
    sum.byStraightLines += isLevel ? hours * sum.most : growthOver(sum.set, growth.lastWarm, warm, hours);
  }
  if (grows && !(span <= growth.longestGap)) growth.gap = Math.max(growth.gap, span);
}

/** A logger shows one figure for many readings: the rate at a level temperature is worked out once. */
function rateAt(sum: SetSum, low: number, high: number): void {
  sum.most = fastestBetween(sum.set, sum.fastest, low, high);
  sum.level = low === high ? low : NaN;
}

/** log10 with the lag carried through, of the set by which it is the most. */
export type GrowthFigure = { set: GrowthSet; atMost: number; byStraightLines: number };

export const highestOf = ({ sums }: GrowthSoFar): GrowthFigure =>
  sums
    .map(({ set, atMost, byStraightLines }) => ({
      set,
      atMost: withLag(set, atMost),
      byStraightLines: withLag(set, byStraightLines),
    }))
    .reduce((most, one) => (one.atMost > most.atMost ? one : most));

/** Whether growth goes on at the last reading. */
export const isGrowing = ({ sums, lastWarm }: GrowthSoFar): boolean => sums.some(({ set }) => lastWarm > set.minCelsius);

export const copyOfGrowth = (growth: GrowthSoFar): GrowthSoFar => ({
  limit: growth.limit,
  error: growth.error,
  before: copyOfBeforeTheEnd(growth.before),
  longestGap: growth.longestGap,
  sums: growth.sums.map((sum) => ({
    set: sum.set,
    fastest: sum.fastest,
    atMost: sum.atMost,
    byStraightLines: sum.byStraightLines,
    most: sum.most,
    level: sum.level,
  })),
  gap: growth.gap,
  readings: growth.readings,
  startUnseen: growth.startUnseen,
  last: growth.last,
  lastCold: growth.lastCold,
  lastWarm: growth.lastWarm,
});
