import * as contract from '@larderbook/contracts';
import type { ReplyOf, Trace } from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aCurve, aSausageLot } from '../builders/a-sausage-lot';
import { anotherShop, aShop, done, type Shop, type Worker } from '../builders/a-shop';
import { ask } from '../support/ask';
import { startApp, type TestApp } from '../support/start-app';

let larder: TestApp;
let shop: Shop;
let kitchen: SausageKitchen;
let inspector: Worker;
let stranger: Worker;
beforeAll(async () => {
  larder = await startApp();
  shop = await aShop(larder);
  kitchen = await aSausageKitchen(shop, larder);
  inspector = await shop.hire('inspector');
  stranger = (await anotherShop(larder)).owner;
});
afterAll(() => larder.close());

const kg = (value: number) => ({ value, unit: 'kg' as const });
const trace = (nodeId: string, by: Worker = inspector) => done<Trace>(ask(by, contract.showTrace, { nodeId }));
const find = async (words: string, by: Worker = inspector) =>
  (await done<ReplyOf<typeof contract.findTrace>>(ask(by, contract.findTrace, { words }))).found.map(({ kind, code }) => `${kind} ${code}`);
const codes = ({ nodes }: Trace['forward']) => nodes.map(({ kind, code }) => `${kind} ${code}`).sort();
const linksOf = (side: Trace['forward']) => {
  const names = new Map(side.nodes.map(({ id, code }) => [id, code]));
  return side.links
    .map(({ from, to, grams, count }) => `${names.get(from)} → ${names.get(to)}: ${grams} g${count === undefined ? '' : ` in ${count}`}`)
    .sort();
};
const codeOf = async (receiptId: string) => (await done<contract.Receipt>(ask(inspector, contract.showReceipt, { receiptId }))).code;

const pack = async (lotId: string, count: number, grams: number) => {
  const packingId = v7();
  const { code } = await done<ReplyOf<typeof contract.packLot>>(
    ask(kitchen.operator, contract.packLot, {
      packingId,
      lotId,
      count,
      net: { value: grams, unit: 'g' },
      takenAt: kitchen.now(),
    }),
  );
  return { packingId, code };
};
const customer = async (name: string) => {
  const customerId = v7();
  await done(ask(kitchen.operator, contract.recordCustomer, { customerId, name, address: '3 Weir Lane', contact: '555 0142' }));
  return customerId;
};
const ship = (customerId: string, packingId: string, count: number) =>
  done<ReplyOf<typeof contract.recordShipment>>(
    ask(kitchen.operator, contract.recordShipment, {
      shipmentId: v7(),
      customerId,
      document: '',
      lines: [{ packingId, count }],
      takenAt: kitchen.now(),
    }),
  );

describe('from a supplier lot to its customers and back', () => {
  let receiptId: string;
  let cureId: string;
  let receipt: string;
  let cure: string;
  let first: { lotId: string; code: string };
  let second: { lotId: string; code: string };
  let run: { packingId: string; code: string };
  let inn: string;

  // One delivery goes into a lot; two kilograms of that lot are reworked into a second, of which some is shipped.
  beforeAll(async () => {
    receiptId = await kitchen.receive('pork', { supplierLot: 'HV-2041', weight: kg(40) });
    cureId = await kitchen.receive('cure', { supplierLot: 'CS-118', weight: kg(5) });
    [receipt, cure] = [await codeOf(receiptId), await codeOf(cureId)];
    first = await kitchen.startLot();
    await kitchen.putIn(first.lotId, { receiptId, weight: kg(10), trimmed: kg(9.5) });
    await kitchen.weighCure(first.lotId, { receiptId: cureId, weight: { value: 20, unit: 'g' } });

    second = await aLotThatShips(first.lotId);
    run = await pack(second.lotId, 10, 500);
    inn = await customer('Weir Inn');
    await done(ask(kitchen.reviewer, contract.signReview, { reviewId: v7(), lotId: second.lotId, statement: 'Complete.' }));
    await ship(inn, run.packingId, 4);
  });

  /** Everything met; two kilograms of an earlier lot go in with eight of its own meat. */
  async function aLotThatShips(sourceLotId: string) {
    const lot = await kitchen.startLot();
    await kitchen.putIn(lot.lotId, { sourceLotId, weight: kg(2) });
    await kitchen.putIn(lot.lotId, { receiptId, weight: kg(8) });
    await kitchen.weighCure(lot.lotId, { receiptId: cureId, weight: { value: 20, unit: 'g' } });
    await finish(lot.lotId);
    return lot;
  }

  test('forward from the delivery: every lot, every package, every customer, with what went where', async () => {
    const { start, forward, customers, suppliers } = await trace(receiptId);
    expect(start).toMatchObject({
      kind: 'receipt',
      code: receipt,
      what: 'Pork shoulder',
      supplier: 'Marlow Packing',
      supplierLot: 'HV-2041',
    });
    expect(codes(forward)).toEqual(
      [`receipt ${receipt}`, `lot ${first.code}`, `lot ${second.code}`, `packing ${run.code}`, 'customer Weir Inn'].sort(),
    );
    expect(linksOf(forward)).toEqual(
      [
        `${receipt} → ${first.code}: 10000 g`,
        `${receipt} → ${second.code}: 8000 g`,
        `${first.code} → ${second.code}: 2000 g`,
        `${second.code} → ${run.code}: 5000 g in 10`,
        `${run.code} → Weir Inn: 2000 g in 4`,
      ].sort(),
    );
    expect(customers).toMatchObject([
      {
        name: 'Weir Inn',
        contact: '555 0142',
        shipments: [{ packingCode: run.code, lotCode: second.code, count: 4, grams: 2000 }],
      },
    ]);
    expect(suppliers).toMatchObject([
      {
        name: 'Marlow Packing',
        receipts: [{ code: receipt, supplierLot: 'HV-2041', item: 'Pork shoulder', grams: 40_000 }],
      },
    ]);
  });

  test('back from a package: every lot and every delivery behind it, the cure too', async () => {
    const { start, backward, suppliers, customers } = await trace(run.packingId);
    expect(start).toMatchObject({ kind: 'packing', code: run.code });
    expect(linksOf(backward)).toEqual(
      [
        `${receipt} → ${first.code}: 10000 g`,
        `${cure} → ${first.code}: 20 g`,
        `${receipt} → ${second.code}: 8000 g`,
        `${cure} → ${second.code}: 20 g`,
        `${first.code} → ${second.code}: 2000 g`,
        `${second.code} → ${run.code}: 5000 g in 10`,
      ].sort(),
    );
    expect(suppliers[0]?.receipts.map((one) => one.supplierLot).sort()).toEqual(['CS-118', 'HV-2041']);
    expect(customers[0]?.name).toBe('Weir Inn');
  });

  test('a lot is traced both ways at once', async () => {
    const { backward, forward } = await trace(first.lotId);
    expect(codes(backward)).toEqual([`lot ${first.code}`, `receipt ${cure}`, `receipt ${receipt}`].sort());
    expect(codes(forward)).toEqual(['customer Weir Inn', `lot ${first.code}`, `lot ${second.code}`, `packing ${run.code}`].sort());
  });

  test('the balance of each delivery and lot adds up, or names what does not', async () => {
    const { balance } = await trace(receiptId);
    const of = (code: string) => balance.find((line) => line.code === code);
    expect(of(receipt)).toMatchObject({
      inGrams: 40_000,
      usedGrams: 18_000,
      onHandGrams: 22_000,
      unexplainedGrams: 0,
      accountedPercent: '100',
    });
    expect(of(first.code)).toMatchObject({
      inGrams: 10_020,
      usedGrams: 2000,
      removedGrams: 500,
      packedGrams: 0,
      onHandGrams: 7520,
      unexplainedGrams: 0,
    });
    expect(of(second.code)).toMatchObject({
      inGrams: 10_020,
      packedGrams: 5000,
      shippedGrams: 2000,
      onHandGrams: 3000,
      unexplainedGrams: 5020,
      accountedPercent: '49.9',
      fault: 'unexplained',
    });
  });

  test('a recorded loss explains it, a counted difference only names it', async () => {
    const remove = (kind: 'loss in cooking' | 'counted difference', grams: number) =>
      done(
        ask(kitchen.operator, contract.recordRemoval, {
          removalId: v7(),
          lotId: second.lotId,
          kind,
          weight: { value: grams, unit: 'g' },
          note: '',
          takenAt: kitchen.now(),
        }),
      );
    const line = async () => (await trace(second.lotId)).balance.find(({ code }) => code === second.code);
    await remove('loss in cooking', 5000);
    expect(await line()).toMatchObject({
      removedGrams: 5000,
      unexplainedGrams: 20,
      fault: 'unexplained',
    });
    await remove('counted difference', 20);
    expect(await line()).toMatchObject({ removedGrams: 5000, unexplainedGrams: 20, accountedPercent: '99.8' });
  });

  test('a customer’s new telephone number is the one to call', async () => {
    await done(
      ask(kitchen.operator, contract.recordCustomer, {
        customerId: v7(),
        amends: inn,
        name: 'Weir Inn & Rooms',
        address: '3 Weir Lane',
        contact: '555 0199',
      }),
    );
    expect((await trace(receiptId)).customers).toMatchObject([
      { name: 'Weir Inn & Rooms', contact: '555 0199', shipments: [{ count: 4 }] },
    ]);
  });

  test('another shop sees nothing of it', async () => {
    for (const nodeId of [receiptId, first.lotId, run.packingId]) {
      const { status, body } = await ask(stranger, contract.showTrace, { nodeId });
      expect([status, body.code]).toEqual([404, 'not-found']);
    }
    expect(await find('HV-2041', stranger)).toEqual([]);
  });

  test('a customer, a person or nothing at all is no place to start', async () => {
    for (const nodeId of [inn, inspector.personId, v7()]) expect((await ask(inspector, contract.showTrace, { nodeId })).status).toBe(404);
  });
});

test('what was corrected away carries nothing', async () => {
  const [wrong, right] = [await kitchen.receive('pork'), await kitchen.receive('pork')];
  const { lotId, code } = await kitchen.startLot();
  const { inputId } = await kitchen.putIn(lotId, { receiptId: wrong });
  await kitchen.putIn(lotId, { receiptId: right, amends: inputId, reason: 'Read the wrong label.' });
  expect((await trace(wrong)).forward.links).toEqual([]);
  expect(linksOf((await trace(right)).forward)).toEqual([`${await codeOf(right)} → ${code}: 10000 g`]);
  expect(codes((await trace(lotId)).backward)).toEqual([`lot ${code}`, `receipt ${await codeOf(right)}`].sort());
});

test('a lot reached by many ways is told once, however many ways there are', async () => {
  const receiptId = await kitchen.receive('pork', { weight: kg(500) });
  let [one, other] = [await kitchen.startLot(), await kitchen.startLot()];
  for (const { lotId } of [one, other]) await kitchen.putIn(lotId, { receiptId, weight: kg(100) });
  // Each generation takes from both lots of the one before: the ways double each time, the lots do not.
  for (let generation = 0; generation < 12; generation += 1) {
    const next = [await kitchen.startLot(), await kitchen.startLot()] as const;
    for (const { lotId } of next)
      for (const source of [one, other]) await kitchen.putIn(lotId, { sourceLotId: source.lotId, weight: { value: 100, unit: 'g' } });
    [one, other] = next;
  }
  const { forward, tookMilliseconds } = await trace(receiptId);
  expect(forward.nodes.filter(({ kind }) => kind === 'lot')).toHaveLength(26);
  expect(forward.links).toHaveLength(2 + 12 * 4);
  expect(tookMilliseconds).toBeGreaterThanOrEqual(0);
  expect((await trace(one.lotId)).backward.links).toHaveLength(2 + 11 * 4 + 2);
});

describe('finding where to start', () => {
  let lot: { code: string };
  beforeAll(async () => {
    await kitchen.receive('salt', { supplierLot: '100%_A\\B' });
    lot = await aSausageLot(kitchen, larder, 'packed');
  });

  test('by code of a lot: the lot and its packages', async () => {
    expect(await find(lot.code.toLowerCase())).toEqual(expect.arrayContaining([`lot ${lot.code}`, `packing ${lot.code}-P1`]));
  });

  test('by supplier and item, each word anywhere and in any order', async () => {
    const found = await find('pork marlow');
    expect(found.length).toBeGreaterThan(0);
    expect(found.every((one) => one.startsWith('receipt '))).toBe(true);
    expect(await find('pork nobody')).toEqual([]);
  });

  test('by product: lots and packages, at most twenty of each', async () => {
    const found = await find('smoked');
    expect(found.filter((one) => one.startsWith('lot '))).toHaveLength(20);
    expect(found).toContain(`packing ${lot.code}-P1`);
  });

  test('signs that mean something to a database are letters like any other', async () => {
    expect(await find('100%_A\\B')).toHaveLength(1);
    expect(await find('%_')).toHaveLength(1);
    expect(await find('_')).toHaveLength(1);
    expect(await find('\\')).toHaveLength(1);
    expect(await find("' OR 1=1 --")).toEqual([]);
  });

  test('nothing typed is asked about', async () => {
    expect((await ask(inspector, contract.findTrace, { words: ' ' })).body.code).toBe('invalid-input');
  });
});

/** From cured to labelled, everything met. */
async function finish(lotId: string): Promise<void> {
  await aCurve(kitchen, larder, lotId, 'cook', [120, 140, 159, 160]);
  await aCurve(kitchen, larder, lotId, 'chill', [140, 100, 78, 55, 39]);
  await kitchen.read(lotId, 'coldRoom', { entered: { value: 36, unit: '°F' } });
  await kitchen.read(lotId, 'label', { entered: { answer: true, seen: 'Label 12.' } });
}
