import type { GrowthSet } from './growth-set';

/** log10 per hour at °C; zero outside Tmin to Tmax. */
export function growthRate({ b, c, minCelsius, maxCelsius }: GrowthSet, celsius: number): number {
  if (!(celsius > minCelsius && celsius < maxCelsius)) return 0;
  return b ** 2 * (celsius - minCelsius) ** 2 * -Math.expm1(c * (celsius - maxCelsius));
}

/** At a constant temperature: ln(1 + 1/q0) ÷ (ln 10 × r); Infinity where nothing grows. */
export const lagHours = (set: GrowthSet, celsius: number): number => Math.log1p(1 / set.q0) / (Math.LN10 * growthRate(set, celsius));

/** °C: the root of 2 (e^(c (Tmax − T)) − 1) = c (T − Tmin), bisected to the last bit. */
export function fastestCelsius({ c, minCelsius, maxCelsius }: GrowthSet): number {
  let [low, high] = [minCelsius, maxCelsius];
  for (let step = 0; step < 60; step += 1) {
    const middle = (low + high) / 2;
    if (2 * Math.expm1(c * (maxCelsius - middle)) > c * (middle - minCelsius)) low = middle;
    else high = middle;
  }
  return low;
}

/**
 * The rate falls above its optimum, so the faster end is no bound across it. @param fastest the set's optimum, from
 * `fastestCelsius`
 */
export const fastestBetween = (set: GrowthSet, fastest: number, a: number, b: number): number =>
  growthRate(set, Math.min(Math.max(fastest, Math.min(a, b)), Math.max(a, b)));
