import { above, raised, type Bound } from '../quantity/bound';
import { crossing } from './crossing';
import type { CurveReading } from './curve';
import { coldOver, type Instant } from './instant';

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
  /**
   * False when the first reading was already below the bound and nobody said when cooking ended: the true start is
   * earlier.
   */
  isKnown: boolean;
};

/** Where a curve fell below a bound, up to the last reading added. */
export type StartSoFar = {
  readonly from: Bound;
  /**
   * `first` fall for the first stage; `last` for a later one, since the time before it is charged to the stage before;
   * no fall at all where the clock starts when cooking ends.
   */
  readonly which: 'first' | 'last' | 'end of cooking';
  /** When cooking ended (epoch ms); readings before it belong to heating. */
  readonly cookingEnded: number | undefined;
  /** A reading may be wrong by so much, on the common scale. */
  readonly error: number;
  wasHot: boolean;
  isOver: boolean;
  hottest: number;
  /** Of a clock that starts when cooking ends: the last hottest reading before that (epoch ms). */
  hottestAt?: number;
  fall?: Fall;
  /** The first reading once cooking had ended: the start of a curve that was never seen hot. */
  firstChilled?: Fall;
};

export const beginStart = (
  from: Bound,
  which: StartSoFar['which'],
  cookingEnded: number | undefined,
  error: number,
): StartSoFar => ({
  from,
  which,
  cookingEnded,
  error,
  wasHot: false,
  isOver: false,
  hottest: -Infinity,
  hottestAt: undefined,
  fall: undefined,
  firstChilled: undefined,
});

export const copyOfStart = (start: StartSoFar): StartSoFar => ({
  from: start.from,
  which: start.which,
  cookingEnded: start.cookingEnded,
  error: start.error,
  wasHot: start.wasHot,
  isOver: start.isOver,
  hottest: start.hottest,
  hottestAt: start.hottestAt,
  fall: start.fall,
  firstChilled: start.firstChilled,
});

/** Adds one reading. @param last the one before it */
export function addToStart(start: StartSoFar, index: number, own: Instant, last: Instant | undefined): void {
  const { cookingEnded } = start;
  if (!start.firstChilled && (cookingEnded === undefined || own.at >= cookingEnded)) {
    start.firstChilled = fallAt(index, own, last);
  }
  if (start.which === 'end of cooking') return addBeforeEnd(start, own);
  const isBelow = start.which === 'last' ? isLastFall(start, own) : isFirstFall(start, own);
  if (isBelow && !start.fall) start.fall = fallAt(index, own, last);
}

function addBeforeEnd(start: StartSoFar, own: Instant): void {
  if (start.firstChilled || own.warm < start.hottest) return;
  start.hottest = own.warm;
  start.hottestAt = own.at;
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
 * The first run of hot readings; a run that ended while still cooking gives way to the next. With an error allowed for,
 * the fall is the first reading from the peak of that run that may have been below: on the way up it is not.
 */
function isFirstFall(start: StartSoFar, own: Instant): boolean {
  const value = coldOver(own, start.from);
  const isHot = value >= 0;
  const isCooking = start.cookingEnded !== undefined && own.at <= start.cookingEnded;
  if (isHot && (isCooking || !start.wasHot)) {
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

/** The fall a stage is counted from; undefined while no reading is below the bound. */
export const fallOf = (start: StartSoFar): Fall | undefined => (start.wasHot ? start.fall : start.firstChilled);

/** The worst case: the last reading at or above the bound before the core fell below it. */
export function startOf(start: StartSoFar): CoolingStart | undefined {
  const fall = fallOf(start);
  if (!fall) return undefined;
  if (start.which === 'end of cooking') return endOfCooking(start, fall);
  const { cookingEnded } = start;
  const { before } = fall;
  if (!start.wasHot || !before) {
    const at = start.wasHot ? Math.min(cookingEnded ?? fall.at, fall.at) : (cookingEnded ?? fall.at);
    const isKnown = cookingEnded !== undefined && at === cookingEnded;
    return { at, straightAt: at, from: start.from, fall, surelyFrom: fall.at, isKnown };
  }
  const earliest = cookingEnded !== undefined && fall.at >= cookingEnded ? cookingEnded : -Infinity;
  const bound = raised(start.from, start.error);
  const isAbove = above(before.temperature, bound) >= 0;
  const straightAt = isAbove ? crossing(before, fall.below.colder, bound) : before.at;
  return {
    at: Math.max(before.at, earliest),
    straightAt: Math.max(straightAt, earliest),
    from: start.from,
    fall,
    surelyFrom: fall.at,
    isKnown: true,
  };
}

/**
 * The recorded end of cooking. A core that was hotter before it than at the first reading since may have been cooling
 * from its hottest on: the end was written down late, and the worst case begins there.
 */
function endOfCooking({ cookingEnded, hottest, hottestAt, from }: StartSoFar, fall: Fall): CoolingStart {
  const recorded = cookingEnded as number; // a stage that counts from it has no clock without it
  const at = hottestAt !== undefined && fall.below.warm < hottest ? hottestAt : recorded;
  return { at, straightAt: recorded, from, fall, surelyFrom: recorded, isKnown: true };
}
