import { showLot, showReceipt, type Deviation } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { ask } from '../../api/ask';

/** About how much product a deviation is about, in grams: what went into the lot, or what was delivered. */
export function useAtStake({ lot, receipt }: Deviation): number | undefined {
  const ofLot = useQuery({ ...ask(showLot, { lotId: lot?.lotId ?? '' }), enabled: lot !== undefined }).data;
  const ofReceipt = useQuery({
    ...ask(showReceipt, { receiptId: receipt?.receiptId ?? '' }),
    enabled: receipt !== undefined,
  }).data;
  if (!ofLot) return ofReceipt?.weight.grams;
  return (
    ofLot.meatBlockGrams +
    ofLot.weighings.reduce((sum, { weight, amendedBy }) => (amendedBy === undefined ? sum + weight.grams : sum), 0)
  );
}
