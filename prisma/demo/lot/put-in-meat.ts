import * as contract from '@larderbook/contracts';
import { newId } from '../story';
import type { ItemKey } from '../shop';
import { takeFrom } from '../world';
import { gramsInPound, type LotBeingMade } from './lot-being-made';

/** The lot is started, and its meat comes from the walk-in and over the trimming table. */
export function putInMeat(lot: LotBeingMade): void {
  const { productId } = lot.world.products[lot.plan.product];
  lot.tell(lot.start, contract.startLot).with((takenAt) => ({ lotId: lot.lotId, productId, note: '', takenAt }));
  let minute = 3;
  for (const { item, ...pounds } of lot.meat) {
    putIn(lot, item, pounds, lot.after(minute));
    minute += lot.chance.between(6, 12);
  }
}

type Pounds = { taken: number; trimmed: number };

export function putIn(lot: LotBeingMade, item: ItemKey, { taken, trimmed }: Pounds, at: Date): void {
  lot.wentInGrams += trimmed * gramsInPound;
  lot.tell(at, contract.putIn).with((takenAt) => ({
    inputId: newId(at),
    lotId: lot.lotId,
    receiptId: takeFrom(lot.world, item, taken, at),
    weight: { value: taken, unit: 'lb' },
    trimmed: { value: trimmed, unit: 'lb' },
    takenAt,
  }));
}
