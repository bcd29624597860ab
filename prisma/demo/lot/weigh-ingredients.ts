import * as contract from '@larderbook/contracts';
import { inSteps } from '../chance';
import { demoItems, type ItemKey } from '../shop';
import { minutesAfter, newId } from '../story';
import { takeFrom } from '../world';
import { gramsInPound, type LotBeingMade } from './lot-being-made';
import { putIn } from './put-in-meat';
import { settle } from './settle';
import { weighedFromTheWrongSlip } from './what-was-done';

/** Every ingredient of the formula, one after the other. */
export function weighIngredients(lot: LotBeingMade, begin: Date): void {
  let at = begin;
  for (const [item, percent] of lot.product.ingredients) {
    const tooMuch = lot.plan.mishap === 'too much cure' && item === 'cure';
    weigh(lot, item, ((lot.trimmedGrams * percent) / 100) * (tooMuch ? 1.2 : 1), at);
    if (tooMuch) at = bringBackUnder(lot, minutesAfter(at, 1));
    at = minutesAfter(at, lot.chance.between(2, 5));
  }
}

/** What nobody weighs on the bench scale. */
const heavy = 2500;

function weigh(lot: LotBeingMade, item: ItemKey, grams: number, at: Date): void {
  const { lotId, world } = lot;
  const { weight, instrument } = onScale(lot, item, grams);
  lot.wentInGrams += weight.unit === 'lb' ? weight.value * gramsInPound : weight.value;
  lot.tell(at, contract.weighIn).with(
    (takenAt) => ({
      weighingId: newId(at),
      lotId,
      itemId: world.items[item],
      receiptId: takeFrom(world, item, 0, at),
      weight,
      instrumentId: world.instruments[instrument],
      takenAt,
    }),
    lot.noteDeviation,
  );
}

/** What is restricted and what is little to the tenth of a gram, spices to the gram and never quite, roots by the pound. */
function onScale({ chance }: LotBeingMade, item: ItemKey, grams: number) {
  const about = grams * (1 + chance.between(-0.02, 0.025, 0.005));
  if (demoItems[item].substance || grams < 20)
    return {
      weight: { value: grams < 20 ? inSteps(about, 0.1) : inSteps(grams + chance.between(-0.3, 0.2, 0.1), 0.1), unit: 'g' as const },
      instrument: 'scale',
    };
  if (grams < heavy) return { weight: { value: Math.round(about), unit: 'g' as const }, instrument: 'scale' };
  return {
    weight: { value: inSteps(grams / gramsInPound + chance.between(-0.05, 0.1, 0.05), 0.05), unit: 'lb' as const },
    instrument: 'floorScale',
  };
}

/** More meat goes in until the concentration is within its limit again, and salt for it; the moment after. */
function bringBackUnder(lot: LotBeingMade, at: Date): Date {
  const item = lot.meat[0]?.item ?? 'shoulder';
  const taken = inSteps(lot.plan.meat * 0.24, 0.05);
  const trimmed = inSteps(taken * 0.955, 0.05);
  putIn(lot, item, { taken, trimmed }, minutesAfter(at, 9));
  lot.trimmedGrams += trimmed * gramsInPound;
  settle(lot, minutesAfter(at, 13), weighedFromTheWrongSlip);
  const [, salt] = lot.product.ingredients.find(([each]) => each === 'salt') ?? [];
  if (salt) weigh(lot, 'salt', (trimmed * gramsInPound * salt) / 100, minutesAfter(at, 24));
  return minutesAfter(at, 27);
}
