import { calendar } from './calendar';
import { Chance, inSteps } from './chance';
import { products } from './products';
import type { Delivery } from './receive';
import type { ItemKey } from './shop';

/** Once a week; the lots until the next one are made of it. */
const everyWeek = [59, 52, 45, 38, 31, 24, 17, 10, 3];

/** What more comes than the lots of the week take. */
const more = 1.02;

export type PlannedDelivery = Delivery & { daysAgo: number; minute: number };

/** Meat for the lots of each week, a little more than they need. One box arrives too warm; one weight is mistyped. */
export const deliveries: PlannedDelivery[] = everyWeek.flatMap((daysAgo) => {
  const chance = new Chance(`delivery, ${daysAgo} days ago`);
  const minute = { pork: chance.between(75, 140), beef: chance.between(150, 260) };
  const brought = [...neededAfter(daysAgo)].map(([item, needed], index) => {
    const pounds = inSteps(needed * more + chance.between(1.5, 4.5, 0.05), 0.05);
    const at = (item === 'shoulder' || item === 'belly' ? minute.pork : minute.beef) + 6 * index;
    return {
      daysAgo,
      minute: at,
      item,
      pounds,
      fahrenheit: chance.between(34.7, 38.8, 0.1),
      ...(daysAgo === 10 && item === 'shoulder' && { typed: wrongWayRound(pounds) }),
    };
  });
  const tooWarm = { daysAgo, minute: minute.pork - 38, item: 'shoulder' as const, pounds: 31.6, fahrenheit: 47.3 };
  return daysAgo === 38 ? [tooWarm, ...brought] : brought;
});

/** Pounds of each meat that the lots until the next delivery take. */
function neededAfter(daysAgo: number): Map<ItemKey, number> {
  const needed = new Map<ItemKey, number>();
  for (const lot of calendar.filter((each) => each.daysAgo < daysAgo && each.daysAgo >= daysAgo - 7)) {
    for (const [index, [item, percent]] of products[lot.product].meat.entries()) {
      const added = lot.mishap === 'too much cure' && index === 0 ? 0.25 : 0;
      needed.set(item, (needed.get(item) ?? 0) + lot.meat * (percent / 100 + added));
    }
  }
  return needed;
}

/** 39.2 for 93.2; where both are alike, 10 less. */
function wrongWayRound(pounds: number): number {
  const [tens, ones] = [Math.floor(pounds / 10) % 10, Math.floor(pounds) % 10];
  return inSteps(tens === ones ? pounds - 10 : pounds + 9 * (ones - tens), 0.05);
}
