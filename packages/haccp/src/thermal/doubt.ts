import { onCommonScale } from '../quantity/convert-degrees';

/** Why a reading can hardly be the core's, though it can be a temperature. */
export type Doubt = 'spike' | 'out of the product' | 'power-up' | 'hotter than a core';

const perDegree = onCommonScale({ hundredths: 100, unit: '°C' });

/** A moist core does not get hotter; 110 to 212 typed under °C is likely Fahrenheit. Common practice, no source. */
const HOTTEST_CORE = 110 * perDegree;
/**
 * A lone reading so far from both its neighbours, which are close to each other in temperature and time. Common
 * practice, no source.
 */
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

type Mark = { at: number; cold: number };

/** What is needed to doubt the next reading: the one before, two earlier to fall from, whether the probe is out. */
export type DoubtSoFar = {
  before?: Mark;
  anchor?: Mark;
  earlierAnchor?: Mark;
  out?: { from: number; coldest: number };
};

export const noDoubt = (): DoubtSoFar => ({
  before: undefined,
  anchor: undefined,
  earlierAnchor: undefined,
  out: undefined,
});

/**
 * Whether a reading can be the core's, judged beside its neighbours. A reading in doubt is kept and counts; but what is
 * met with it and not without it is not met.
 * @param next the one after it; undefined for the last one
 */
export function doubtOf(known: DoubtSoFar, own: Mark, next: Mark | undefined): Doubt | undefined {
  const doubt = isOut(known, own) ? 'out of the product' : lonely(known.before, own, next);
  if (doubt !== undefined) return doubt;
  // One reading a minute is remembered to fall from, and the one of the minute before.
  if (!known.anchor || own.at - known.anchor.at >= FALL.within) {
    known.earlierAnchor = known.anchor;
    known.anchor = own;
  }
  known.before = own;
  return undefined;
}

export const copyOfDoubt = (known: DoubtSoFar): DoubtSoFar => ({
  before: known.before,
  anchor: known.anchor,
  earlierAnchor: known.earlierAnchor,
  out: known.out && { from: known.out.from, coldest: known.out.coldest },
});


function lonely(before: Mark | undefined, own: Mark, next: Mark | undefined): Doubt | undefined {
  if (own.cold > HOTTEST_CORE) return 'hotter than a core';
  if (!next || Math.abs(own.cold - next.cold) <= SPIKE.off) return undefined;
  if (!before) return own.cold === POWER_UP ? 'power-up' : undefined;
  const isFar = Math.abs(own.cold - before.cold) > SPIKE.off;
  const areClose = Math.abs(next.cold - before.cold) < SPIKE.neighbours && next.at - before.at <= SPIKE.within;
  return isFar && areClose ? 'spike' : undefined;
}

function isOut(known: DoubtSoFar, own: Mark): boolean {
  const { out } = known;
  if (!out) {
    const from = Math.max(
      fallFrom(known.before, own),
      fallFrom(known.anchor, own),
      fallFrom(known.earlierAnchor, own),
    );
    if (from === -Infinity) return false;
    known.out = { from, coldest: own.cold };
    return true;
  }
  out.coldest = Math.min(out.coldest, own.cold);
  const isBack = own.cold >= out.from - BACK || own.cold > out.coldest + BACK;
  if (isBack) Object.assign(known, noDoubt());
  return !isBack;
}

/** The temperature fallen from, when the fall is deeper and quicker than a core can fall; otherwise −Infinity. */
function fallFrom(from: Mark | undefined, to: Mark): number {
  if (!from || from.cold - to.cold <= FALL.by) return -Infinity;
  const allowed = FALL.by * Math.max(1, (to.at - from.at) / FALL.within);
  return from.cold - to.cold > allowed ? from.cold : -Infinity;
}
