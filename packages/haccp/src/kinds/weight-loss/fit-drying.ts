/** `lost` is a share. */
export type LossPoint = { days: number; lost: number };

/** lost = final (1 − e^(−days ÷ tau)): the rate falls with the water left. */
export type DryingLaw = { final: number; tauDays: number };

const LONGEST_TAU_DAYS = 1e4;
const SHORTEST_TAU_DAYS = 1e-2;
const HALVINGS = 80;
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/**
 * Least squares: each time constant gives its best final loss; the time constant is narrowed down between a quarter of
 * an hour and 10 000 days, where the law is a straight line. Rate in proportion to the water left: Lewis 1921, Ind Eng
 * Chem 13:427, from memory.
 */
export function fitDrying(points: readonly LossPoint[]): DryingLaw {
  let [low, high] = [Math.log(SHORTEST_TAU_DAYS), Math.log(LONGEST_TAU_DAYS)];
  for (let step = 0; step < HALVINGS; step += 1) {
    const [a, b] = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)];
    if (misfit(points, Math.exp(a)) <= misfit(points, Math.exp(b))) high = b;
    else low = a;
  }
  const tauDays = Math.exp((low + high) / 2);
  return { final: finalOf(points, tauDays), tauDays };
}

/** Days from the start; Infinity where the law ends below the loss. */
export const daysToLoss = ({ final, tauDays }: DryingLaw, target: number): number =>
  target < final ? -tauDays * Math.log1p(-target / final) : Infinity;

const done = (days: number, tauDays: number): number => -Math.expm1(-days / tauDays);

function finalOf(points: readonly LossPoint[], tauDays: number): number {
  let [product, square] = [0, 0];
  for (const { days, lost } of points) {
    product += lost * done(days, tauDays);
    square += done(days, tauDays) ** 2;
  }
  return product / square;
}

function misfit(points: readonly LossPoint[], tauDays: number): number {
  const final = finalOf(points, tauDays);
  return points.reduce((sum, { days, lost }) => sum + (lost - final * done(days, tauDays)) ** 2, 0);
}
