import { tooMany } from '../thermal/too-many';
import { rateOf } from '../thermal/core-speed';
import { unknownPiece } from '../thermal/piece';
import { errorOf, type KnownBefore } from './curve-context';
import type { SeriesLimit } from './limit';
import { sayLimit } from './say-limit';
import type { Verdict } from './verdict';

/** Why a series cannot be judged as it stands, and what to do. */
export type Unusable = { because: string; next: string };

/** Nothing is judged with a thermometer whose error is no figure. */
export const UNUSABLE_ERROR: Unusable = {
  because: 'The error of the thermometer is not a usable figure.',
  next: 'Enter what the thermometer may be wrong by, from its last check.',
};

const UNUSABLE_PIECE: Unusable = {
  because: 'The smallest dimension of the piece is not a usable figure.',
  next: 'Correct the piece in the plan.',
};

/** Doubt, and what to do. */
export const unusableSeries = (limit: SeriesLimit, { because, next }: Unusable): Verdict => ({
  kind: 'undetermined',
  measured: 'not judged',
  limit: sayLimit(limit),
  because,
  next,
  notes: [],
  source: limit.source,
});

/** Why a series cannot be judged whatever its readings are; undefined when it can. */
export const unusableBefore = (readings: number, known: KnownBefore): Unusable | undefined =>
  tooMany(readings) ??
  (errorOf(known) === undefined ? UNUSABLE_ERROR : undefined) ??
  (rateOf(known.piece ?? unknownPiece) === undefined ? UNUSABLE_PIECE : undefined);
