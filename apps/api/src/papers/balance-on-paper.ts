import type { Lot } from '@larderbook/contracts';
import type { BalanceLineData } from '@larderbook/documents';
import type { MassUnit } from '@larderbook/haccp';
import type { LotHolds } from '../lots/lot-holds.queries';
import type { Tx } from '../platform/database';
import { lossOf } from '../reviews/weight-findings';
import { balanceOfLot } from '../trace/balance';
import { movementsOfLots } from '../trace/movements.queries';
import { sayWeight } from './say-weight';

/**
 * Where the weight of a lot went; what no record explains is the last line, and no black mark while it is what the
 * formula expects to lose. Nothing when nothing went in.
 */
export async function balanceOnPaper(tx: Tx, lot: Lot, held: LotHolds, unit: MassUnit): Promise<BalanceLineData[]> {
  const { lotId } = lot;
  const moved = (await movementsOfLots(tx, [lotId])).get(lotId);
  if (!moved || moved('wentIn') === 0n) return [];
  const { made, used, packed, unexplained, onHand, shipped } = balanceOfLot(moved, held);

  const line = (label: string, mass: bigint): BalanceLineData => ({
    label,
    quantity: sayWeight(mass, unit),
    share: `${((Number(mass) / Number(made)) * 100).toFixed(1)} %`,
  });
  const happened = ([label, mass]: [string, bigint]) => (mass === 0n ? [] : [line(label, mass)]);
  const lines: [string, bigint][] = [
    ['Trimmings, losses and samples', moved('removed')],
    ['Condemned', moved('condemned')],
    ['Into other lots', used],
    ['Packed', packed],
    ['of it shipped', shipped],
    ['Still in work', packed > 0n ? 0n : onHand],
  ];
  return [
    line('Went in', made),
    ...lines.flatMap(happened),
    unexplained > 0n && lossOf(lot, held)?.beyond === 0n
      ? line('Lost in the process, as the formula expects', unexplained)
      : { ...line('Not accounted for', unexplained), total: true },
  ];
}
