import { MOST_READINGS } from '../thermal/too-many';
import { rateOf } from '../thermal/core-speed';
import { unknownPiece } from '../thermal/piece';
import { errorOf, type KnownBefore } from './curve-context';
import type { Found, Verdict } from './verdict';

/** An error that is no figure: nothing is judged with that thermometer. */
export const UNUSABLE_ERROR: Found = { finding: 'error-unusable', figures: {} };

const UNUSABLE_PIECE: Found = { finding: 'piece-unusable', figures: {} };

export const unusableSeries = (why: Found): Verdict => ({ kind: 'undetermined', ...why, notes: [] });

export function unusableBefore(readings: number, known: KnownBefore): Found | undefined {
  if (readings > MOST_READINGS) return { finding: 'too-many-readings', figures: { readings, atMost: MOST_READINGS } };
  if (errorOf(known) === undefined) return UNUSABLE_ERROR;
  return rateOf(known.piece ?? unknownPiece) === undefined ? UNUSABLE_PIECE : undefined;
}
