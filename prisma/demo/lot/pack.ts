import * as contract from '@larderbook/contracts';
import { minutesAfter, newId } from '../story';
import { gramsInPound, type LotBeingMade } from './lot-being-made';

type Loss = 'loss in cooking' | 'loss in drying';

/** Whole packages of what is left, and the rest written off; returns how many there are. */
export function pack(lot: LotBeingMade, packingId: string, at: Date, kind: Loss = 'loss in cooking'): number {
  const { package: net, expectedYieldPercent } = lot.product;
  const everything = lot.wentInGrams() - lot.condemnedGrams;
  const netGrams = net.value * (net.unit === 'lb' ? gramsInPound : gramsInPound / 16);
  const count = Math.floor((everything * expectedYieldPercent) / 100 / netGrams);
  lot.tell(at, contract.packLot).with((takenAt) => ({ packingId, lotId: lot.lotId, count, net, takenAt }));
  const after = minutesAfter(at, 10);
  lot.tell(after, contract.recordRemoval).with((takenAt) => ({
    removalId: newId(after), lotId: lot.lotId, kind, note: 'Weight in less weight packed, weighed on the floor scale.',
    weight: { value: Math.floor(((everything - count * netGrams) / gramsInPound) * 10) / 10, unit: 'lb' }, takenAt,
  }));
  return count;
}

export function review(lot: LotBeingMade, at: Date): void {
  lot.story.tell(at, lot.who.reviewer, contract.signReview).with(() => ({
    reviewId: newId(at), lotId: lot.lotId, statement: 'Records complete; limits met or corrected; the lot may be shipped.',
  }));
}
