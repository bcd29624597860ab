import type { Remark, Verdict } from './verdict';

export const nothingUsableIn = (notes: readonly Remark[]): Verdict => ({
  kind: 'undetermined',
  finding: 'no-usable-reading',
  figures: {},
  notes: [...notes],
});
