import { ADVICE } from '../../forecast/forecast';
import { coded } from '../../limits/coded';
import type { Coded } from '../../limits/verdict';
import { decimalText } from '../../quantity/decimal';
import { partsPerMillion } from '../../quantity/percent';
import type { Quantity } from '../../quantity/quantity';
import { daysToLoss, fitDrying, type LossPoint } from './fit-drying';
import { impossibleLoss } from './impossible-loss';
import { inOrder, shareLost, type Weighing } from './weighings';

/** Epoch ms; undefined where it may never be. */
export type DryingForecast = { readonly use: typeof ADVICE; because: Coded; next?: Coded } & (
  | { state: 'undetermined' | 'too early to tell' | 'reached' }
  | { state: 'expected' | 'may never'; arrival: { best?: number; earliest?: number; latest?: number } }
);

const DAY = 86_400_000;
const LEAST_WEIGHINGS = 3;
/** Below half the loss, three laws that fit lie far apart. Common practice, no source. */
const LEAST_SHARE = 0.5;

/**
 * Best: the drying law through all weighings. Range: the law without each weighing in turn, a straight line at the last
 * rate (drying only slows), and the square root of time (water still coming from within). Too early with fewer than
 * three weighings after the start, before half the loss, or while the range is wider than the time left. Nothing
 * published says how good it is.
 */
export function forecastDrying(weighings: readonly Weighing[], percent: number): DryingForecast {
  const drying = inOrder(weighings);
  const parts = partsPerMillion(percent);
  if (!parts) return { use: ADVICE, state: 'undetermined', because: coded('loss-no-percentage') };
  const now = drying?.later[drying.later.length - 1];
  if (!drying || !now) return tooEarly(coded('only-start-weighed'));
  if (impossibleLoss(drying)) return { use: ADVICE, state: 'undetermined', because: coded('weighings-not-true') };

  const target = parts / 1_000_000;
  const asked = { value: decimalText(parts, 4), unit: '%' } as const;
  const points = drying.later.map(
    (one): LossPoint => ({
      days: (one.at - drying.start.at) / DAY,
      lost: shareLost(drying.start, one),
    }),
  );
  const last = points[points.length - 1] as LossPoint;
  if ((drying.start.mass - now.mass) * 1_000_000n >= BigInt(parts) * drying.start.mass) {
    return { use: ADVICE, state: 'reached', because: coded('was-lost', { percent: asked }) };
  }
  if (points.length < LEAST_WEIGHINGS) return tooEarly(coded('weighed-too-seldom', { count: points.length, needed: LEAST_WEIGHINGS }));
  if (last.lost < LEAST_SHARE * target) return tooEarly(coded('less-than-half-lost'));
  const before = points[points.length - 2] as LossPoint;
  if (last.lost <= before.lost) return tooEarly(coded('no-loss-since'));

  const { best, earliest, latest } = rangeOf(points, before, last, target);
  const instant = (days: number) => (days === Infinity ? undefined : Math.round(drying.start.at + days * DAY));
  const arrival = { best: instant(best), earliest: instant(earliest), latest: instant(latest) };
  if (best === Infinity) {
    const because = coded('may-end-before', { percent: asked });
    return { use: ADVICE, state: 'may never', arrival, because, next: coded('check-humidity-and-crust') };
  }
  if (latest - earliest > best - last.days) return tooEarly(coded('days-too-far-apart'));
  return { use: ADVICE, state: 'expected', arrival, because: lossExpected(asked, last.days, best, earliest, latest) };
}

function rangeOf(points: readonly LossPoint[], before: LossPoint, last: LossPoint, target: number) {
  const best = daysToLoss(fitDrying(points), target);
  const straight = last.days + ((target - last.lost) * (last.days - before.days)) / (last.lost - before.lost);
  const rooted = last.days * (target / last.lost) ** 2;
  const without = points.map((_, left) => daysToLoss(fitDrying(points.filter((__, i) => i !== left)), target));
  const all = [best, straight, rooted, ...without].map((days) => Math.max(days, last.days));
  return { best: Math.max(best, last.days), earliest: Math.min(...all), latest: Math.max(...all) };
}

function lossExpected(percent: Quantity, now: number, best: number, earliest: number, latest: number): Coded {
  const days = (value: number) => ({ value: (value - now).toFixed(1), unit: 'days' }) as const;
  return coded('loss-expected', { percent, best: days(best), earliest: days(earliest), latest: days(latest) });
}

const tooEarly = (because: Coded): DryingForecast => ({
  use: ADVICE,
  state: 'too early to tell',
  because,
  next: coded('weigh-again-in-days'),
});
