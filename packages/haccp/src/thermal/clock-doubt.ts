import { clocksDiffer } from '../timing/flag-times';
import type { AsKept } from './instant';

const HOUR = 3_600_000;
const DAY = 24 * HOUR;
/** A step that came three times is a logger's; readings by hand may pause for any time. Common practice, no source. */
const EVEN = 2;

/** What shows that the clock of a reading was wrong. Nothing is met by it until a person says that its time is right. */
export type ClockDoubt = 'in the future' | 'clock reset' | 'an hour off' | 'out of order';

type Timed = AsKept & { at: number };

/** What the clock showed up to the last reading, in the order in which the readings came. */
export type ClockSoFar = {
  before?: number;
  /** How long after its own time the reading before was kept; not a number where nothing says it. */
  late: number;
  /** The step between two readings, and how often it came again: a logger's is even until its clock is changed. */
  usual: number;
  again: number;
  doubted: ClockDoubt[];
  /** The latest instant that no person has called right (epoch ms). */
  latest: number;
};

export const beginClock = (): ClockSoFar => ({
  before: undefined, late: NaN, usual: 0, again: 0, doubted: [], latest: -Infinity,
});

/**
 * Takes in the next reading as it came, and says what is doubtful about its time. A step of exactly an hour more than
 * an even one, or an hour back, is a clock that was changed, not data; so is a reading kept an hour after its own time where
 * the one before was kept at once.
 */
export function doubtOfClock(clock: ClockSoFar, reading: Timed): ClockDoubt | undefined {
  const { at, arrivedAt = Infinity, word } = reading;
  const late = arrivedAt - at;
  const isSetBack = isWithin(clock.late) && isWithin(late - HOUR);
  clock.late = late;
  const step = at - (clock.before ?? at);
  clock.before = at;
  const doubt = -late > clocksDiffer ? 'in the future' : doubtOfStep(clock, step, isSetBack);
  if (step > 0 && !doubt) {
    clock.again = step === clock.usual ? clock.again + 1 : 0;
    clock.usual = step;
  }
  if (word === 'time is right') return undefined;
  clock.latest = Math.max(clock.latest, at);
  if (doubt && !clock.doubted.includes(doubt)) clock.doubted.push(doubt);
  return doubt;
}

/** Of two clocks that agree. */
const isWithin = (difference: number): boolean => Math.abs(difference) <= clocksDiffer;

function doubtOfStep({ usual, again }: ClockSoFar, step: number, isSetBack: boolean): ClockDoubt | undefined {
  const isChanged = usual > 0 && usual < HOUR && Math.abs(step - usual) === HOUR;
  if (isChanged && (again >= EVEN || step < 0)) return 'an hour off';
  if (step < -DAY || step > 365 * DAY) return 'clock reset';
  if (step < 0) return 'out of order';
  return isSetBack ? 'an hour off' : undefined;
}

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
