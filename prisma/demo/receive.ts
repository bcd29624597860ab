import * as contract from '@larderbook/contracts';
import { Chance } from './chance';
import { demoItems, onDuty, stations, suppliers, type ItemKey } from './shop';
import { instantOf, minutesAfter, newId, type Story } from './story';
import type { World } from './world';

const day = 24 * 60;
export type Delivery = {
  item: ItemKey;
  pounds: number;
  fahrenheit: number;
  /** What was typed instead, and put right by the packing slip. */
  typed?: number;
};

type Said = contract.InputOf<typeof contract.correctReceipt>['receipt'];

/** Meat at the door: measured, and sent back when it is too warm. */
export function receive(story: Story, world: World, { item, pounds, fahrenheit, typed }: Delivery, at: Date): void {
  const receiptId = newId(at);
  const refused = fahrenheit > 40;
  const { from } = demoItems[item];
  const said = (takenAt: string, weighed: number): Said => ({
    itemId: world.items[item],
    supplierId: world.suppliers[from] ?? '',
    supplierLot: supplierLotOf(item, at),
    supplierEstablishmentNumber: numberOf(from),
    packDate: instantOf(minutesAfter(at, -2 * day)).slice(0, 10),
    weight: { value: weighed, unit: 'lb' },
    temperature: { value: fahrenheit, unit: '°F' },
    decision: refused ? 'refused' : 'accepted',
    reason: refused ? `${fahrenheit} °F between two boxes, cooling of the van off since the ferry. Sent back with the driver.` : '',
    takenAt,
  });

  const where = { station: stations.door };
  story.tell(at, onDuty(at), contract.recordReceipt, where).with((takenAt) => ({ receiptId, ...said(takenAt, typed ?? pounds) }));
  if (typed) {
    const noticed = minutesAfter(at, 52);
    story.tell(noticed, onDuty(noticed), contract.correctReceipt, { ...where, taken: at }).with((takenAt) => ({
      correctionId: newId(noticed),
      amends: receiptId,
      reason: `Two figures the wrong way round: the packing slip says ${pounds} lb, and so does the floor scale.`,
      receipt: said(takenAt, pounds),
    }));
  }
  if (!refused) world.receipts.push({ receiptId, item, pounds, at });
}

/** As each supplier numbers what leaves: the day of the year, or the date, and the item. */
export function supplierLotOf(item: ItemKey, at: Date): string {
  const iso = instantOf(minutesAfter(at, -2 * day)).slice(2, 10);
  const dayOfYear = Math.ceil((minutesAfter(at, -2 * day).getTime() - Date.UTC(at.getUTCFullYear(), 0, 1)) / 86_400_000);
  const letter = item.slice(0, 2).toUpperCase();
  const { from } = demoItems[item];
  if (from === 'holt') return `HH-${iso.slice(0, 2)}${String(Math.abs(dayOfYear)).padStart(3, '0')}-${letter}`;
  return from === 'fernside' ? `FY${iso.replaceAll('-', '')}${letter}` : `DS-${new Chance(`bag of ${item}`).between(10_400, 98_900)}`;
}

const numberOf = (from: keyof typeof suppliers): string | undefined => {
  const supplier = suppliers[from];
  return 'establishmentNumber' in supplier ? supplier.establishmentNumber : undefined;
};

/** What is left of a delivery when the next one has come: trim and ends that nobody makes anything of. */
export function clearOut(story: Story, world: World, from: { receiptId: string }, at: Date): void {
  story.tell(at, onDuty(at), contract.recordRemoval, { station: stations.door }).with((takenAt) => ({
    removalId: newId(at),
    receiptId: from.receiptId,
    kind: 'waste',
    takenAt,
    weight: { value: leftOf(world, from.receiptId), unit: 'lb' },
    note: 'Left over in the walk-in when the new meat came: into the rendering drum.',
  }));
}

const leftOf = (world: World, receiptId: string): number =>
  Math.max(0.05, Number((world.receipts.find((receipt) => receipt.receiptId === receiptId)?.pounds ?? 0).toFixed(2)));
