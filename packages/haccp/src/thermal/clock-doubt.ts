import { clocksDiffer, SAME_MINUTE } from '../timing/flag-times';
import type { AsKept } from './instant';

const HOUR = 3_600_000;
const DAY = 24 * HOUR;
/** Steps within a minute of each other are even; three equal ones are a logger's. Common practice, no source. */
const EVEN = 60_000;
const LOGGER = 2;

/** Shows a wrong clock. Nothing is met by it until a person says that the time is right. */
export type ClockDoubt = 'in the future' | 'clock reset' | 'an hour off' | 'out of order';

type Timed = AsKept & { at: number };

/** Readings are in order of arrival. */
export type ClockSoFar = {
  before?: number;
  /** Milliseconds from the time of the last reading to its arrival; NaN where unknown. */
  late: number;
  /** Last step, and how often in a row it came again: nearly, and exactly. */
  usual: number;
  again: number;
  exactly: number;
  doubted: ClockDoubt[];
  /** Latest instant that no person called right (epoch ms). */
  latest: number;
};

export const beginClock = (): ClockSoFar => ({
  before: undefined,
  late: NaN,
  usual: 0,
  again: 0,
  exactly: 0,
  doubted: [],
  latest: -Infinity,
});

/** Readings come in order of arrival. */
export function doubtOfClock(clock: ClockSoFar, reading: Timed): ClockDoubt | undefined {
  const { at, arrivedAt = Infinity, word } = reading;
  const late = arrivedAt - at;
  const step = at - (clock.before ?? at);
  const doubt = -late > clocksDiffer ? 'in the future' : doubtOfStep(clock, step, late);
  clock.late = late;
  if (step >= 0 || step < -SAME_MINUTE) clock.before = at;
  if (step > 0 && !doubt) {
    clock.exactly = step === clock.usual ? clock.exactly + 1 : 0;
    clock.again = Math.abs(step - clock.usual) <= EVEN ? clock.again + 1 : 0;
    clock.usual = step;
  }
  if (word === 'time is right') return undefined;
  clock.latest = Math.max(clock.latest, at);
  if (doubt && !clock.doubted.includes(doubt)) clock.doubted.push(doubt);
  return doubt;
}

function doubtOfStep(clock: ClockSoFar, step: number, late: number): ClockDoubt | undefined {
  if (isHourInSteps(clock, step, late) || isHourByArrival(clock, step, late)) return 'an hour off';
  if (step < -DAY || step > 365 * DAY) return 'clock reset';
  return step < -SAME_MINUTE ? 'out of order' : undefined;
}

/**
 * An hour back, or an hour more than even steps, is a changed clock: a logger does not pause. After two even steps by
 * hand it is doubted only where readings were kept later; kept at once, the keeping clock saw the pause too. At steps
 * of an hour or more one reading was left out.
 */
function isHourInSteps({ usual, again, exactly, late: wasLate }: ClockSoFar, step: number, late: number): boolean {
  if (usual === 0 || usual >= HOUR) return false;
  if (step < 0) return Math.abs(step - usual + HOUR) <= EVEN;
  if (exactly >= LOGGER && step - usual === HOUR) return true;
  const isKeptLater = Number.isFinite(late) && !(isWithin(wasLate) && isWithin(late));
  return again > 0 && isKeptLater && Math.abs(step - usual - HOUR) <= EVEN;
}

/**
 * Kept an hour late after one kept at once: set back. Kept at once after one kept an hour late: set forward, unless
 * both were kept together and the first was only written down late.
 */
function isHourByArrival({ late: wasLate }: ClockSoFar, step: number, late: number): boolean {
  if (isWithin(wasLate) && isWithin(late - HOUR)) return true;
  return isWithin(wasLate - HOUR) && isWithin(late) && step + late - wasLate > clocksDiffer;
}

const isWithin = (difference: number): boolean => Math.abs(difference) <= clocksDiffer;

/** An instant after `now` cannot have been read. */
export function clockDoubts({ doubted, latest }: ClockSoFar, now: number | undefined): ClockDoubt[] {
  const isToCome = now !== undefined && latest - now > clocksDiffer;
  return isToCome && !doubted.includes('in the future') ? ['in the future', ...doubted] : doubted;
}

export const copyOfClock = (clock: ClockSoFar): ClockSoFar => ({
  before: clock.before,
  late: clock.late,
  usual: clock.usual,
  again: clock.again,
  exactly: clock.exactly,
  doubted: [...clock.doubted],
  latest: clock.latest,
});

/** Readings not kept yet come last; the order stays where nothing says when they were kept. */
export function inOrderOfArrival<Read extends AsKept>(readings: readonly Read[]): readonly Read[] {
  let last = -Infinity;
  const isInOrder = readings.every((reading) => {
    const arrived = arrivalOf(reading);
    const isLater = arrived >= last;
    last = arrived;
    return isLater;
  });
  return isInOrder ? readings : [...readings].sort((a, b) => Number(arrivalOf(a) > arrivalOf(b)) - Number(arrivalOf(a) < arrivalOf(b)));
}

const arrivalOf = (reading: AsKept): number => reading?.arrivedAt ?? Infinity;
