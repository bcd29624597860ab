import type { Lot } from '@larderbook/contracts';
import type { BalanceLineData } from '@larderbook/documents';
import type { MassUnit } from '@larderbook/haccp';
import type { WordsOf } from '@larderbook/messages';
import type { LotWeights } from '../lots/lot-weights.queries';
import type { Tx } from '../platform/database';
import { lossOf } from '../reviews/weight-findings';
import { balanceOfLot } from '../trace/balance';
import { movementsOfLots } from '../trace/movements.queries';
import { formatWeight } from './format-weight';
import type { Telling } from './telling';

type LineCode = Extract<keyof WordsOf<'paper-entries'>, `balance-${string}`>;

/**
 * Unexplained weight stands last, and is no fault within the loss that the formula expects. Empty when nothing went in.
 */
export async function balanceOnPaper(
  tx: Tx,
  lot: Lot,
  weights: LotWeights,
  unit: MassUnit,
  say: Telling['say'],
): Promise<BalanceLineData[]> {
  const { lotId } = lot;
  const moved = (await movementsOfLots(tx, [lotId])).get(lotId);
  if (!moved || moved('wentIn') === 0n) return [];
  const { made, used, packed, unexplained, onHand, shipped } = balanceOfLot(moved, weights);

  const line = (code: LineCode, mass: bigint): BalanceLineData => ({
    label: say(code),
    quantity: formatWeight(mass, unit),
    share: `${((Number(mass) / Number(made)) * 100).toFixed(1)} %`,
  });
  const happened = ([code, mass]: [LineCode, bigint]) => (mass === 0n ? [] : [line(code, mass)]);
  const lines: [LineCode, bigint][] = [
    ['balance-removed', moved('removed')],
    ['balance-condemned', moved('condemned')],
    ['balance-used', used],
    ['balance-packed', packed],
    ['balance-shipped', shipped],
    ['balance-in-work', packed > 0n ? 0n : onHand],
  ];
  return [
    line('balance-went-in', made),
    ...lines.flatMap(happened),
    unexplained > 0n && lossOf(lot, weights)?.beyond === 0n
      ? line('balance-expected', unexplained)
      : { ...line('balance-unexplained', unexplained), total: true },
  ];
}
