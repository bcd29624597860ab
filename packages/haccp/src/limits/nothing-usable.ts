import type { Remark, Verdict } from './verdict';

/** The verdict on a series in which nothing can be used: doubt, whatever the stage. */
export const nothingUsableIn = (notes: readonly Remark[]): Verdict => ({
  kind: 'undetermined',
  finding: 'no-usable-reading',
  figures: {},
  notes: [...notes],
});
