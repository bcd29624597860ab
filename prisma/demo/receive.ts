import * as contract from '@larderbook/contracts';
import { demoItems, operator, type ItemKey } from './shop';
import { instantOf, minutesAfter, newId, type Story } from './story';
import type { World } from './world';

const day = 24 * 60;
type Delivery = { item: ItemKey; pounds: number; fahrenheit: number };

/** Meat at the door: measured, and sent back when it is too warm. */
export function receive(story: Story, world: World, { item, pounds, fahrenheit }: Delivery, at: Date): void {
  const receiptId = newId(at);
  const refused = fahrenheit > 40;
  story.tell(at, operator, contract.recordReceipt).with((takenAt) => ({
    receiptId, itemId: world.items[item], supplierId: world.suppliers[demoItems[item].from] ?? '', supplierLot: `${item.slice(0, 2).toUpperCase()}${at.getTime().toString().slice(3, 9)}`,
    packDate: instantOf(minutesAfter(at, -2 * day)).slice(0, 10), weight: { value: pounds, unit: 'lb' }, temperature: { value: fahrenheit, unit: '°F' },
    decision: refused ? 'refused' : 'accepted', reason: refused ? 'Too warm; sent back with the driver.' : '', takenAt,
  }));
  if (!refused) world.receipts.push({ receiptId, item, pounds, at });
}
