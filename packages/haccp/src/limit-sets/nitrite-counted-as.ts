import { isOfKind } from '../kinds/of-kind';
import type { LimitRow } from './limit-set';

export type NitriteCountedAs = 'sodium nitrite, NaNO₂' | 'the nitrite ion, NO₂';

/** A ppm of one is not a ppm of the other. Empty without a row about nitrite. */
export const nitriteCountedAs = (rows: readonly LimitRow[]): NitriteCountedAs[] => [...new Set(rows.flatMap(countedIn))];

function countedIn({ limit }: LimitRow): NitriteCountedAs[] {
  if (isOfKind(limit, 'concentration') && limit.substance === 'sodium nitrite')
    return [limit.countedAs ? 'the nitrite ion, NO₂' : 'sodium nitrite, NaNO₂'];
  if (!isOfKind(limit, 'figure')) return [];
  if (limit.of.includes('NaNO₂')) return ['sodium nitrite, NaNO₂'];
  return limit.of.includes('NO₂ ion') ? ['the nitrite ion, NO₂'] : [];
}
