import { liveALot } from '../../../prisma/demo/live-a-lot';
import { receive } from '../../../prisma/demo/receive';
import { ship } from '../../../prisma/demo/ship';
import { minutesAfter, Story } from '../../../prisma/demo/story';
import type { BenchShop } from './bench-shop';

/** One lot of sausage from the delivered meat to two customers, all recorded by the owner. */
export async function aWholeLot({ tell, world }: BenchShop): Promise<{ lotId: string; packingId: string }> {
  const story = new Story((route, input) => tell(route, input));
  const start = minutesAfter(new Date(), -36 * 60);
  receive(story, world, { item: 'shoulder', pounds: 60, fahrenheit: 36.5 }, minutesAfter(start, -60));
  receive(story, world, { item: 'belly', pounds: 30, fahrenheit: 37.2 }, minutesAfter(start, -55));
  const lot = liveALot(story, world, { daysAgo: 1, product: 'sausage', meat: 44 }, start);
  await story.run();
  // Nothing leaves before its review, which the book's own clock has signed just now.
  const shipping = new Story((route, input) => tell(route, input));
  const half = Math.floor(lot.packed / 2);
  ship(shipping, world, { ...lot, packed: half }, ['market'], new Date());
  ship(shipping, world, { ...lot, packed: lot.packed - half }, ['inn'], new Date());
  await shipping.run();
  return lot;
}
