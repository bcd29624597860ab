import * as contract from '@larderbook/contracts';
import { operator } from './shop';
import { minutesAfter, newId, type Story } from './story';
import type { World } from './world';

/** The packages of a lot, shared out over its customers. */
export function ship(story: Story, world: World, told: { packingId: string; packed: number }, to: string[], at: Date): void {
  to.forEach((customer, index) => {
    const when = minutesAfter(at, 20 * index);
    const share = Math.floor(told.packed / to.length);
    const count = index === to.length - 1 ? told.packed - share * index : share;
    story.tell(when, operator, contract.recordShipment).with((takenAt) => ({
      shipmentId: newId(when), customerId: world.customers[customer] ?? '', document: '', lines: [{ packingId: told.packingId, count }], takenAt,
    }));
  });
}
