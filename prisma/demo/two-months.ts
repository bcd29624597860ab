import * as contract from '@larderbook/contracts';
import { calendar, deliveries } from './calendar';
import { furnish } from './furnish';
import { liveALot } from './live-a-lot';
import { demoItems, instruments, reviewer, suppliers, type ItemKey } from './shop';
import { instantOf, minutesAfter, newId, Story, type Send } from './story';
import type { World } from './world';

const day = 24 * 60;

/** Two months in the invented shop, ending now: deliveries, lots, mishaps and what was done about them, shipments. */
export async function twoMonths(send: Send, now: Date, progress?: (done: number, all: number) => void): Promise<void> {
  const morning = (daysAgo: number, minute = 0) => minutesAfter(minutesAfter(now, -9 * 60 + minute), -daysAgo * day);
  const world = await furnish(send, morning(60));
  const { suppliers: known } = await send(contract.listSuppliers, {}, reviewer, morning(60, 60));
  const supplierId = (item: ItemKey) => known.find(({ name }) => name === suppliers[demoItems[item].from].name)?.supplierId ?? '';
  const story = new Story(send);

  for (const delivery of deliveries) receive(story, world, delivery, supplierId(delivery.item), morning(delivery.daysAgo));
  for (const daysAgo of [59, 52, 45, 38, 31, 24, 17, 10, 3]) checkThermometer(story, world, morning(daysAgo, 10));
  for (const lot of calendar) {
    const told = liveALot(story, world, lot, morning(lot.daysAgo, 15));
    if (lot.shipTo && told.packed > 0) ship(story, world, told, lot.shipTo, minutesAfter(told.coldAt, day));
  }
  await story.run(progress);
}

function receive(story: Story, world: World, { item, pounds, fahrenheit }: (typeof deliveries)[number], supplierId: string, at: Date): void {
  const receiptId = newId(at);
  const refused = fahrenheit > 40;
  story.tell(at, 'demo-operator', contract.recordReceipt).with((takenAt) => ({
    receiptId, itemId: world.items[item], supplierId, supplierLot: `${item.slice(0, 2).toUpperCase()}${at.getTime().toString().slice(3, 9)}`,
    packDate: instantOf(minutesAfter(at, -2 * day)).slice(0, 10), weight: { value: pounds, unit: 'lb' }, temperature: { value: fahrenheit, unit: '°F' },
    decision: refused ? 'refused' : 'accepted', reason: refused ? 'Too warm; sent back with the driver.' : '', takenAt,
  }));
  if (!refused) world.receipts.push({ receiptId, item, pounds, at });
}

function checkThermometer(story: Story, world: World, at: Date): void {
  const [probe] = instruments;
  story.tell(at, 'demo-operator', contract.recordCalibration).with((takenAt) => ({
    calibrationId: newId(at), instrumentId: world.instruments[probe.key] ?? '', method: 'ice point', expected: 32, observed: 32.2, action: '', takenAt,
  }));
}

function ship(story: Story, world: World, told: { packingId: string; packed: number }, to: string[], at: Date): void {
  to.forEach((customer, index) => {
    const when = minutesAfter(at, 20 * index);
    const count = Math.floor(told.packed / to.length);
    story.tell(when, 'demo-operator', contract.recordShipment).with((takenAt) => ({
      shipmentId: newId(when), customerId: world.customers[customer] ?? '', document: '', lines: [{ packingId: told.packingId, count }], takenAt,
    }));
  });
}
