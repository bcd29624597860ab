import * as contract from '@larderbook/contracts';
import type { ItemKey } from '../shop';
import { minutesAfter, newId } from '../story';
import { takeFrom } from '../world';
import { tenths, type LotBeingMade } from './lot-being-made';
import { putIn } from './put-in-meat';
import { settle } from './settle';

/** Every ingredient of the formula on the bench scale, one after the other. */
export function weighIngredients(lot: LotBeingMade, begin: Date): void {
  lot.product.ingredients.forEach(([item, percent], index) => {
    const tooMuch = lot.plan.mishap === 'too much cure' && item === 'cure';
    const grams = tenths((lot.trimmedGrams * percent) / 100) * (tooMuch ? 1.2 : 1);
    const at = minutesAfter(begin, 3 * index);
    weigh(lot, item, tenths(grams), at);
    if (tooMuch) bringBackUnder(lot, minutesAfter(at, 1));
  });
}

function weigh(lot: LotBeingMade, item: ItemKey, grams: number, at: Date): void {
  const { lotId, world } = lot;
  lot.tell(at, contract.weighIn).with((takenAt) => ({
    weighingId: newId(at), lotId, itemId: world.items[item], receiptId: takeFrom(world, item, 0, at),
    weight: { value: grams, unit: 'g' }, instrumentId: world.instruments.scale, takenAt,
  }), lot.noteDeviation);
}

/** Cure was weighed by last week's slip: more meat goes in until the concentration is within its limit again. */
function bringBackUnder(lot: LotBeingMade, at: Date): void {
  const [item] = lot.product.meat[0] ?? ['shoulder'];
  const taken = tenths(lot.plan.meat * 0.24);
  putIn(lot, item as ItemKey, { taken, trimmed: tenths(taken * 0.96) }, at);
  settle(lot, minutesAfter(at, 5), {
    form: 'critical',
    cause: 'The slip of a larger lot hung at the scale and the cure was weighed from it. The slip was taken away.',
    control: 'Trimmed meat was added before mixing; the concentration was worked out again and lies within its limit.',
    prevention: 'Targets are read from this record at the scale; paper slips are no longer used.',
    product: 'Nothing had left the mixing table. The lot was held until the concentration was shown to be within its limit.',
    different: 'The slips are burnt, and a second person reads the target aloud.',
  }, [{
    decision: 'release', basis: 'worked on and measured again',
    reason: 'Worked out again on the larger meat block after the addition: within the limit.',
  }]);
}
