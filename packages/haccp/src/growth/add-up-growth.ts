import { DEGREE } from '../lethality/celsius';
import { beginBeforeTheEnd, beginsAnew, NOISE, type BeforeTheEnd } from '../thermal/before-the-end';
import { GROWTH_CLAIM, GROWTH_MODEL, type Growth, type Unseen } from './growth';
import { growthOver, withLag } from './growth-over';
import { fastestBetween, fastestCelsius } from './growth-rate';
import type { GrowthSet } from './growth-set';

export type GrowthOptions = {
  /** End of cooking (epoch ms): readings before it are heating, unless the core was falling already. */
  cookingEnded?: number;
  /** Milliseconds. Default 15 min, common practice, no source. */
  longestGap?: number;
};

const HOUR = 3_600_000;
const LONGEST_GAP = 15 * 60_000;

/** Two values where two were noted for one instant. */
export type ReadAt = { at: number; colder: number; warmer: number };

/** Without lag. Constant in size, however many readings. */
export type GrowthSum = {
  readonly set: GrowthSet;
  readonly fastest: number;
  readonly longestGap: number;
  readonly before: BeforeTheEnd;
  byStraightLines: number;
  atMost: number;
  readings: number;
  startUnseen: boolean;
  from: number;
  last: ReadAt;
};

export const beginGrowth = (set: GrowthSet, { cookingEnded, longestGap = LONGEST_GAP }: GrowthOptions = {}): GrowthSum => ({
  set,
  fastest: fastestCelsius(set),
  longestGap,
  before: beginBeforeTheEnd(Number.isFinite(cookingEnded) ? cookingEnded : undefined, 0, NOISE / DEGREE),
  byStraightLines: 0,
  atMost: 0,
  readings: 0,
  startUnseen: false,
  from: NaN,
  last: { at: NaN, colder: NaN, warmer: NaN },
});

/** °C and epoch ms, in order of time. */
export function addToGrowth(sum: GrowthSum, read: ReadAt): void {
  if (beginsAnew(sum.before, { at: read.at, cold: read.colder, warm: read.warmer })) begin(sum, read);
  else addSegment(sum, sum.last, read);
  sum.readings += 1;
  sum.last = read;
}

/** At the end of cooking the core was too hot for growth; its way to the first reading is unseen. */
function begin(sum: GrowthSum, { at, colder }: ReadAt): void {
  const { ended = at } = sum.before;
  sum.from = at;
  sum.readings = 0;
  sum.byStraightLines = 0;
  sum.startUnseen = colder < sum.set.maxCelsius;
  const unseen = Math.max(0, hours(ended, at));
  sum.atMost = unseen * fastestBetween(sum.set, sum.fastest, colder, sum.set.maxCelsius);
}

function addSegment(sum: GrowthSum, before: ReadAt, read: ReadAt): void {
  const { set, fastest } = sum;
  const straight = growthOver(set, before.warmer, read.warmer, hours(before.at, read.at));
  const isClear = before.colder === before.warmer && read.colder === read.warmer;
  const low = Math.min(before.colder, read.colder);
  const high = Math.max(before.warmer, read.warmer);
  const isGap = !(read.at - before.at <= sum.longestGap);
  sum.byStraightLines += straight;
  sum.atMost += isClear && !isGap ? straight : hours(before.at, read.at) * fastestBetween(set, fastest, low, high);
}

export function growthOf(sum: GrowthSum): Growth {
  const { set, last, byStraightLines, atMost } = sum;
  const unseen: Unseen[] = [];
  if (sum.startUnseen) unseen.push('before the first reading');
  if (last.warmer > set.minCelsius) unseen.push('after the last reading');
  return {
    is: 'model estimate',
    model: GROWTH_MODEL,
    set,
    byStraightLines: { noLag: byStraightLines, withLag: withLag(set, byStraightLines) },
    atMost: { noLag: atMost, withLag: withLag(set, atMost) },
    unseen,
    restsOn: { readings: sum.readings, from: sum.from, to: last.at },
    claim: GROWTH_CLAIM,
  };
}

const hours = (from: number, to: number): number => (to - from) / HOUR;
