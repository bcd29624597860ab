import * as contract from '@larderbook/contracts';
import { inSteps } from '../chance';
import { minutesAfter, newId } from '../story';
import { gramsInPound, type LotBeingMade } from './lot-being-made';

type Loss = 'loss in cooking' | 'loss in drying';

/** The whole lot on the floor scale before it is packed, pounds; what went in and is not there was lost on the way. */
export function weighWhole(lot: LotBeingMade, at: Date, kind: Loss = 'loss in cooking'): number {
  const wentIn = lot.wentInGrams / gramsInPound;
  const weighed = inSteps(((wentIn * lot.product.expectedYieldPercent) / 100) * lot.chance.between(0.984, 1.012, 0.001), 0.05);
  remove(lot, at, {
    kind,
    pounds: downTo(wentIn - weighed),
    note: `Weighed ${weighed} lb on the floor scale, ${inSteps(wentIn, 0.05)} lb had gone in.`,
  });
  return weighed;
}

/** Whole packages of what was weighed; returns how many. What does not fill one is written off as what it is. */
export function pack(lot: LotBeingMade, packingId: string, weighed: number, at: Date): number {
  const { package: net } = lot.product;
  const pounds = net.unit === 'lb' ? net.value : net.value / 16;
  const sample = lot.chance.oneOf([0, 0, 0.5]);
  const toPack = weighed - lot.condemnedGrams / gramsInPound - sample - lot.chance.between(0.1, 0.4, 0.05);
  const count = Math.floor(toPack / pounds);
  const over = downTo(weighed - lot.condemnedGrams / gramsInPound - sample - count * pounds);
  if (sample) remove(lot, minutesAfter(at, -4), { kind: 'sample', pounds: sample, note: 'To the laboratory with the courier, Listeria.' });
  lot.tell(at, contract.packLot).with((takenAt) => ({ packingId, lotId: lot.lotId, count, net, takenAt }));
  remove(lot, minutesAfter(at, lot.chance.between(6, 14)), {
    kind: 'waste',
    pounds: over,
    note: lot.chance.oneOf(['Ends and what does not fill a package.', 'Ends, and one that would not seal.', 'Ends; tasted at the table.']),
  });
  return count;
}

/** No more than there is. */
const downTo = (pounds: number) => Number((Math.floor(pounds * 20 + 1e-6) / 20).toFixed(2));

type Removed = { kind: Loss | 'sample' | 'waste'; pounds: number; note: string };

function remove(lot: LotBeingMade, at: Date, { kind, pounds, note }: Removed): void {
  lot.tell(at, contract.recordRemoval).with((takenAt) => ({
    removalId: newId(at),
    lotId: lot.lotId,
    kind,
    note,
    weight: { value: pounds, unit: 'lb' },
    takenAt,
  }));
}

export function review(lot: LotBeingMade, at: Date): void {
  lot.story.tell(at, lot.reviewer, contract.signReview).with(() => ({
    reviewId: newId(at),
    lotId: lot.lotId,
    statement: 'Records complete; limits met or corrected; the lot may be shipped.',
  }));
}
