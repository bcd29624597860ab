import { calendar, deliveries } from './calendar';
import { checkInstruments } from './check-instruments';
import { furnish } from './furnish';
import { liveALot } from './live-a-lot';
import { receive } from './receive';
import { ship } from './ship';
import { minutesAfter, Story, type Send } from './story';

const day = 24 * 60;
/** Long enough for the newest lot to be in its chill now, with its last reading a minute old: its forecast is fresh. */
const nearlySevenHoursBack = -410;

/** Two months in the invented shop, ending now: deliveries, lots, mishaps and what was done about them, shipments. */
export async function twoMonths(send: Send, now: Date, progress?: (done: number, all: number) => void): Promise<void> {
  const begun = minutesAfter(now, nearlySevenHoursBack);
  const morning = (daysAgo: number, minute = 0) =>
    minutesAfter(daysAgo === 0 ? begun : earlyOn(minutesAfter(begun, -daysAgo * day)), minute);
  const world = await furnish(send, morning(60));
  const story = new Story(send);

  for (const delivery of deliveries) receive(story, world, delivery, morning(delivery.daysAgo));
  [59, 52, 45, 38, 31, 24, 17, 10, 3].forEach((daysAgo, week) => checkInstruments(story, world, morning(daysAgo, 10), week));
  for (const lot of calendar) {
    const told = liveALot(story, world, lot, morning(lot.daysAgo, 15));
    if (lot.shipTo && told.packed > 0) ship(story, world, told, lot.shipTo, minutesAfter(told.readyAt, day));
  }
  await story.run(progress);
}

/** The latest half past five that is not after the moment, by the clock of whoever looks: work begins early. */
function earlyOn(moment: Date): Date {
  const early = new Date(moment);
  early.setHours(5, 30, 0, 0);
  return early > moment ? minutesAfter(early, -day) : early;
}
