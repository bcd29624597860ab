import { listReceipts, type Lot, type Receipt } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { ask } from '../../../api/ask';

export type Delivery = { all: Receipt[]; chosen?: Receipt; choose: (receiptId: string) => void };

/** The one this lot used last, else the oldest that has something left. */
export function useDelivery(lot: Lot, itemId: string): Delivery {
  const { data } = useQuery(ask(listReceipts, { itemId, left: 'some' }));
  const [picked, setPicked] = useState<string>();
  const all = data?.receipts.filter(({ decision, leftGrams }) => decision === 'accepted' && leftGrams > 0).toReversed() ?? [];
  const usedLast = lot.weighings.findLast(({ item, receipt }) => item.itemId === itemId && receipt)?.receipt?.receiptId;
  const find = (receiptId: string | undefined) => all.find((receipt) => receipt.receiptId === receiptId);
  return { all, chosen: find(picked) ?? find(usedLast) ?? all[0], choose: setPicked };
}
