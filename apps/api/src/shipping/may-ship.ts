import type { Account } from '@larderbook/contracts';
import { packedAfterIt } from '../lots/stand';
import type { LotStands } from '../lots/where-a-lot-stands';
import { asideIn, leftIn, type InPackages } from '../lots/what-is-left';
import { sentence } from '../platform/account';

type Stands = Pick<LotStands, 'standing' | 'because' | 'reviewCounts' | 'packedSince' | 'clearedSince'>;
type MayShip = { mayShip: boolean; because: Account };

/**
 * Packages ship while the review that saw them stands, up to what was neither condemned nor set aside for rework. Those
 * packed since wait for their own review and keep no other back.
 */
export function mayShip(stands: Stands, stock: InPackages, packingId: string): MayShip {
  const { standing, because, packedSince, clearedSince } = stands;
  if (!isCleared(stands)) return { mayShip: false, because };
  if (!clearedSince(packingId)) return { mayShip: false, because: packedAfterIt(packedSince) };
  const free = standing === 'to-review' ? [sentence('signed-for-these')] : because;
  if (leftIn(stock) > 0n || asideIn(stock) === 0n) return { mayShip: true, because: free };
  const { toRework } = stock.aside;
  return { mayShip: false, because: [sentence(toRework > 0n ? 'rest-condemned-or-to-rework' : 'rest-condemned')] };
}

const isCleared = ({ standing, reviewCounts }: Stands): boolean =>
  standing === 'cleared' || standing === 'shipped' || (standing === 'to-review' && reviewCounts);
