import { DEGREE } from '../../lethality/celsius';
import type { GrowthLimit } from './growth-limit';
import { millisecondsOf } from '../../quantity/duration';
import { beginBeforeTheEnd, beginsAnew, copyOfBeforeTheEnd, type BeforeTheEnd } from '../../thermal/before-the-end';
import type { Instant } from '../../thermal/instant';
import { growthOver, withLag } from '../../growth/growth-over';
import { fastestBetween, fastestCelsius } from '../../growth/growth-rate';
import { growthSetsFor, type GrowthSet } from '../../growth/growth-set';

const HOUR = 3_600_000;

/** By every set that may apply. Constant in size, however many readings. */
export type GrowthSoFar = {
  readonly limit: GrowthLimit;
  /** Error of a reading, °C. */
  readonly error: number;
  readonly before: BeforeTheEnd;
  readonly longestGap: number;
  sums: SetSum[];
  /** With growth in it (ms); 0 where there is none. */
  gap: number;
  readings: number;
  /** The first reading was already in the range of growth: some of it was not seen. */
  startUnseen: boolean;
  last?: Instant;
  lastCold: number;
  lastWarm: number;
};

/** log10 without lag: at most, by the fastest rate of each step; and by straight lines. */
type SetSum = {
  readonly set: GrowthSet;
  readonly fastest: number;
  atMost: number;
  byStraightLines: number;
  /** Fastest rate of the last step, and its temperature where level; else NaN. */
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

/** Heating is not counted: the chill begins anew after it. */
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

/** Each reading of a heating core starts it again; an empty sum stays. */
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

/** Loggers repeat one figure: the rate at a level temperature is computed once. */
function rateAt(sum: SetSum, low: number, high: number): void {
  sum.most = fastestBetween(sum.set, sum.fastest, low, high);
  sum.level = low === high ? low : NaN;
}

/** log10 with lag, of the set that gives the most. */
export type GrowthFigure = { set: GrowthSet; atMost: number; byStraightLines: number };

export const highestOf = (growth: GrowthSoFar): GrowthFigure => mostBy('atMost', growth);

/** A set may be passed by straight lines alone where another has the higher worst case. */
export const highestByStraightLines = (growth: GrowthSoFar): GrowthFigure => mostBy('byStraightLines', growth);

const mostBy = (what: 'atMost' | 'byStraightLines', { sums }: GrowthSoFar): GrowthFigure =>
  sums
    .map(({ set, atMost, byStraightLines }) => ({
      set,
      atMost: withLag(set, atMost),
      byStraightLines: withLag(set, byStraightLines),
    }))
    .reduce((most, one) => (one[what] > most[what] ? one : most));

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
