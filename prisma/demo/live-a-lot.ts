import type { PlannedLot } from './calendar';
import { cookALot, type Told } from './lot/cook-a-lot';
import { dryALot } from './lot/dry-a-lot';
import { LotBeingMade } from './lot/lot-being-made';
import { products } from './products';
import { isDried } from './products/demo-product';
import type { Story } from './story';
import type { World } from './world';

/** One lot from the walk-in to the packages, as its people would record it. Returns where it got to. */
export function liveALot(story: Story, world: World, plan: PlannedLot, start: Date): Told {
  const product = products[plan.product];
  return isDried(product)
    ? dryALot(new LotBeingMade(story, world, plan, product, start))
    : cookALot(new LotBeingMade(story, world, plan, product, start));
}
