import { isSetAside } from '../../thermal/curve';
import type { AsKept } from '../../thermal/instant';

/** Of the same pieces. `at` is epoch milliseconds, the mass exact femtograms. */
export type Weighing = AsKept & { at: number; mass: bigint };

/** `leftOut`: impossible weighings. */
export type Drying = { start: Weighing; later: readonly Weighing[]; leftOut: number };

/**
 * Without set-aside and impossible weighings (no time, no weight above zero). Of two weights of one instant the heavier
 * is kept, at the start the lighter: both make the loss smaller. Undefined without one weighing.
 */
export function inOrder(weighings: readonly Weighing[]): Drying | undefined {
  const setAside = weighings.filter(isSetAside).length;
  const usable = weighings.filter((one) => !isSetAside(one) && Number.isFinite(one?.at) && one.mass > 0n).sort((a, b) => a.at - b.at);
  const [first] = usable;
  if (!first) return undefined;
  const starts = usable.filter(({ at }) => at === first.at);
  const start = starts.reduce((least, one) => (one.mass < least.mass ? one : least));
  const later: Weighing[] = [];
  for (const one of usable.slice(starts.length)) {
    const last = later[later.length - 1];
    if (last?.at !== one.at) later.push(one);
    else if (one.mass > last.mass) later[later.length - 1] = one;
  }
  return { start, later, leftOut: weighings.length - setAside - usable.length };
}

/** For estimates; `judgeWeightLoss` compares exactly. */
export const shareLost = (start: Weighing, now: Weighing): number => {
  // Ten decimals.
  const parts = ((start.mass - now.mass) * 10_000_000_000n) / start.mass;
  return Number(parts) / 10_000_000_000;
};
