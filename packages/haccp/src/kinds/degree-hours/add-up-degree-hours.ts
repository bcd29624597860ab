import { onCommonScale } from '../../quantity/convert-degrees';
import { divide } from '../../quantity/divide';
import type { Degrees } from '../../quantity/temperature';
import type { Curve, CurveReading } from '../../thermal/curve';

/**
 * Exact, in halves of a step of the common scale times a millisecond. Only a crossing of the base is rounded, up: a
 * billionth of a degree-hour, never in favour of the lot.
 */
export type DegreeHours = {
  /** The warmer end of a step, the cooler over a gap longer than tolerated. */
  sure: bigint;
  /** By straight lines, gaps too: for information. */
  straight: bigint;
  /** The warmer end of every step. */
  most: bigint;
  /** On the common scale. */
  hottest: number;
  /** Where longer than tolerated (ms). */
  gap?: number;
};

/** Above the base: of two values of an instant the warmer, and the cooler beside it. */
type At = { at: number; value: number; cool: number };

/** `lead` and `tail`: time beyond either end, counted with that end's temperature. */
export type Stretch = { until: number; lead: number; tail: number };

/**
 * A chamber warms right after a reading or right before the next: leaving out one no hotter than its neighbours never
 * makes it less. @param base on the common scale
 */
export function addUpDegreeHours(curve: Curve, base: number, longestGap: number, stretch: Stretch): DegreeHours {
  const sum: Sum = { sure: 0n, straight: 0n, most: 0n, hottest: -Infinity, gap: undefined, level: 0, line: 0 };
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

/** Whole numbers are added as such while exact: `level` as counted, `line` by straight lines. */
type Sum = DegreeHours & { level: number; line: number };
const EXACT = 2 ** 52;

function takeIn(sum: Sum): void {
  add(sum, BigInt(sum.level), BigInt(sum.line), BigInt(sum.level));
  sum.level = 0;
  sum.line = 0;
}

const addLevel = (sum: Sum, { value }: At, span: number): void => addCovered(sum, value, value, span, value);

function addSegment(sum: Sum, a: At, b: At, until: number, longestGap: number): void {
  const span = Math.min(b.at, until) - a.at;
  const end = b.at <= until ? b.value : between(a, b, until);
  const warmer = Math.max(a.value, b.value);
  if (b.at - a.at <= longestGap) {
    addCovered(sum, a.value, end, span, warmer);
    return;
  }
  const cooler = Math.min(a.cool, b.cool);
  add(sum, areaAbove(cooler, cooler, span), areaAbove(a.value, end, span), areaAbove(warmer, warmer, span));
  sum.hottest = Math.max(sum.hottest, warmer);
  sum.gap = Math.max(sum.gap ?? 0, b.at - a.at);
}

/** @param level the warmer end, which is never below either */
function addCovered(sum: Sum, a: number, b: number, span: number, level: number): void {
  sum.hottest = Math.max(sum.hottest, level);
  if (level <= 0) return;
  const whole = Math.ceil(span) * 2 * level;
  if (a >= 0 && b >= 0 && whole < EXACT) {
    if (sum.level + whole >= EXACT) takeIn(sum);
    sum.level += whole;
    sum.line += Math.ceil(span) * (a + b);
    return;
  }
  const counted = areaAbove(level, level, span);
  add(sum, counted, areaAbove(a, b, span), counted);
}

function add(sum: DegreeHours, sure: bigint, straight: bigint, most: bigint): void {
  sum.sure += sure;
  sum.straight += straight;
  sum.most += most;
}

/** By a straight line, rounded up to a whole step of the common scale. */
const between = (a: At, b: At, at: number): number => a.value + Math.ceil(((b.value - a.value) * (at - a.at)) / (b.at - a.at));

/** Twice the area of a straight line above zero: dt (h1 + h2), or dt h² ÷ |h2 − h1| where it crosses. */
function areaAbove(a: number, b: number, span: number): bigint {
  const dt = BigInt(Math.ceil(span));
  if (a <= 0 && b <= 0) return 0n;
  if (a >= 0 && b >= 0) return dt * BigInt(a + b);
  const high = BigInt(Math.max(a, b));
  return divide(dt * high * high, BigInt(Math.abs(b - a)), 'up');
}

/** In halves of a step. */
export const degreeHour = (unit: Degrees['unit']): bigint =>
  BigInt(onCommonScale({ hundredths: 100, unit }) - onCommonScale({ hundredths: 0, unit })) * 3_600_000n * 2n;
