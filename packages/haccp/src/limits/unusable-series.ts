import type { CurveLimit } from './limit';
import { sayLimit } from './say-limit';
import type { Verdict } from './verdict';

/** A series that cannot be judged as it stands: doubt, and what to do. */
export const unusableSeries = (limit: CurveLimit, because: string, next: string): Verdict => ({
  kind: 'undetermined',
  measured: 'not judged',
  limit: sayLimit(limit),
  because,
  next,
  notes: [],
  source: limit.source,
});

/** Nothing is judged with a thermometer whose error is no figure. */
export const unusableError = (limit: CurveLimit): Verdict =>
  unusableSeries(
    limit,
    'The error of the thermometer is not a usable figure.',
    'Enter what the thermometer may be wrong by, from its last check.',
  );
