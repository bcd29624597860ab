import { onCommonScale } from '../quantity/convert-degrees';
import { copyOfSpeed, takeForCore, tooFast, type CoreSpeed, type TooFast } from './core-speed';
import type { Instant } from './instant';

/** Why a reading can hardly be the core's, though it can be a temperature. */
export type Doubt = TooFast | 'goes on from what was not of the core' | 'spike' | 'power-up' | 'hotter than a core';

const perDegree = onCommonScale({ hundredths: 100, unit: '°C' });

/** A moist core does not get hotter; 110 to 212 typed under °C is likely Fahrenheit. Common practice, no source. */
const HOTTEST_CORE = 110 * perDegree;
/**
 * A lone reading so far from both its neighbours, which are close to each other in temperature and time. Common
 * practice, no source.
 */
const SPIKE = { off: 8 * perDegree, neighbours: 2 * perDegree, within: 10 * 60_000 };
/** What some digital probes show until they have measured. */
const POWER_UP = onCommonScale({ hundredths: 8500, unit: '°C' });

/**
 * A probe that lies beside the core stays there until somebody puts it back: so near in temperature and time to the one
 * before, it has not been moved. Common practice, no source.
 */
const UNMOVED = { within: 15 * 60_000, near: 4 * perDegree };

/** What is needed to doubt the next reading: how a core can have moved, and the last reading taken for one. */
export type DoubtSoFar = {
  readonly speed: CoreSpeed;
  before?: Instant;
  /** Far from those of the core, and said by a person not to be of it; or the last that goes on from it. */
  beside?: Instant;
  /** A reading moved faster than the core of the piece can: nothing is met until a person says which was not of it. */
  isTooFast: boolean;
};

export const noDoubt = (speed: CoreSpeed): DoubtSoFar => ({
  speed,
  before: undefined,
  beside: undefined,
  isTooFast: false,
});

/**
 * Whether a reading can be the core's, judged beside those before it that can be, and the next. One in doubt is kept and
 * counts against the lot; those after it are held against the ones before it, so that a core must have had the time.
 * @param next the one after it; undefined for the last one
 */
export function doubtOf(known: DoubtSoFar, own: Instant, next: Instant | undefined): Doubt | undefined {
  const fast = tooFast(known.speed, own);
  if (fast) known.isTooFast = true;
  const goesOn = isUnmoved(known, own);
  known.beside = goesOn ? own : undefined;
  const doubt = lonely(known.before, own, next) ?? fast ?? (goesOn ? 'goes on from what was not of the core' : undefined);
  if (doubt === undefined) {
    takeForCore(known.speed, own);
    known.before = own;
  }
  return doubt;
}

export const copyOfDoubt = (known: DoubtSoFar): DoubtSoFar => ({
  speed: copyOfSpeed(known.speed),
  before: known.before,
  beside: known.beside,
  isTooFast: known.isTooFast,
});

/** Takes in that a person said of a reading that it was not of the core. What lies near the core tells of no other place. */
export function takeBeside(known: DoubtSoFar, own: Instant): void {
  known.beside = known.before && !isFarFrom(own, known.before) ? undefined : own;
}

function isUnmoved({ beside, before }: DoubtSoFar, own: Instant): boolean {
  if (!beside || own.at - beside.at > UNMOVED.within) return false;
  const off = Math.abs(own.cold - beside.cold);
  return off <= UNMOVED.near && (!before || off < Math.abs(own.cold - before.cold));
}

/** So far from the one after it that it stands alone. */
export const isFarFrom = (own: Instant, next: Instant): boolean => Math.abs(own.cold - next.cold) > SPIKE.off;

function lonely(before: Instant | undefined, own: Instant, next: Instant | undefined): Doubt | undefined {
  if (own.cold > HOTTEST_CORE) return 'hotter than a core';
  if (!next || !isFarFrom(own, next)) return undefined;
  if (!before) return own.cold === POWER_UP ? 'power-up' : undefined;
  const areClose = Math.abs(next.cold - before.cold) < SPIKE.neighbours && next.at - before.at <= SPIKE.within;
  return isFarFrom(own, before) && areClose ? 'spike' : undefined;
}
