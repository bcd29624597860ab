import type { LethalitySet } from '../../lethality/lethality-set';
import type { Cited } from '../../limits/source';
import type { PrintedTemperature } from '../../quantity/temperature';

/**
 * Met when the integrated kill reaches `log10`, in whole hundredths. Printed rows come first: this is for a process
 * that an authority supports, and without one named nothing is met.
 */
export type LethalityLimit = Cited & {
  kind: 'lethality';
  set: LethalitySet;
  log10: number;
  /** Nothing colder is counted. */
  floor: PrintedTemperature;
  /** Who supports the process, and where the letter is filed. */
  authority: string;
  longestGapSeconds: number;
};
