import type { Lot } from '@larderbook/contracts';
import { keptWeightOf } from '../platform/kept-weight';
import { judgedAsKept } from './kept-judged';
import { corrections, listed } from './corrections';
import type { LotRows } from './lot-rows';
import type { Shown } from './read-shown';

type Row = Shown['weighings'][number];

/** Oldest first. Verdicts are those of when each was entered. */
export function showWeighings({ items, content }: LotRows, { weighings, people, names, checks }: Shown): Lot['weighings'] {
  const correction = corrections(weighings, people, checks);
  return listed(weighings).map((row) => ({
    weighingId: row.id,
    ...whatItIs(row, items, names),
    receipt: row.receipt ? { receiptId: row.receipt.id, code: row.receipt.code, supplierLot: row.receipt.supplierLot } : undefined,
    weight: keptWeightOf(row),
    targetGrams: row.targetGrams?.toNumber(),
    controlPointId: row.controlPointId ?? undefined,
    judged: judgedAsKept(row.judged, content.controlPoints),
    ...correction(row),
  }));
}

/** A corrected delivery shows what it is now known to be. */
function whatItIs({ itemId, fractionPercent, receipt }: Row, items: LotRows['items'], names: Shown['names']) {
  const before = fractionPercent?.toNumber();
  if (!receipt?.amendsId) return { item: { itemId, name: names.get(itemId) ?? '' }, fractionPercent: before };
  const now = receipt.fractionPercent?.toNumber() ?? items.get(receipt.itemId)?.fractionPercent;
  return {
    item: { itemId: receipt.itemId, name: names.get(receipt.itemId) ?? '' },
    itemBefore: itemId === receipt.itemId ? undefined : names.get(itemId),
    fractionPercent: now,
    fractionBefore: before === now ? undefined : before,
  };
}
