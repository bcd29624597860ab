/** `gap` to the medium in °C, never below zero while the law holds. */
export type LawPoint = { hours: number; gap: number };

/** gap = e^(start − hours ÷ tau): the centre of a body in a constant medium. */
export type Law = { start: number; tauHours: number };

/** °C; nearer to the medium the probe's error decides the logarithm. */
const LEAST_GAP = 1;
const LEAST_POINTS = 3;
export const LEAST_SPAN_HOURS = 20 / 60;

/**
 * Least squares through ln gap. Undefined with fewer than three points at least 1 °C from the medium and 20 min apart,
 * or where the gap does not close. First term of the series for slab, cylinder and sphere: Carslaw and Jaeger,
 * Conduction of Heat in Solids, 1959.
 */
export function fitLaw(points: readonly LawPoint[]): Law | undefined {
  const used = points.filter(({ gap }) => gap >= LEAST_GAP);
  const span = (used[used.length - 1]?.hours ?? 0) - (used[0]?.hours ?? 0);
  // A millisecond of tolerance for hours that are no exact binary fraction.
  if (used.length < LEAST_POINTS || span < LEAST_SPAN_HOURS - 3e-7) return undefined;

  const meanHours = mean(used.map(({ hours }) => hours));
  const meanLog = mean(used.map(({ gap }) => Math.log(gap)));
  let [covariance, variance] = [0, 0];
  for (const { hours, gap } of used) {
    covariance += (hours - meanHours) * (Math.log(gap) - meanLog);
    variance += (hours - meanHours) ** 2;
  }
  const slope = covariance / variance;
  return slope < 0 ? { start: meanLog - slope * meanHours, tauHours: -1 / slope } : undefined;
}

/** Infinity for a gap of zero or less, which the law never reaches. */
export const hoursToGap = ({ start, tauHours }: Law, gap: number): number => (gap > 0 ? tauHours * (start - Math.log(gap)) : Infinity);

export const gapAt = ({ start, tauHours }: Law, hours: number): number => Math.exp(start - hours / tauHours);

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
