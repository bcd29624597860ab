import { above, raised, type Bound } from '../../quantity/bound';
import type { BeforeTheEnd } from '../../thermal/before-the-end';
import { crossing } from '../../thermal/crossing';
import type { CurveReading } from '../../thermal/curve';
import { coldOver, warmOver, type Instant } from '../../thermal/instant';

/** The first reading after the core fell below a bound, the one before it, and where in the curve it stands. */
export type Fall = { index: number; at: number; below: Instant; before?: CurveReading };

/** The instant a cooling stage is counted from. */
export type CoolingStart = {
  /** The earliest the readings allow (epoch ms). */
  at: number;
  /** By a straight line between the readings. */
  straightAt: number;
  from: Bound;
  /** The first reading below the bound, or since cooking ended. */
  fall: Fall;
  /** The instant from which the stage is surely running (epoch ms). */
  surelyFrom: number;
  /** Why the true start may be earlier; undefined where it is known. */
  doubt?: StartDoubt;
};

/** Nothing was seen before the bound and nobody said when cooking ended; or it was said later than the core fell. */
export type StartDoubt = 'start unknown' | 'end of cooking late';

/** Where a curve fell below a bound, up to the last reading added. */
export type StartSoFar = {
  readonly from: Bound;
  /**
   * `first` fall for the first stage; `last` for a later one, since the time before it is charged to the stage before;
   * no fall at all where the clock starts when cooking ends.
   */
  readonly which: 'first' | 'last' | 'end of cooking';
  /** The same for every stage of a chill. */
  readonly before: BeforeTheEnd;
  /** A reading may be wrong by so much, on the common scale. */
  readonly error: number;
  wasHot: boolean;
  isOver: boolean;
  /** Of the run the hottest, over the bound. */
  hottest: number;
  /** Of all readings the hottest, and the coldest since. */
  peak: number;
  coldest: number;
  fall?: Fall;
  /** Since the fall it is counted from, the first reading that is surely below, whatever the thermometer is off by. */
  surely?: { of: Fall; at: number };
  /** The first reading once cooking had ended, or was falling already: the start of a curve that was never seen hot. */
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

/** Adds one reading. @param last the one before it @param isAnew the chill is counted from this one, see above */
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
 * The first run of hot readings; a run that ended while still cooking gives way to one in which the core was heated
 * again to its peak. With an error allowed for, the fall is the first reading from the peak of that run that may have
 * been below: on the way up it is not.
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

/** Back at its peak before cooking ended, from surely below it. A bounce on the way down is no second cooking. */
function isHeatedAgain(start: StartSoFar, { at, cold, warm }: Instant): boolean {
  const { ended = -Infinity, margin } = start.before;
  const isBack = at <= ended && cold >= start.peak && cold > start.coldest + margin;
  start.coldest = warm >= start.peak ? warm : Math.min(start.coldest, warm);
  start.peak = Math.max(start.peak, warm);
  return isBack;
}

/** The fall a stage is counted from; undefined while no reading is below the bound. */
export const fallOf = (start: StartSoFar): Fall | undefined => (start.wasHot ? start.fall : start.firstChilled);

/** The worst case: the last reading at or above the bound before the core fell below it. */
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

/** Where no reading above the bound came before, only the record can tell the start: one that the readings bear out. */
function neverSeenAbove({ before: { ended, isLate }, from, wasHot }: StartSoFar, fall: Fall): CoolingStart {
  const wasBelowThen = fall.at === ended && !wasHot; // no cooking ends with the core where a chill is running
  const isBorneOut = ended !== undefined && !isLate && !wasBelowThen;
  const at = isBorneOut ? ended : fall.at;
  const doubt = isBorneOut ? undefined : ended === undefined ? 'start unknown' : 'end of cooking late';
  return { at, straightAt: at, from, fall, surelyFrom: fall.at, doubt };
}

/** The recorded end of cooking; from the peak before it at the worst, where the core was falling already. */
function endOfCooking({ before: { ended, isLate }, from }: StartSoFar, fall: Fall): CoolingStart {
  const recorded = ended as number; // a stage that counts from it has no clock without it
  const at = isLate ? fall.at : recorded;
  const doubt = isLate ? 'end of cooking late' : undefined;
  return { at, straightAt: recorded, from, fall, surelyFrom: recorded, doubt };
}
