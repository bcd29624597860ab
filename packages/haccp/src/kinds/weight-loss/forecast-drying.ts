import { ADVICE } from '../../forecast/forecast';
import { partsPerMillion, sayPercent } from '../../quantity/percent';
import { daysToLoss, fitDrying, type LossPoint } from './fit-drying';
import { impossibleLoss } from './impossible-loss';
import { inOrder, shareLost, type Weighing } from './weighings';

/** When a lot will have lost enough weight. Instants are epoch ms; undefined where it may never have. */
export type DryingForecast = { readonly use: typeof ADVICE; because: string; next?: string } & (
  | { state: 'undetermined' | 'too early to tell' | 'reached' }
  | { state: 'expected' | 'may never'; arrival: { best?: number; earliest?: number; latest?: number } }
);

const DAY = 86_400_000;
const LEAST_WEIGHINGS = 3;
/** Before half the loss is there, three laws that all fit lie far apart. Common practice, no source. */
const LEAST_SHARE = 0.5;

/**
 * The day a loss will be reached. Best: the drying law through all weighings. Its range: the law again without each
 * weighing in turn, a straight line at the last rate (drying only slows), and the square root of time (water still
 * coming from within). Too early with fewer than three weighings after the start, before half the loss, or while the
 * range is wider than the time left. Nothing published says how good it is.
 */
export function forecastDrying(weighings: readonly Weighing[], percent: number): DryingForecast {
  const drying = inOrder(weighings);
  const parts = partsPerMillion(percent);
  if (!parts) return { use: ADVICE, state: 'undetermined', because: 'The loss asked for is no percentage above 0.' };
  const now = drying?.later[drying.later.length - 1];
  if (!drying || !now) return tooEarly('Only the start is weighed.');
  const impossible = impossibleLoss(drying);
  if (impossible) return { use: ADVICE, state: 'undetermined', because: impossible };

  const target = parts / 1_000_000;
  const points = drying.later.map(
    (one): LossPoint => ({
      days: (one.at - drying.start.at) / DAY,
      lost: shareLost(drying.start, one),
    }),
  );
  const last = points[points.length - 1] as LossPoint;
  if ((drying.start.mass - now.mass) * 1_000_000n >= BigInt(parts) * drying.start.mass) {
    return { use: ADVICE, state: 'reached', because: `${sayPercent(percent)} was lost at the last weighing.` };
  }
  if (points.length < LEAST_WEIGHINGS) return tooEarly(`Weighed after the start: ${points.length} of the ${LEAST_WEIGHINGS} times needed.`);
  if (last.lost < LEAST_SHARE * target) return tooEarly('Less than half the loss asked for is there.');
  const before = points[points.length - 2] as LossPoint;
  if (last.lost <= before.lost) return tooEarly('It lost no weight since the weighing before.');

  const { best, earliest, latest } = rangeOf(points, before, last, target);
  const instant = (days: number) => (days === Infinity ? undefined : Math.round(drying.start.at + days * DAY));
  const arrival = { best: instant(best), earliest: instant(earliest), latest: instant(latest) };
  if (best === Infinity) {
    const because = `As it dries now it may end before ${sayPercent(percent)}.`;
    const next = 'Check the humidity and the crust, and weigh again.';
    return { use: ADVICE, state: 'may never', arrival, because, next };
  }
  if (latest - earliest > best - last.days) return tooEarly('The weighings allow days too far apart.');
  return { use: ADVICE, state: 'expected', arrival, because: sayExpected(percent, last.days, best, earliest, latest) };
}

function rangeOf(points: readonly LossPoint[], before: LossPoint, last: LossPoint, target: number) {
  const best = daysToLoss(fitDrying(points), target);
  const straight = last.days + ((target - last.lost) * (last.days - before.days)) / (last.lost - before.lost);
  const rooted = last.days * (target / last.lost) ** 2;
  const without = points.map((_, left) => daysToLoss(fitDrying(points.filter((__, i) => i !== left)), target));
  const all = [best, straight, rooted, ...without].map((days) => Math.max(days, last.days));
  return { best: Math.max(best, last.days), earliest: Math.min(...all), latest: Math.max(...all) };
}

function sayExpected(percent: number, now: number, best: number, earliest: number, latest: number): string {
  const days = (value: number) => `${(value - now).toFixed(1)} days`;
  return `${sayPercent(percent)} is expected in ${days(best)}, between ${days(earliest)} and ${days(latest)}.`;
}

const tooEarly = (because: string): DryingForecast => ({
  use: ADVICE,
  state: 'too early to tell',
  because,
  next: 'Weigh the marked pieces again in a day or two.',
});
