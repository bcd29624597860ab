import type { CoolingContext } from '../thermal/stage-spans';

/**
 * What a curve is judged with, besides its readings. Instants are epoch milliseconds and are always told, never asked
 * for.
 */
export type CurveContext = CoolingContext & {
  /** When chilling began (epoch ms), for a limit on the time between cooking and chilling. */
  chillingBegan?: number;
};

/** An instant that is no number is as good as none: it is left out. */
export const usableContext = ({ ended, now, startAt, chillingBegan }: CurveContext): CurveContext => ({
  ended,
  now: finite(now),
  startAt: finite(startAt),
  chillingBegan: finite(chillingBegan),
});

const finite = (instant: number | undefined): number | undefined => (Number.isFinite(instant) ? instant : undefined);
