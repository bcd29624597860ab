import type { Cited } from '../../limits/source';

/** Met when so much of the start weight is gone, in % with at most four decimals. */
export type WeightLossLimit = Cited & { kind: 'weightLoss'; percent: number };
