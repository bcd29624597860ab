import type { AcidReading } from '../kinds/degree-hours/acid-reached';
import type { CurveReading } from '../thermal/curve';
import type { AsKept } from '../thermal/instant';

/** Of one marked piece, or of the whole lot; each of several pieces is its own probe. */
export type WeightReading = AsKept & { at: number; mass: bigint; id?: string; probe?: string };

/** At one control point. Each limit takes its own. */
export type Series = {
  temperatures: readonly CurveReading[];
  acid: readonly AcidReading[];
  weights: readonly WeightReading[];
};
