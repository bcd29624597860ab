import type { LethalitySet } from '../../lethality/lethality-set';
import type { Cited } from '../../limits/source';
import type { PrintedTemperature } from '../../quantity/temperature';

/**
 * Met when the integrated kill reaches `log10`, in whole hundredths. Printed rows come first; a process needs an
 * authority that supports it, and without one named nothing is met.
 */
export type LethalityLimit = Cited & {
  kind: 'lethality';
  set: LethalitySet;
  log10: number;
  /** Nothing colder counts. */
  floor: PrintedTemperature;
  /** Who supports the process, and where the letter is filed. */
  authority: string;
  longestGapSeconds: number;
};
