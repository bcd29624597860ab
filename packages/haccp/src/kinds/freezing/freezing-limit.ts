import type { Cited } from '../../limits/source';

export type Thickness = { value: number; unit: 'in' | 'cm' };

/** Met when any printed row is, by the air around pieces of a thickness or by their centre. */
export type FreezingLimit = Cited & {
  kind: 'freezing';
  read: { what: 'freezer'; thickness: Thickness } | { what: 'centre' };
  longestGapSeconds: number;
};
