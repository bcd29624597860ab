import type { BalanceLineData } from '@larderbook/documents';
import type { MassUnit } from '@larderbook/haccp';
import { lotHolds } from '../lots/lot-holds.queries';
import type { Tx } from '../platform/database';
import { balanceOfLot } from '../trace/balance';
import { movementsOfLots } from '../trace/movements.queries';
import { sayWeight } from './say-weight';

/** Where the weight of a lot went; what no record explains is the last line. Nothing when nothing went in. */
export async function balanceOnPaper(tx: Tx, lotId: string, unit: MassUnit): Promise<BalanceLineData[]> {
  const moved = (await movementsOfLots(tx, [lotId])).get(lotId);
  if (!moved || moved('wentIn') === 0n) return [];
  const { made, used, packed, unexplained, onHand, shipped } = balanceOfLot(
    moved,
    await lotHolds(tx, lotId),
  );

  const line = (label: string, mass: bigint): BalanceLineData => ({
    label,
    quantity: sayWeight(mass, unit),
    share: `${((Number(mass) / Number(made)) * 100).toFixed(1)} %`,
  });
  const happened = ([label, mass]: [string, bigint]) => (mass === 0n ? [] : [line(label, mass)]);
  const lines: [string, bigint][] = [
    ['Trimmed off, lost or sampled', moved('removed')],
    ['Condemned', moved('condemned')],
    ['Into other lots', used],
    ['Packed', packed],
    ['of it shipped', shipped],
    ['Still in work', packed > 0n ? 0n : onHand],
  ];
  return [
    line('Went in', made),
    ...lines.flatMap(happened),
    { ...line('Not accounted for', unexplained), total: true },
  ];
}
