import * as contract from '@larderbook/contracts';
import type { ReplyOf, SupplierLotTrace } from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aCurve } from '../builders/a-sausage-lot';
import { anotherShop, aShop, done, type Shop, type Worker } from '../builders/a-shop';
import { ask } from '../support/ask';
import { aDevice } from '../support/device';
import { printed } from '../support/printed';
import { startApp, type TestApp } from '../support/start-app';

const kg = (value: number) => ({ value, unit: 'kg' as const });
const grams = (value: number) => ({ value, unit: 'g' as const });

let larder: TestApp;
let shop: Shop;
let kitchen: SausageKitchen;
let inspector: Worker;
let supplierId: string;
let otherId: string;
let codes: Record<'first' | 'second' | 'refused' | 'others', string>;

/**
 * One number, written in three ways: 40 kg of which 18 are used, 10 kg of which all are used, 12 kg refused; and 7 kg
 * of another supplier under the same number. Of the first lot 2 kg are reworked into the second, which is packed into
 * ten packages of 500 g; four of them are shipped.
 */
beforeAll(async () => {
  larder = await startApp();
  shop = await aShop(larder);
  kitchen = await aSausageKitchen(shop, larder);
  inspector = await shop.hire('inspector');
  otherId = v7();
  await done(ask(shop.owner, contract.recordSupplier, { supplierId: otherId, name: 'Holt Farm', address: '', contact: '' }));

  const first = await kitchen.receive('pork', { supplierLot: 'HV-2041', weight: kg(40) });
  const second = await kitchen.receive('pork', { supplierLot: ' hv- 2041', weight: kg(10) });
  const refused = await kitchen.receive('pork', {
    supplierLot: 'Hv-2041',
    weight: kg(12),
    decision: 'refused',
    reason: 'The seal was broken.',
  });
  const others = await kitchen.receive('pork', { supplierLot: 'HV-2041', weight: kg(7), supplierId: otherId });
  const cure = await kitchen.receive('cure', { supplierLot: 'CS-118', weight: kg(5) });
  await kitchen.receive('pork', { supplierLot: 'HV-20410', weight: kg(99) });
  codes = {
    first: await codeOf(first),
    second: await codeOf(second),
    refused: await codeOf(refused),
    others: await codeOf(others),
  };
  supplierId = (await receipt(first)).supplier.supplierId;

  const one = await kitchen.startLot();
  await kitchen.putIn(one.lotId, { receiptId: first, weight: kg(10), trimmed: kg(9.5) });
  await kitchen.weighCure(one.lotId, { receiptId: cure, weight: grams(20) });
  const two = await kitchen.startLot();
  await kitchen.putIn(two.lotId, { sourceLotId: one.lotId, weight: kg(2) });
  await kitchen.putIn(two.lotId, { receiptId: first, weight: kg(8) });
  await kitchen.weighCure(two.lotId, { receiptId: cure, weight: grams(20) });
  await finish(two.lotId);
  const packingId = await pack(two.lotId);
  await done(ask(kitchen.reviewer, contract.signReview, { reviewId: v7(), lotId: two.lotId, statement: 'Complete.' }));
  await ship(packingId, 4);
  const three = await kitchen.startLot();
  await kitchen.putIn(three.lotId, { receiptId: second, weight: kg(10) });
});
afterAll(() => larder.close());

const receipt = (receiptId: string) => done<contract.Receipt>(ask(inspector, contract.showReceipt, { receiptId }));
const codeOf = async (receiptId: string) => (await receipt(receiptId)).code;
const trace = (supplierLot: string, of?: string, by: Worker = inspector) =>
  done<SupplierLotTrace>(ask(by, contract.traceSupplierLot, { supplierLot, ...(of && { supplierId: of }) }));
const told = async (query: { supplierLot: string; supplierId?: string }, by: Worker = inspector) => {
  const { status, body } = await ask(by, contract.traceSupplierLot, query);
  return [status, body.code];
};

async function finish(lotId: string): Promise<void> {
  await aCurve(kitchen, larder, lotId, 'cook', [120, 140, 159, 160]);
  await aCurve(kitchen, larder, lotId, 'chill', [140, 100, 78, 55, 39]);
  await kitchen.read(lotId, 'coldRoom', { entered: { value: 36, unit: '°F' } });
  await kitchen.read(lotId, 'label', { entered: { answer: true, seen: 'Label 12.' } });
}
async function pack(lotId: string): Promise<string> {
  const packingId = v7();
  await done(ask(kitchen.operator, contract.packLot, { packingId, lotId, count: 10, net: grams(500), takenAt: kitchen.now() }));
  return packingId;
}
async function ship(packingId: string, count: number): Promise<void> {
  const customerId = v7();
  const inn = { customerId, name: 'Weir Inn', address: '3 Weir Lane', contact: '555 0142' };
  await done(ask(kitchen.operator, contract.recordCustomer, inn));
  const lines = [{ packingId, count }];
  const shipment = { shipmentId: v7(), customerId, document: '', lines, takenAt: kitchen.now() };
  await done(ask(kitchen.operator, contract.recordShipment, shipment));
}

test('one supplier’s number: every delivery however it was written, the refused one said to be refused', async () => {
  const { deliveries, supplierLot, usedBy } = await trace('hv-2041', supplierId);
  expect(supplierLot).toBe('HV-2041');
  expect(deliveries).toMatchObject([
    { code: codes.first, decision: 'accepted', grams: 40_000, usedGrams: 18_000, onHandGrams: 22_000, accountedPercent: '100' },
    { code: codes.second, decision: 'accepted', grams: 10_000, usedGrams: 10_000, onHandGrams: 0, accountedPercent: '100' },
    { code: codes.refused, decision: 'refused', reason: 'The seal was broken.', grams: 12_000, usedGrams: 0, onHandGrams: 0 },
  ]);
  expect(usedBy.map(({ supplier, deliveries: count }) => [supplier, count])).toEqual([
    ['Marlow Packing', 3],
    ['Holt Farm', 1],
  ]);
});

test('its weights and packages in all, each lot and package once, and all of it accounted for', async () => {
  const { totals, customers } = await trace('HV-2041', supplierId);
  expect(totals).toEqual({
    deliveries: 3,
    refused: 1,
    receivedGrams: 50_000,
    refusedGrams: 12_000,
    usedGrams: 28_000,
    leftGrams: 22_000,
    removedGrams: 0,
    condemnedGrams: 0,
    unexplainedGrams: 0,
    accountedPercent: '100',
    lots: 3,
    inWorkGrams: 17_520, // 10.02 kg less 0.5 trimmed and 2 reworked, and 10 kg
    packed: 10,
    packedGrams: 5000,
    shipped: 4,
    shippedGrams: 2000,
    notShipped: 6,
    notShippedGrams: 3000,
    customers: 1,
  });
  expect(customers).toMatchObject([{ name: 'Weir Inn', shipments: [{ count: 4, grams: 2000 }] }]);
});

test('forward it reaches through rework, and every delivery stands in it, used or not', async () => {
  const { forward, balance } = await trace('HV-2041', supplierId);
  const kinds = forward.nodes.map(({ kind }) => kind);
  expect(['receipt', 'lot', 'packing', 'customer'].map((kind) => kinds.filter((one) => one === kind).length)).toEqual([3, 3, 1, 1]);
  expect(forward.nodes.map(({ code }) => code)).toContain(codes.refused);
  expect(balance.filter(({ kind }) => kind === 'receipt').every(({ accountedPercent }) => accountedPercent === '100')).toBe(true);
});

test('the number of two suppliers: without a supplier both are traced, each by its name; with one only that one', async () => {
  const both = await trace('HV-2041');
  expect(both.deliveries.map(({ code, supplier }) => [code, supplier])).toEqual([
    [codes.first, 'Marlow Packing'],
    [codes.second, 'Marlow Packing'],
    [codes.refused, 'Marlow Packing'],
    [codes.others, 'Holt Farm'],
  ]);
  expect(both.totals).toMatchObject({ deliveries: 4, receivedGrams: 57_000, leftGrams: 29_000 });
  const other = await trace('HV-2041', otherId);
  expect(other.deliveries.map(({ code }) => code)).toEqual([codes.others]);
  expect(other.totals).toMatchObject({ deliveries: 1, refused: 0, lots: 0, packed: 0, shipped: 0, accountedPercent: '100' });
  expect(other.usedBy).toHaveLength(2);
});

test('a supplier that was corrected since goes by its new name, and its deliveries stay together', async () => {
  const amended = { supplierId: v7(), amends: otherId, name: 'Holt Farm Meats', address: '', contact: '555 0177' };
  await done(ask(shop.owner, contract.recordSupplier, amended));
  await kitchen.receive('pork', { supplierLot: 'HV-2041', weight: kg(3), supplierId: otherId });
  const { deliveries, suppliers, totals } = await trace('HV-2041', otherId);
  expect(deliveries.map(({ supplier }) => supplier)).toEqual(['Holt Farm Meats', 'Holt Farm Meats']);
  expect(suppliers).toMatchObject([{ name: 'Holt Farm Meats', contact: '555 0177' }]);
  expect(totals.receivedGrams).toBe(10_000);
});

test('what a count found missing in one delivery is not made up for by another', async () => {
  const [short, whole] = [
    await kitchen.receive('pork', { supplierLot: 'MM-1', weight: kg(10) }),
    await kitchen.receive('pork', { supplierLot: 'MM-1', weight: kg(10) }),
  ];
  const { lotId } = await kitchen.startLot();
  await kitchen.putIn(lotId, { receiptId: whole, weight: kg(10) });
  const removal = {
    removalId: v7(),
    receiptId: short,
    kind: 'counted difference' as const,
    weight: kg(1),
    note: '',
    takenAt: kitchen.now(),
  };
  await done(ask(kitchen.operator, contract.recordRemoval, removal));
  const { totals, deliveries } = await trace('mm-1');
  expect(deliveries.map(({ accountedPercent }) => accountedPercent)).toEqual(['90', '100']);
  expect(totals).toMatchObject({ receivedGrams: 20_000, unexplainedGrams: 1000, accountedPercent: '95' });
});

test('only refused: nothing was received, and nothing came of it', async () => {
  await kitchen.receive('pork', { supplierLot: 'RF-9', weight: kg(15), decision: 'refused', reason: 'Too warm.' });
  expect((await trace('RF-9')).totals).toMatchObject({
    deliveries: 1,
    refused: 1,
    receivedGrams: 0,
    refusedGrams: 15_000,
    leftGrams: 0,
    accountedPercent: '',
    lots: 0,
    customers: 0,
  });
});

test('it is found by the number, however its blanks are typed, each supplier by itself', async () => {
  const find = async (words: string, by: Worker = inspector) =>
    (await done<ReplyOf<typeof contract.findTrace>>(ask(by, contract.findTrace, { words }))).supplierLots.map(
      ({ supplierLot, supplier, deliveries }) => `${supplierLot.trim()} ${supplier} ${deliveries}`,
    );
  expect((await find('rf-9')).length).toBe(1);
  expect(await find('hv - 2041')).toEqual(expect.arrayContaining([expect.stringMatching(/ Marlow Packing 3$/)]));
  expect(await find('%')).toEqual([]);
  expect(await find('HV-2041', (await anotherShop(larder)).owner)).toEqual([]);
});

test('a number nobody delivered, another shop’s, and what is no number', async () => {
  expect(await told({ supplierLot: 'HV-204' })).toEqual([404, 'not-found']);
  expect(await told({ supplierLot: 'HV-2041', supplierId: v7() })).toEqual([404, 'not-found']);
  expect(await told({ supplierLot: '   ' })).toEqual([400, 'invalid-input']);
  expect(await told({ supplierLot: 'HV-2041', supplierId: 'Marlow' })).toEqual([400, 'invalid-input']);
  expect(await told({ supplierLot: "' OR 1=1 --" })).toEqual([404, 'not-found']);
  expect(await told({ supplierLot: 'HV-2041' }, (await anotherShop(larder)).owner)).toEqual([404, 'not-found']);
  const { status } = await aDevice(larder.app).get('/supplier-lot-traces?supplierLot=HV-2041');
  expect(status).toBe(401);
});

test('on paper: every delivery with its weight, refused ones struck, in all in pounds and packages, and where it went', async () => {
  const path = `/supplier-lot-traces/paper?supplierLot=hv-2041&supplierId=${supplierId}`;
  const { text, title, name } = await printed(inspector, path);
  expect(name).toBe('inline; filename="Pork-shoulder-HV-2041-supplier-lot.pdf"');
  expect(title).toBe('Supplier’s lot: Lot HV-2041, Pork shoulder, Marlow Packing');
  for (const said of [
    'HV-2041',
    'Pork shoulder, from Marlow Packing',
    'Accounted for 100 %',
    'Received 110.23 lb in 2 deliveries',
    'Refused 26.46 lb in 1 delivery',
    'Went into lots 61.73 lb, now in 3 lots',
    'Still as delivered 48.5 lb',
    'Packed 10 packages, 11.02 lb',
    'Shipped 4 packages, 4.41 lb, to 1 customer',
    'Not shipped 6 packages, 6.61 lb',
    `${codes.refused} Pork shoulder Marlow Packing, lot Hv-2041 26.46 lb Refused, 26.46 lb went back The seal was broken.`,
    '39.68 lb went into lots',
    '48.5 lb still here',
    'Weir Inn',
    '3 Weir Lane',
    '555 0142',
    '4 packages of',
    'Holt Farm Meats too; only one supplier is traced here.',
    'call them first',
    'Ledger head',
  ])
    expect(text).toContain(said);
  expect(text).not.toContain(codes.others);
  const both = await printed(inspector, '/supplier-lot-traces/paper?supplierLot=HV-2041');
  expect(both.text).toContain('2 suppliers use this number; all of them are traced here.');
  expect(both.text).toContain(codes.others);
});

test('on paper it is only for the shop, and of a number that was delivered', async () => {
  const of = async (query: string, by: Worker = inspector) => {
    const { status, body } = await by.get(`/supplier-lot-traces/paper?${query}`);
    return [status, body.code];
  };
  expect(await of('supplierLot=HV-204')).toEqual([404, 'not-found']);
  expect(await of('supplierLot=')).toEqual([400, 'invalid-input']);
  expect(await of('supplierLot=HV-2041', (await anotherShop(larder)).owner)).toEqual([404, 'not-found']);
  expect((await aDevice(larder.app).get('/supplier-lot-traces/paper?supplierLot=HV-2041')).status).toBe(401);
});
