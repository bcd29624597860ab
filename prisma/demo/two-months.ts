import { calendar, type PlannedLot } from './calendar';
import { Chance } from './chance';
import { checkInstruments } from './check-instruments';
import { deliveries } from './deliveries';
import { furnish } from './furnish';
import { liveALot } from './live-a-lot';
import { readSoFar, type Told } from './lot/cook-a-lot';
import { dayOf } from './lot/day-of-a-lot';
import { placeOf } from './lot/lot-being-made';
import { products } from './products';
import { isDried } from './products/demo-product';
import { clearOut, receive } from './receive';
import { ship } from './ship';
import { minutesAfter, Story, type Send } from './story';
import { daysLater, nextOpenDay, whenOpen, whenSuppliersCome } from './working-days';
import type { World } from './world';

/** Two months in the invented shop, ending now: deliveries, lots, mishaps and what was done about them, shipments. */
export async function twoMonths(send: Send, now: Date, progress?: (done: number, all: number) => void): Promise<void> {
  const morning = (daysAgo: number) => early(daysLater(now, -daysAgo));
  const world = await furnish(send, whenOpen(morning(64)));
  const story = new Story(send);

  takeDeliveries(story, world, now, morning);
  [59, 52, 45, 38, 31, 24, 17, 10, 3].forEach((daysAgo, week) =>
    checkInstruments(story, world, minutesAfter(whenOpen(morning(daysAgo)), 6), week),
  );
  for (const plan of calendar) {
    const told = liveALot(story, world, plan, startOf(plan, now, morning));
    waitAndShip(story, world, plan, told, now);
  }
  await story.run(progress);
}

/** Work begins early, by the clock of whoever looks. */
function early(day: Date): Date {
  const moment = new Date(day);
  moment.setHours(5, 30, 0, 0);
  return moment;
}

/** A lot begins when its people are ready for it; the one of today so that it chills now, its last reading a minute old. */
function startOf(plan: PlannedLot, now: Date, morning: (daysAgo: number) => Date): Date {
  const product = products[plan.product];
  if (plan.upTo === 'chilling' && !isDried(product)) {
    const { intoHeat, cook, onTheBench, chill } = dayOf(plan, product);
    const sinceStart = intoHeat + (cook.at(-1)?.[0] ?? 0) + 1 + onTheBench + (chill[readSoFar - 1]?.[0] ?? 0);
    return minutesAfter(now, -sinceStart - 1);
  }
  return minutesAfter(whenOpen(morning(plan.daysAgo)), new Chance(`${placeOf(plan)}: its start`).between(11, 52));
}

function takeDeliveries(story: Story, world: World, now: Date, morning: (daysAgo: number) => Date): void {
  for (const { daysAgo, minute, ...delivery } of deliveries) {
    const at = minutesAfter(whenSuppliersCome(morning(daysAgo)), minute);
    const known = world.receipts.length;
    receive(story, world, delivery, at);
    const taken = world.receipts[known];
    const cleared = minutesAfter(whenOpen(morning(daysAgo - 9)), 560 + minute);
    if (taken && cleared < now) clearOut(story, world, taken, cleared);
  }
}

/** Its cold store is read every open day until it leaves, on the day after it was cleared. */
function waitAndShip(story: Story, world: World, plan: PlannedLot, told: Told, now: Date): void {
  if (told.packed === 0) return;
  const chance = new Chance(`${placeOf(plan)}: its way out`);
  let morning = nextOpenDay(told.readyAt, 6, chance.between(5, 50));
  for (; morning < now; morning = nextOpenDay(morning, 6, chance.between(5, 50))) {
    told.lookAfter?.(morning);
    if (plan.shipTo) break;
  }
  if (plan.shipTo) ship(story, world, told, plan.shipTo, minutesAfter(morning, chance.between(70, 260)));
}
