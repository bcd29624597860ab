import { onCommonScale } from '../quantity/convert-degrees';
import { divide } from '../quantity/divide';
import type { Degrees } from '../quantity/temperature';
import type { Curve, CurveReading } from '../thermal/curve';

/**
 * Degree-hours above a base, exact, in halves of a step of the common scale times a millisecond. Only where a straight
 * line crosses the base is a fraction of one rounded, up: a billionth of a degree-hour, never in favour of the lot.
 */
export type DegreeHours = {
  /** What is sure: over a gap the cooler end counts. */
  sure: bigint;
  /** By straight lines, gaps too. */
  straight: bigint;
  /** At most: over a gap the warmer end counts. */
  most: bigint;
  /** The hottest the chamber was, on the common scale. */
  hottest: number;
  /** The longest gap, when it is longer than tolerated (ms). */
  gap?: number;
};

/** A reading of the chamber, above the base; of one instant with two values the warmer, and the cooler beside it. */
type At = { at: number; value: number; cool: number };

/** A stretch of fermentation: until when, and the time beyond either end that counts with that end's temperature. */
export type Stretch = { until: number; lead: number; tail: number };

/**
 * Adds up the chamber's curve until an instant, which is not before its first reading.
 * @param base on the common scale
 */
export function addUpDegreeHours(curve: Curve, base: number, longestGap: number, stretch: Stretch): DegreeHours {
  const sum: DegreeHours = { sure: 0n, straight: 0n, most: 0n, hottest: -Infinity };
  const points = curve.warmer.map(({ at, temperature }, index): At => {
    const cool = curve.colder[index] as CurveReading;
    return { at, value: onCommonScale(temperature) - base, cool: onCommonScale(cool.temperature) - base };
  });
  const [first, last] = [points[0], points[points.length - 1]];
  if (first) addLevel(sum, first, stretch.lead);
  for (let i = 1; i < points.length; i += 1) {
    const [before, point] = [points[i - 1] as At, points[i] as At];
    if (before.at < stretch.until) addSegment(sum, before, point, stretch.until, longestGap);
  }
  if (last && stretch.tail > 0) addLevel(sum, last, stretch.tail);
  return { ...sum, hottest: sum.hottest + base };
}

function addLevel(sum: DegreeHours, { value }: At, span: number): void {
  add(sum, areaAbove(value, value, span), areaAbove(value, value, span), areaAbove(value, value, span));
  sum.hottest = Math.max(sum.hottest, value);
}

function addSegment(sum: DegreeHours, a: At, b: At, until: number, longestGap: number): void {
  const span = Math.min(b.at, until) - a.at;
  const end = b.at <= until ? b.value : between(a, b, until);
  const straight = areaAbove(a.value, end, span);
  const warmer = Math.max(a.value, b.value);
  if (b.at - a.at <= longestGap) {
    add(sum, straight, straight, straight);
    sum.hottest = Math.max(sum.hottest, a.value, end);
    return;
  }
  const cooler = Math.min(a.cool, b.cool);
  add(sum, areaAbove(cooler, cooler, span), straight, areaAbove(warmer, warmer, span));
  sum.hottest = Math.max(sum.hottest, warmer);
  sum.gap = Math.max(sum.gap ?? 0, b.at - a.at);
}

function add(sum: DegreeHours, sure: bigint, straight: bigint, most: bigint): void {
  sum.sure += sure;
  sum.straight += straight;
  sum.most += most;
}

/** The straight line at an instant, rounded up to a whole step of the common scale. */
const between = (a: At, b: At, at: number): number =>
  a.value + Math.ceil(((b.value - a.value) * (at - a.at)) / (b.at - a.at));

/** Twice the area of a straight line above zero: dt (h1 + h2), or dt h² ÷ |h2 − h1| where it crosses. */
function areaAbove(a: number, b: number, span: number): bigint {
  const dt = BigInt(Math.ceil(span));
  if (a <= 0 && b <= 0) return 0n;
  if (a >= 0 && b >= 0) return dt * BigInt(a + b);
  const high = BigInt(Math.max(a, b));
  return divide(dt * high * high, BigInt(Math.abs(b - a)), 'up');
}

/** One degree-hour of a unit in these halves. */
export const degreeHour = (unit: Degrees['unit']): bigint =>
  BigInt(onCommonScale({ hundredths: 100, unit }) - onCommonScale({ hundredths: 0, unit })) * 3_600_000n * 2n;
