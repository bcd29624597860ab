import { asSpecies, type Ratio } from '../../formula/curing-species';
import type { ConcentrationLimit } from './concentration-limit';

const unchanged: Ratio = { numerator: 1n, denominator: 1n };

/** Counted mass in one mass weighed: 1, or the share of the ion in the sodium salt. */
export function countedShare({ substance, countedAs }: ConcentrationLimit): Ratio {
  if (substance === 'sodium nitrite' && countedAs === 'NO₂') return asSpecies('NaNO₂', 'NO₂') as Ratio;
  if (substance === 'sodium nitrate' && countedAs === 'NO₃') return asSpecies('NaNO₃', 'NO₃') as Ratio;
  return unchanged;
}

export const isCountable = ({ substance, countedAs }: ConcentrationLimit): boolean =>
  countedAs === undefined || (countedAs === 'NO₂' ? substance === 'sodium nitrite' : substance === 'sodium nitrate');
