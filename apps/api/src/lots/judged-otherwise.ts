import { RULES_VERSION } from '@larderbook/haccp';
import type { PointOnLot } from './judge-points';
import type { LotRows } from './lot-rows';

/**
 * A standing review was signed by earlier rules. People look again at what the rules of now do not find met or settled.
 */
export function judgedOtherwise({ reviews: [latest] }: Pick<LotRows, 'reviews'>, points: readonly PointOnLot[]): string[] {
  if (!latest || latest.rulesVersion === RULES_VERSION) return [];
  return points.filter(({ isSettled }) => !isSettled).map(({ point }) => point.name);
}
