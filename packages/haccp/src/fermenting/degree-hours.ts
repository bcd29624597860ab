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
  const sum: Sum = { sure: 0n, straight: 0n, most: 0n, hottest: -Infinity, gap: undefined, inAll: 0 };
  let last: At | undefined;
  for (let index = 0; index < curve.warmer.length; index += 1) {
    const { at, temperature } = curve.warmer[index] as CurveReading;
    const cool = curve.colder[index] as CurveReading;
    const point = { at, value: onCommonScale(temperature) - base, cool: onCommonScale(cool.temperature) - base };
    if (!last) addLevel(sum, point, stretch.lead);
    else if (last.at < stretch.until) addSegment(sum, last, point, stretch.until, longestGap);
    last = point;
  }
  if (last && stretch.tail > 0) addLevel(sum, last, stretch.tail);
  takeIn(sum);
  const { sure, straight, most, gap } = sum;
  return { sure, straight, most, hottest: sum.hottest + base, gap };
}

/** Whole numbers are added up as such while they are exact; they count in all three ways. */
type Sum = DegreeHours & { inAll: number };
const EXACT = 2 ** 52;

function takeIn(sum: Sum): void {
  const whole = BigInt(sum.inAll);
  add(sum, whole, whole, whole);
  sum.inAll = 0;
}

function addLevel(sum: Sum, { value }: At, span: number): void {
  add(sum, areaAbove(value, value, span), areaAbove(value, value, span), areaAbove(value, value, span));
  sum.hottest = Math.max(sum.hottest, value);
}

function addSegment(sum: Sum, a: At, b: At, until: number, longestGap: number): void {
  const span = Math.min(b.at, until) - a.at;
  const end = b.at <= until ? b.value : between(a, b, until);
  if (b.at - a.at <= longestGap) {
    addCovered(sum, a.value, end, span);
    return;
  }
  const straight = areaAbove(a.value, end, span);
  const warmer = Math.max(a.value, b.value);
  const cooler = Math.min(a.cool, b.cool);
  add(sum, areaAbove(cooler, cooler, span), straight, areaAbove(warmer, warmer, span));
  sum.hottest = Math.max(sum.hottest, warmer);
  sum.gap = Math.max(sum.gap ?? 0, b.at - a.at);
}

function addCovered(sum: Sum, a: number, b: number, span: number): void {
  sum.hottest = Math.max(sum.hottest, a, b);
  if (a <= 0 && b <= 0) return;
  const whole = Math.ceil(span) * (a + b);
  if (a >= 0 && b >= 0 && whole < EXACT) {
    if (sum.inAll + whole >= EXACT) takeIn(sum);
    sum.inAll += whole;
    return;
  }
  const area = areaAbove(a, b, span);
  add(sum, area, area, area);
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
