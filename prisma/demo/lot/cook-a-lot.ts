import type { CookedProduct } from '../products/demo-product';
import { minutesAfter, newId } from '../story';
import { dayOf, type DayOfALot } from './day-of-a-lot';
import type { LotBeingMade } from './lot-being-made';
import { answerForHumidity, coldStorage, measureAndAnswer } from './measure-and-answer';
import { pack, review, weighWhole } from './pack';
import { putInMeat } from './put-in-meat';
import { isChill, readCore } from './read-core';
import { settle } from './settle';
import { weighIngredients } from './weigh-ingredients';
import { doorAjar, icedCoil } from './what-was-done';

/** Where the story of a lot has got to: its packages, if any, and since when they are ready. */
export type Told = {
  lotId: string;
  packingId: string;
  packed: number;
  readyAt: Date;
  /** The cold store is read once more; left out where none is asked for. */
  lookAfter?: (at: Date) => void;
};

/** Readings of its chill that the newest lot has had. */
export const readSoFar = 6;

/** One day: weighed, cooked, chilled, packed and reviewed, as far as the calendar goes. */
export function cookALot(lot: LotBeingMade<CookedProduct>): Told {
  const { plan, product } = lot;
  const day = dayOf(plan, product);
  putInMeat(lot);
  weighIngredients(lot, lot.after(lot.meat.length * 12 + 2));
  const cold = cookAndChill(lot, day);

  const told: Told = { lotId: lot.lotId, packingId: newId(cold), packed: 0, readyAt: cold };
  if (plan.upTo === 'chilling' || plan.upTo === 'held') return told;
  if (plan.mishap === 'chilled too slowly') {
    settle(lot, minutesAfter(cold, 22), icedCoil);
    return told;
  }
  const weighed = weighWhole(lot, minutesAfter(cold, 9));
  const free = plan.mishap === 'chilled too slowly in part' ? settle(lot, minutesAfter(cold, 14), doorAjar) : cold;
  const looked = minutesAfter(free, lot.chance.between(24, 36));
  const upTo = measureAndAnswer(lot, looked);
  const packed = pack(lot, told.packingId, weighed, minutesAfter(upTo, lot.chance.between(14, 30)));
  if (plan.upTo !== 'packed') review(lot, minutesAfter(upTo, lot.chance.between(50, 85)));
  return { ...told, packed, readyAt: minutesAfter(upTo, 90), lookAfter: (at) => coldStorage(lot, at) };
}

/** The moment it is cold, or has got to. */
function cookAndChill(lot: LotBeingMade<CookedProduct>, day: DayOfALot): Date {
  const { intoHeat, onTheBench, cook, chill } = day;
  const curves = lot.controlPoints.filter(({ takenAs }) => takenAs === 'curve');
  const outOfHeat = readCore(
    lot,
    curves.filter((point) => !isChill(point)),
    lot.after(intoHeat),
    cook,
  );
  answerForHumidity(lot, minutesAfter(outOfHeat, 2), day);
  const chilling = lot.plan.upTo === 'chilling';
  const read = chilling ? chill.slice(0, readSoFar) : chill;
  return readCore(lot, curves.filter(isChill), minutesAfter(outOfHeat, onTheBench), read, !chilling);
}
