import type { Remark, Verdict } from './verdict';

/** Doubt, whatever the stage. */
export const nothingUsableIn = (notes: readonly Remark[]): Verdict => ({
  kind: 'undetermined',
  finding: 'no-usable-reading',
  figures: {},
  notes: [...notes],
});
