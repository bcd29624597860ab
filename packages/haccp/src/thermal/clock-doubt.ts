import { clocksDiffer, SAME_MINUTE } from '../timing/flag-times';
import type { AsKept } from './instant';

const HOUR = 3_600_000;
const DAY = 24 * HOUR;
/** Two steps within a minute of each other are even; the very same three times over is a logger's. Common practice, no source. */
const EVEN = 60_000;
const LOGGER = 2;

/** What shows that the clock of a reading was wrong. Nothing is met by it until a person says that its time is right. */
export type ClockDoubt = 'in the future' | 'clock reset' | 'an hour off' | 'out of order';

type Timed = AsKept & { at: number };

/** What the clock showed up to the last reading, in the order in which the readings came. */
export type ClockSoFar = {
  before?: number;
  /** How long after its own time the reading before was kept; not a number where nothing says it. */
  late: number;
  /** The step between the last two readings; how often in a row it came again, about the same and exactly so. */
  usual: number;
  again: number;
  exactly: number;
  doubted: ClockDoubt[];
  /** The latest instant that no person has called right (epoch ms). */
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

/** Takes in the next reading as it came, and says what is doubtful about its time. */
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
 * An hour back, or an hour more than even steps: a clock that was changed, not data. A logger does not pause. After two
 * even steps of a hand a longer one is doubtful where the readings were kept later; kept at once, the clock that kept them
 * saw the pause too. At steps of an hour or more it is one reading that was left out.
 */
function isHourInSteps({ usual, again, exactly, late: wasLate }: ClockSoFar, step: number, late: number): boolean {
  if (usual === 0 || usual >= HOUR) return false;
  if (step < 0) return Math.abs(step - usual + HOUR) <= EVEN;
  if (exactly >= LOGGER && step - usual === HOUR) return true;
  const isKeptLater = Number.isFinite(late) && !(isWithin(wasLate) && isWithin(late));
  return again > 0 && isKeptLater && Math.abs(step - usual - HOUR) <= EVEN;
}

/**
 * Kept an hour after its own time where the one before was kept at once: set back. Kept at once where the one before was
 * kept an hour after its time: set forward, unless both were kept together, when the first was only written down late.
 */
function isHourByArrival({ late: wasLate }: ClockSoFar, step: number, late: number): boolean {
  if (isWithin(wasLate) && isWithin(late - HOUR)) return true;
  return isWithin(wasLate - HOUR) && isWithin(late) && step + late - wasLate > clocksDiffer;
}

/** Of two clocks that agree. */
const isWithin = (difference: number): boolean => Math.abs(difference) <= clocksDiffer;

/** What is doubtful in all, `now` being told: an instant that is yet to come cannot have been read. */
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

/** In the order in which they were kept, those not kept yet last; as they stand where nothing says when they were. */
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
