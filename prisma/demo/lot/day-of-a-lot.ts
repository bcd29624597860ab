import type { PlannedLot } from '../calendar';
import { Chance } from '../chance';
import { along, asRead, cooling, type Curve, type Pace } from '../curves';
import type { CookedProduct } from '../products/demo-product';
import { placeOf } from './lot-being-made';

/** Hourly at first, every half hour from 130 °F, every few minutes while the end is near, as the plans have it. */
const cookPace =
  (end: number): Pace =>
  (shown) =>
    shown < 122 ? [34, 55] : shown < end - 9 ? [15, 26] : [5, 9];
/** In every quarter of an hour: a chill, a kettle that is hot within two hours, and whatever the plan counts growth in. */
const closely: Pace = () => [10, 15];
const twoHours = 120;

/** Minutes from the start of the lot into the heat and from there to the chiller, and what was read in both. */
export type DayOfALot = { intoHeat: number; onTheBench: number; cook: Curve; chill: Curve };

/** The cook and the chill of one lot, as its people read them: no two days are alike. */
export function dayOf(plan: PlannedLot, product: CookedProduct): DayOfALot {
  const chance = new Chance(`${placeOf(plan)}: its day`);
  return {
    intoHeat: chance.between(62, 78),
    onTheBench: chance.between(5, 10),
    cook: cookOf(product, chance),
    chill: chillOf(plan, product, chance),
  };
}

function cookOf({ cook, watchedClosely }: CookedProduct, chance: Chance): Curve {
  const slower = chance.between(0.95, 1.07, 0.01);
  const [lastMinute = 0, hottest = 0] = cook.at(-1) ?? [];
  const course = along(startingAt(cook, chance), slower);
  return asRead(
    course,
    chance,
    watchedClosely || lastMinute < twoHours ? closely : cookPace(hottest),
    (_, minute) => minute >= lastMinute * slower,
  );
}

function chillOf({ mishap, upTo, product: key }: PlannedLot, { chill, chillTooSlow }: CookedProduct, chance: Chance): Curve {
  const tooSlow = mishap?.startsWith('chilled too slowly');
  const usual = tooSlow ? chillTooSlow : chill;
  if (!usual) throw new Error(`The story has no slow chill of ${key}`);
  const course = cooling({
    ...usual,
    from: usual.from + chance.between(-2.5, 2, 0.1),
    around: usual.around + chance.between(-0.4, 0.5, 0.1),
    perMinute: usual.perMinute * (tooSlow ? (upTo === 'held' ? 0.86 : 1) : chance.between(0.96, 1.08, 0.01)),
  });
  return asRead(course, chance, closely, (shown) => shown <= usual.until);
}

/** Meat comes from the walk-in a little warmer or colder. */
const startingAt = ([first, ...others]: Curve, chance: Chance): Curve =>
  first ? [[first[0], first[1] + chance.between(-2, 2.5, 0.1)], ...others] : [];
