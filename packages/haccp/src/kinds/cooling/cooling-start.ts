import { above, raised, type Bound } from '../../quantity/bound';
import type { BeforeTheEnd } from '../../thermal/before-the-end';
import { crossing } from '../../thermal/crossing';
import type { CurveReading } from '../../thermal/curve';
import { coldOver, warmOver, type Instant } from '../../thermal/instant';

/** First reading below a bound, the one before it, and its place in the curve. */
export type Fall = { index: number; at: number; below: Instant; before?: CurveReading };

export type CoolingStart = {
  /** Earliest possible (epoch ms). */
  at: number;
  /** By a straight line. */
  straightAt: number;
  from: Bound;
  /** First reading below the bound, or since cooking ended. */
  fall: Fall;
  /** The stage surely runs from here (epoch ms). */
  surelyFrom: number;
  doubt?: StartDoubt;
};

/** Unknown: never seen above the bound, and no recorded end. Late: recorded after the core fell. */
export type StartDoubt = 'start unknown' | 'end of cooking late';

export type StartSoFar = {
  readonly from: Bound;
  /** `last` for later stages, since the time before is charged to the stage before; `end of cooking` needs no fall. */
  readonly which: 'first' | 'last' | 'end of cooking';
  readonly before: BeforeTheEnd;
  /** Error of a reading, on the common scale. */
  readonly error: number;
  wasHot: boolean;
  isOver: boolean;
  /** Hottest of the run, above the bound. */
  hottest: number;
  /** Hottest of all readings, and the coldest since. */
  peak: number;
  coldest: number;
  fall?: Fall;
  /** First reading since the fall that is below whatever the error. */
  surely?: { of: Fall; at: number };
  /** First reading after cooking, or already falling: starts a curve that was never seen hot. */
  firstChilled?: Fall;
};

export const beginStart = (from: Bound, which: StartSoFar['which'], before: BeforeTheEnd, error: number): StartSoFar => ({
  from,
  which,
  before,
  error,
  wasHot: false,
  isOver: false,
  hottest: -Infinity,
  peak: -Infinity,
  coldest: Infinity,
  fall: undefined,
  surely: undefined,
  firstChilled: undefined,
});

export const copyOfStart = (start: StartSoFar, before: BeforeTheEnd): StartSoFar => ({
  from: start.from,
  which: start.which,
  before,
  error: start.error,
  wasHot: start.wasHot,
  isOver: start.isOver,
  hottest: start.hottest,
  peak: start.peak,
  coldest: start.coldest,
  fall: start.fall,
  surely: start.surely,
  firstChilled: start.firstChilled,
});

/** @param last the one before it @param isAnew the chill counts from this reading */
export function addToStart(start: StartSoFar, index: number, own: Instant, last: Instant | undefined, isAnew: boolean): void {
  if (isAnew) start.firstChilled = fallAt(index, own, last);
  if (start.which === 'end of cooking') return;
  const isBelow = start.which === 'last' ? isLastFall(start, own) : isFirstFall(start, own);
  if (isBelow && !start.fall) start.fall = fallAt(index, own, last);
  noteSurelyBelow(start, own);
}

function noteSurelyBelow(start: StartSoFar, own: Instant): void {
  const fall = fallOf(start);
  if (start.surely?.of === fall) return;
  const isBelow = fall !== undefined && warmOver(own, start.from) < -start.error;
  start.surely = isBelow ? { of: fall, at: own.at } : undefined;
}

const fallAt = (index: number, below: Instant, last: Instant | undefined): Fall => ({
  index,
  at: below.at,
  below,
  before: last?.colder,
});

function isLastFall(start: StartSoFar, own: Instant): boolean {
  const value = coldOver(own, start.from);
  if (value >= 0) start.wasHot = true;
  if (value >= start.error) start.fall = undefined;
  return value < start.error && start.wasHot;
}

/**
 * A hot run that ended while cooking yields to one heated again to the peak. Within the error, the fall is the first
 * reading from the peak on that may be below: on the way up it is not.
 */
function isFirstFall(start: StartSoFar, own: Instant): boolean {
  const value = coldOver(own, start.from);
  const isHot = value >= 0;
  const isAgain = isHeatedAgain(start, own);
  if (isHot && (isAgain || !start.wasHot)) {
    start.wasHot = true;
    start.isOver = false;
    start.hottest = -Infinity;
  }
  if (!start.wasHot || start.isOver) return false;
  if (value > start.hottest) {
    start.hottest = value;
    start.fall = undefined;
  }
  start.isOver = !isHot;
  return value < start.error || !isHot;
}

/** Back at the peak before cooking ended, from surely below it. A bounce on the way down is no second cooking. */
function isHeatedAgain(start: StartSoFar, { at, cold, warm }: Instant): boolean {
  const { ended = -Infinity, margin } = start.before;
  const isBack = at <= ended && cold >= start.peak && cold > start.coldest + margin;
  start.coldest = warm >= start.peak ? warm : Math.min(start.coldest, warm);
  start.peak = Math.max(start.peak, warm);
  return isBack;
}

/** Undefined while no reading is below the bound. */
export const fallOf = (start: StartSoFar): Fall | undefined => (start.wasHot ? start.fall : start.firstChilled);

/** Worst case: the last reading at or above the bound before the fall. */
export function startOf(start: StartSoFar): CoolingStart | undefined {
  const fall = fallOf(start);
  if (!fall) return undefined;
  if (start.which === 'end of cooking') return endOfCooking(start, fall);
  const { isLate, ended } = start.before;
  const { before } = fall;
  if (!start.wasHot || !before) return neverSeenAbove(start, fall);
  const earliest = ended !== undefined && !isLate && fall.at >= ended ? ended : -Infinity;
  const bound = raised(start.from, start.error);
  const isAbove = above(before.temperature, bound) >= 0;
  const straightAt = isAbove ? crossing(before, fall.below.colder, bound) : before.at;
  return {
    at: Math.max(before.at, earliest),
    straightAt: Math.max(straightAt, earliest),
    from: start.from,
    fall,
    surelyFrom: fall.at,
  };
}

/** Only a record that the readings confirm tells such a start. */
function neverSeenAbove({ before: { ended, isLate }, from, wasHot }: StartSoFar, fall: Fall): CoolingStart {
  const wasBelowThen = fall.at === ended && !wasHot; // cooking does not end with the core where a chill is running
  const isBorneOut = ended !== undefined && !isLate && !wasBelowThen;
  const at = isBorneOut ? ended : fall.at;
  const doubt = isBorneOut ? undefined : ended === undefined ? 'start unknown' : 'end of cooking late';
  return { at, straightAt: at, from, fall, surelyFrom: fall.at, doubt };
}

/** From the peak before it where the core was falling already: the worst case. */
function endOfCooking({ before: { ended, isLate }, from }: StartSoFar, fall: Fall): CoolingStart {
  const recorded = ended as number; // a stage that counts from it has no clock without it
  const at = isLate ? fall.at : recorded;
  const doubt = isLate ? 'end of cooking late' : undefined;
  return { at, straightAt: recorded, from, fall, surelyFrom: recorded, doubt };
}
