import { massBalance, type MassBalance } from '@larderbook/haccp';
import type { LotWeights } from '../lots/lot-weights.queries';
import type { Moved } from './movements.queries';

type Stock = Pick<LotWeights, 'packed' | 'shipped'> & { aside: Pick<LotWeights['aside'], 'condemned' | 'opened'> };

const atLeastZero = (mass: bigint): bigint => (mass > 0n ? mass : 0n);

/** The rest counts as in store, less what a count found missing. */
export function balanceOfReceipt(moved: Moved): MassBalance {
  const [made, used, removed] = [moved('wentIn'), moved('used'), moved('removed') + moved('condemned')];
  const onHand = atLeastZero(made - used - removed - moved('counted'));
  return massBalance({ made, used, packed: 0n, shipped: 0n, removed, onHand });
}

/**
 * Until packing begins the rest is in work, afterwards unexplained. What was condemned or reworked out of packages was
 * packed and is counted once.
 */
export function balanceOfLot(moved: Moved, stock?: Stock): MassBalance {
  const { packed, shipped, aside } = stock ?? { packed: 0n, shipped: 0n, aside: { condemned: 0n, opened: 0n } };
  const [made, used, removed] = [moved('wentIn'), moved('used'), moved('removed') + moved('condemned')];
  const inWork = atLeastZero(made - used - removed - moved('counted'));
  const onHand = packed > 0n ? atLeastZero(packed - shipped - aside.condemned - aside.opened) : inWork;
  return massBalance({ made, used, packed, shipped, removed, onHand });
}
