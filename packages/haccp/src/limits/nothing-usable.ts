import type { CurveLimit } from './limit';
import { sayLimit } from './say-limit';
import type { Verdict } from './verdict';

/** The verdict on a series in which nothing can be used: doubt, whatever the stage. */
export const nothingUsableIn = (notes: readonly string[], limit: CurveLimit): Verdict => ({
  kind: 'undetermined',
  measured: 'nothing usable',
  limit: sayLimit(limit),
  because: 'There is no usable reading.',
  next: 'Check the probe and read the core temperature.',
  notes: [...notes],
  source: limit.source,
});
