import { onCommonScale } from '../quantity/convert-degrees';
import { copyOfSpeed, takeForCore, tooFast, type CoreSpeed, type TooFast } from './core-speed';
import type { Instant } from './instant';

export type Doubt = TooFast | 'goes on from what was not of the core' | 'spike' | 'power-up' | 'hotter than a core';

const perDegree = onCommonScale({ hundredths: 100, unit: '°C' });

/** A moist core stays below; 110 to 212 typed under °C is likely Fahrenheit. Common practice, no source. */
const HOTTEST_CORE = 110 * perDegree;
/** A lone reading far from both neighbours, which are close in temperature and time. Common practice, no source. */
const SPIKE = { off: 8 * perDegree, neighbours: 2 * perDegree, within: 10 * 60_000 };
/** Some digital probes show 85 °C until they have measured. */
const POWER_UP = onCommonScale({ hundredths: 8500, unit: '°C' });

/**
 * A probe beside the core stays until somebody moves it: near in temperature and time to the reading before, it has not
 * moved. Common practice, no source.
 */
const UNMOVED = { within: 15 * 60_000, near: 4 * perDegree };

/** `before` is the last reading taken for the core's. */
export type DoubtSoFar = {
  readonly speed: CoreSpeed;
  before?: Instant;
  /** A person called it not of the core and it is far from the core, or it continues such a reading. */
  beside?: Instant;
  /** Nothing is met until a person says which reading was not of the core. */
  isTooFast: boolean;
};

export const noDoubt = (speed: CoreSpeed): DoubtSoFar => ({
  speed,
  before: undefined,
  beside: undefined,
  isTooFast: false,
});

/**
 * Beside the earlier readings that can be the core's, and the next. A doubted reading is kept and counts against the
 * lot; later ones are compared with those before it, so that a core must have had the time. @param next undefined for
 * the last one
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

/** A set-aside reading near the core tells of no other place. */
export function takeBeside(known: DoubtSoFar, own: Instant): void {
  known.beside = known.before && !isFarFrom(own, known.before) ? undefined : own;
}

function isUnmoved({ beside, before }: DoubtSoFar, own: Instant): boolean {
  if (!beside || own.at - beside.at > UNMOVED.within) return false;
  const off = Math.abs(own.cold - beside.cold);
  return off <= UNMOVED.near && (!before || off < Math.abs(own.cold - before.cold));
}

export const isFarFrom = (own: Instant, next: Instant): boolean => Math.abs(own.cold - next.cold) > SPIKE.off;

function lonely(before: Instant | undefined, own: Instant, next: Instant | undefined): Doubt | undefined {
  if (own.cold > HOTTEST_CORE) return 'hotter than a core';
  if (!next || !isFarFrom(own, next)) return undefined;
  if (!before) return own.cold === POWER_UP ? 'power-up' : undefined;
  const areClose = Math.abs(next.cold - before.cold) < SPIKE.neighbours && next.at - before.at <= SPIKE.within;
  return isFarFrom(own, before) && areClose ? 'spike' : undefined;
}
