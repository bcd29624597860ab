import { RULES_VERSION } from '@larderbook/haccp';
import type { PointOnLot } from './judge-points';
import type { LotRows } from './lot-rows';

/**
 * The control points that the rules of now do not find met or settled, of a lot whose latest review was signed by earlier
 * ones and has been taken back by nothing: what was reviewed then stands, and people are asked to look at it again.
 */
export function judgedOtherwise({ reviews: [latest] }: Pick<LotRows, 'reviews'>, points: readonly PointOnLot[]): string[] {
  if (!latest || latest.rulesVersion === RULES_VERSION) return [];
  return points.filter(({ isSettled }) => !isSettled).map(({ point }) => point.name);
}
