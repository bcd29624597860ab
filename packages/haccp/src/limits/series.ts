import type { AcidReading } from '../kinds/degree-hours/acid-reached';
import type { CurveReading } from '../thermal/curve';
import type { AsKept } from '../thermal/instant';

/** The weight of one marked piece, or of the whole lot, at one time; of several pieces each is its own probe. */
export type WeightReading = AsKept & { at: number; mass: bigint; id?: string; probe?: string };

/** What was read over time at one control point, each kind apart. Limits take what they are judged from. */
export type Series = {
  temperatures: readonly CurveReading[];
  acid: readonly AcidReading[];
  weights: readonly WeightReading[];
};
