import type { CoolingContext } from '../thermal/stage-spans';

/** What a curve is judged with, besides its readings. Instants are epoch milliseconds and are always told, never asked for. */
export type CurveContext = CoolingContext & {
  /** When chilling began (epoch ms), for a limit on the time between cooking and chilling. */
  chillingBegan?: number;
};
