import { onCommonScale } from '../quantity/convert-degrees';
import type { CurveReading } from './curve';

/** Why a reading can hardly be the core's, though it can be a temperature. */
export type Doubt = 'spike' | 'out of the product' | 'power-up' | 'hotter than a core';

const perDegree = onCommonScale({ hundredths: 100, unit: '°C' });

/** A moist core does not get hotter; 110 to 212 typed under °C is likely Fahrenheit. Common practice, no source. */
const HOTTEST_CORE = 110 * perDegree;
/** A lone reading so far from both its neighbours, which are close to each other in temperature and time. */
const SPIKE = { off: 8 * perDegree, neighbours: 2 * perDegree, within: 10 * 60_000 };
/**
 * A core that falls further than this in a minute is no core. Worked out for the quickest: a sausage of 22 mm at 68 °C
 * whose skin is at once at 0 °C (diffusivity 1.3e-7 m²/s) falls by at most 17 °C in a minute.
 */
const FALL = { by: 20 * perDegree, within: 60_000 };
/** Back in the product: near what it showed before, or risen so far from the coldest. */
const BACK = 8 * perDegree;
/** What some digital probes show until they have measured. */
const POWER_UP = onCommonScale({ hundredths: 8500, unit: '°C' });

/** What is needed to doubt the next reading: two earlier ones to fall from, and whether the probe is out. */
export type DoubtSoFar = {
  anchor?: CurveReading;
  earlierAnchor?: CurveReading;
  before?: CurveReading;
  out?: { from: number; coldest: number };
};

/**
 * Whether a reading can be the core's, judged beside its neighbours. A reading in doubt is kept and counts; but what is
 * met with it and not without it is not met.
 * @param next the reading after it; undefined for the last one
 */
export function doubtOf(known: DoubtSoFar, own: CurveReading, next: CurveReading | undefined): Doubt | undefined {
  const { before } = known;
  const value = onCommonScale(own.temperature);
  const doubt = isOut(known, own, value) ? 'out of the product' : lonely(before, own, value, next);
  if (doubt === undefined) {
    moveAnchors(known, own);
    known.before = own;
  }
  return doubt;
}

function lonely(
  before: CurveReading | undefined,
  own: CurveReading,
  value: number,
  next: CurveReading | undefined,
): Doubt | undefined {
  if (value > HOTTEST_CORE) return 'hotter than a core';
  if (!next) return undefined;
  const after = onCommonScale(next.temperature);
  if (!before) return value === POWER_UP && Math.abs(after - value) > SPIKE.off ? 'power-up' : undefined;
  const earlier = onCommonScale(before.temperature);
  const isLonely = Math.min(Math.abs(value - earlier), Math.abs(value - after)) > SPIKE.off;
  const areClose = Math.abs(after - earlier) < SPIKE.neighbours && next.at - before.at <= SPIKE.within;
  return isLonely && areClose ? 'spike' : undefined;
}

function isOut(known: DoubtSoFar, own: CurveReading, value: number): boolean {
  const { out, before } = known;
  if (!out) {
    const from = Math.max(fallFrom(known.anchor, own, value), fallFrom(known.earlierAnchor, own, value));
    const step = Math.max(from, fallFrom(before, own, value));
    if (step === -Infinity) return false;
    known.out = { from: step, coldest: value };
    return true;
  }
  out.coldest = Math.min(out.coldest, value);
  const isBack = value >= out.from - BACK || value > out.coldest + BACK;
  if (isBack) known.out = undefined;
  return !isBack;
}

/** The temperature fallen from, when the fall is deeper and quicker than a core can fall; otherwise −Infinity. */
function fallFrom(from: CurveReading | undefined, to: CurveReading, value: number): number {
  if (!from) return -Infinity;
  const start = onCommonScale(from.temperature);
  const allowed = FALL.by * Math.max(1, (to.at - from.at) / FALL.within);
  return start - value > allowed ? start : -Infinity;
}

/** One reading a minute is remembered to fall from, and the one of the minute before. */
function moveAnchors(known: DoubtSoFar, own: CurveReading): void {
  if (known.anchor && own.at - known.anchor.at < FALL.within) return;
  known.earlierAnchor = known.anchor;
  known.anchor = own;
}
