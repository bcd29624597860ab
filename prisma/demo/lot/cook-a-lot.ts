import type { ControlPoint } from '@larderbook/contracts';
import type { CookedProduct } from '../products/demo-product';
import { minutesAfter, newId } from '../story';
import type { LotBeingMade } from './lot-being-made';
import { measureAndAnswer } from './measure-and-answer';
import { pack, review } from './pack';
import { putInMeat } from './put-in-meat';
import { readCore } from './read-core';
import { settle } from './settle';
import { weighIngredients } from './weigh-ingredients';

/** Where the story of a lot has got to: its packages, if any, and since when they are ready. */
export type Told = { lotId: string; packingId: string; packed: number; readyAt: Date };

/** One day: weighed, cooked, chilled, packed and reviewed, as far as the calendar goes. */
export function cookALot(lot: LotBeingMade<CookedProduct>): Told {
  const { plan, product } = lot;
  putInMeat(lot);
  weighIngredients(lot, lot.after(22));
  const curves = lot.controlPoints.filter(({ takenAs }) => takenAs === 'curve');
  const outOfHeat = readCore(lot, curves.filter((point) => !isChill(point)), lot.after(55), product.cook);
  const tooSlow = plan.mishap === 'chilled too slowly';
  const chilling = plan.upTo === 'chilling';
  const curve = tooSlow ? product.chillTooSlow : product.chill;
  const begin = minutesAfter(outOfHeat, 8);
  const cold = readCore(lot, curves.filter(isChill), begin, chilling ? curve.slice(0, 6) : curve, !chilling);

  const told: Told = { lotId: lot.lotId, packingId: newId(cold), packed: 0, readyAt: cold };
  if (chilling) return told;
  if (tooSlow) {
    if (plan.upTo !== 'held') condemn(lot, minutesAfter(cold, 20));
    return told;
  }
  measureAndAnswer(lot, minutesAfter(cold, 15));
  const packed = pack(lot, told.packingId, minutesAfter(cold, 45));
  if (plan.upTo !== 'packed') review(lot, minutesAfter(cold, 70));
  return { ...told, packed };
}

const isChill = (point: ControlPoint) => point.limits.some(({ limit }) => limit.kind === 'cooling');

const condemn = (lot: LotBeingMade, at: Date): void =>
  settle(lot, at, {
    form: 'critical',
    cause: 'The fan of the chiller had iced up and the trays stood too close. The coil was defrosted.',
    control: 'The empty chiller was brought down to 30 °F and the next lot was followed with readings every ten minutes.',
    prevention: 'The coil is looked at each morning; trays stand a hand apart, one layer deep.',
    product: 'The whole lot was tagged, kept apart in the walk-in and then condemned; none was packed.',
    different: 'The second chiller is used whenever more than four trays are in the first.',
  }, [{ decision: 'condemn', reason: 'Cooling stage missed; growth could not be ruled out.' }]);
