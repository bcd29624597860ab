import * as contract from '@larderbook/contracts';
import { Chance } from './chance';
import { onDuty, stations } from './shop';
import { instantOf, minutesAfter, newId, type Story } from './story';
import type { World } from './world';

/** The packages of a lot, shared out over its customers as they asked for them. */
export function ship(story: Story, world: World, told: { packingId: string; packed: number }, to: string[], at: Date): void {
  const chance = new Chance(`${to.join()} ${told.packed} ${instantOf(at).slice(8, 10)}`);
  let left = told.packed;
  let when = at;
  for (const [index, customer] of to.entries()) {
    const others = to.length - index - 1;
    const count = others === 0 ? left : Math.round((left / (others + 1)) * chance.between(0.7, 1.25, 0.05));
    const sent = when;
    story.tell(sent, onDuty(sent), contract.recordShipment, { station: stations.door }).with((takenAt) => ({
      shipmentId: newId(sent),
      customerId: world.customers[customer] ?? '',
      document: `Delivery note ${world.deliveryNotes++}`,
      lines: [{ packingId: told.packingId, count }],
      takenAt,
    }));
    left -= count;
    when = minutesAfter(when, chance.between(15, 70));
  }
}
