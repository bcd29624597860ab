import * as contract from '@larderbook/contracts';
import type { InputOf, ReplyOf } from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aSausageLot } from '../builders/a-sausage-lot';
import { act, decide, settle } from '../builders/a-settlement';
import { anotherShop, aShop, done, type Shop, type Worker } from '../builders/a-shop';
import { ask } from '../support/ask';
import { startApp, type TestApp } from '../support/start-app';

let larder: TestApp;
let shop: Shop;
let kitchen: SausageKitchen;
let inspector: Worker;
let stranger: Worker;
beforeAll(async () => {
  larder = await startApp(); // 2 March 2026, 2 o'clock in the morning in the shop
  shop = await aShop(larder);
  kitchen = await aSausageKitchen(shop, larder);
  inspector = await shop.hire('inspector');
  stranger = (await anotherShop(larder)).owner;
});
afterAll(() => larder.close());

type Reply = Awaited<ReturnType<typeof ask>>;
type Partly<R extends contract.RouteShape> = Partial<InputOf<R>>;
const said = ({ status, body }: Reply) => [status, body.code, body.detail];
const code = (reply: Reply) => said(reply).slice(0, 2);
const g = (value: number) => ({ value, unit: 'g' as const });
const kg = (value: number) => ({ value, unit: 'kg' as const });

const customer = (fields: Partly<typeof contract.recordCustomer> = {}, by = kitchen.operator) =>
  ask(by, contract.recordCustomer, {
    customerId: v7(),
    name: 'Fenwick Deli',
    address: '8 Mill Street',
    contact: '555 0101',
    ...fields,
  });
const aCustomer = async (name = 'Fenwick Deli') =>
  (await done<ReplyOf<typeof contract.recordCustomer>>(customer({ name }))).customerId;

const pack = (lotId: string, fields: Partly<typeof contract.packLot> = {}, by = kitchen.operator) =>
  ask(by, contract.packLot, { packingId: v7(), lotId, count: 10, net: g(500), takenAt: kitchen.now(), ...fields });
const packed = (lotId: string, fields: Partly<typeof contract.packLot> = {}) =>
  done<ReplyOf<typeof contract.packLot>>(pack(lotId, fields));

const ship = async (
  lines: { packingId: string; count: number }[],
  fields: Partly<typeof contract.recordShipment> = {},
  by = kitchen.operator,
) =>
  ask(by, contract.recordShipment, {
    shipmentId: v7(),
    customerId: fields.customerId ?? (await aCustomer()),
    document: '',
    lines,
    takenAt: kitchen.now(),
    ...fields,
  });
const shipped = async (lines: { packingId: string; count: number }[]) =>
  done<ReplyOf<typeof contract.recordShipment>>(ship(lines));

const stock = async (left: 'some' | 'any' = 'some', by = kitchen.operator) =>
  (await done<ReplyOf<typeof contract.listPackings>>(ask(by, contract.listPackings, { left }))).packings;
const inStock = async (packingId: string) => (await stock()).find((one) => one.packingId === packingId);

describe('customers', () => {
  test('are listed by name, corrected ones as they are now and under the id they began with', async () => {
    const customerId = await aCustomer('Zeller Market');
    await aCustomer('Arbor Inn');
    expect((await customer({ name: 'Zeller & Daughter', contact: '555 0199', amends: customerId })).body).toMatchObject(
      { customerId, contact: '555 0199' },
    );
    const { customers } = await done<ReplyOf<typeof contract.listCustomers>>(
      ask(inspector, contract.listCustomers, {}),
    );
    expect(customers.map(({ name }) => name)).toEqual(['Arbor Inn', 'Zeller & Daughter']);
  });

  test('are not added by the inspector, nor corrected by another shop', async () => {
    expect(code(await customer({}, inspector))).toEqual([403, 'not-allowed']);
    expect(code(await customer({ amends: await aCustomer() }, stranger))).toEqual([404, 'not-found']);
    expect(
      (await done<ReplyOf<typeof contract.listCustomers>>(ask(stranger, contract.listCustomers, {}))).customers,
    ).toEqual([]);
  });
});

describe('packing', () => {
  test('numbers the runs of a lot and prints a use-by counted from the day in the shop', async () => {
    const { lotId, code: lotCode } = await aSausageLot(kitchen, larder, 'cured');
    expect(await packed(lotId, { takenAt: '2026-03-02T05:30:00Z' })).toMatchObject({
      code: `${lotCode}-P1`,
      useBy: '2026-03-22',
    }); // 23:30 on the 1st
    expect(await packed(lotId, { takenAt: '2026-03-02T06:00:00Z', count: 1 })).toMatchObject({
      code: `${lotCode}-P2`,
      useBy: '2026-03-23',
    });
    expect(await packed(lotId, { useBy: '2026-05-01', count: 1 })).toMatchObject({
      code: `${lotCode}-P3`,
      useBy: '2026-05-01',
    });
  });

  test('counts the use-by with the days the product has now', async () => {
    const products = await done<ReplyOf<typeof contract.listProducts>>(ask(shop.owner, contract.listProducts, {}));
    const product = products.products.find(({ productId }) => productId === kitchen.productId);
    if (!product) throw new Error('The kitchen makes one product');
    const { formulaVersion: _, planInForce: __, productId, ...fields } = product;
    const change = (useByDays: number) =>
      done(ask(shop.owner, contract.recordProduct, { ...fields, productId: v7(), useByDays, amends: productId }));
    await change(5);
    const { lotId } = await aSausageLot(kitchen, larder, 'cured');
    expect((await packed(lotId)).useBy).toBe('2026-03-07');
    await change(21);
  });

  test('no more than went in: 10 kg of meat and 25 g of cure make 20 packages of 500 g, not 21', async () => {
    const { lotId, code: lotCode } = await aSausageLot(kitchen, larder, 'cured');
    await packed(lotId, { count: 15 });
    expect(said(await pack(lotId, { count: 6 }))).toEqual([
      422,
      'more-than-there-is',
      `6 × 500 g are 3 kg; of lot ${lotCode} 2.525 kg can still be packed ` +
        '(10.025 kg went in, 0 kg left it, 7.5 kg are packed).',
    ]);
    await packed(lotId, { count: 5 });
    expect(code(await pack(lotId, { count: 1, net: g(25.001) }))).toEqual([422, 'more-than-there-is']);
    await packed(lotId, { count: 1, net: g(25) });
  });

  test('less what was lost, and nothing of a lot into which nothing went', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'cured');
    const loss = {
      removalId: v7(),
      lotId,
      kind: 'loss in cooking' as const,
      weight: kg(1),
      note: '',
      takenAt: kitchen.now(),
    };
    await done(ask(kitchen.operator, contract.recordRemoval, loss));
    expect(code(await pack(lotId, { count: 1, net: kg(9.026) }))).toEqual([422, 'more-than-there-is']);
    await packed(lotId, { count: 1, net: kg(9.025) });
    const empty = await kitchen.startLot();
    expect(code(await pack(empty.lotId, { count: 1 }))).toEqual([422, 'more-than-there-is']);
  });

  test('of two that would pack the rest at the same moment, one does', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'cured');
    const replies = await Promise.all([pack(lotId, { count: 12 }), pack(lotId, { count: 12 })]);
    expect(replies.map(({ status }) => status).sort()).toEqual([200, 422]);
  });

  test('sent twice lands once; with another count it is refused', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'cured');
    const run = { packingId: v7(), takenAt: kitchen.now() };
    const first = await packed(lotId, run);
    larder.clock.moveOn(60_000);
    expect(await packed(lotId, run)).toEqual(first);
    expect(code(await pack(lotId, { ...run, count: 9 }))).toEqual([409, 'sent-differently']);
    expect((await kitchen.showLot(lotId)).packings).toHaveLength(1);
  });

  test('keeps and flags what is odd about its time', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'cured');
    expect((await packed(lotId, { takenAt: '2026-02-01T08:00:00Z', count: 1 })).flags).toEqual([
      'before-the-lot',
      'recorded-late',
    ]);
    expect(code(await pack(lotId, { takenAt: '2026-12-01T08:00:00Z', count: 1 }))).toEqual([422, 'in-the-future']);
  });

  test.each([
    ['none', { count: 0 }],
    ['half a package', { count: 1.5 }],
    ['no weight', { net: g(0) }],
    ['less than nothing', { net: g(-5) }],
    ['a day that is none', { useBy: '2026-02-30' }],
  ])('refuses %s beside its field', async (_case, fields) => {
    const { lotId } = await kitchen.startLot();
    expect(code(await pack(lotId, fields))).toEqual([400, 'invalid-input']);
  });

  test('refuses a use-by before the day of packing, and takes that day itself', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'cured');
    const on = (useBy: string) => pack(lotId, { count: 1, useBy, takenAt: '2026-03-02T05:30:00Z' }); // 23:30 on the 1st
    expect(said(await on('2026-02-28'))).toEqual([
      400,
      'invalid-input',
      'The use-by 2026-02-28 comes before the day of packing, 2026-03-01.',
    ]);
    expect((await on('2026-03-01')).body).toMatchObject({ useBy: '2026-03-01' });
  });

  test('is not for the inspector, nor of another shop’s lot', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'cured');
    expect(code(await pack(lotId, {}, inspector))).toEqual([403, 'not-allowed']);
    expect(code(await pack(lotId, {}, stranger))).toEqual([404, 'not-found']);
  });
});

describe('the stock', () => {
  test('says of each run whether it may ship, and why not', async () => {
    const { packingId } = await aSausageLot(kitchen, larder, 'packed');
    expect(await inStock(packingId)).toMatchObject({
      left: 10,
      standing: 'to-review',
      mayShip: false,
      because: expect.stringContaining('pre-shipment review'),
    });
    const cleared = await aSausageLot(kitchen, larder, 'reviewed');
    expect(await inStock(cleared.packingId)).toMatchObject({ left: 10, standing: 'cleared', mayShip: true });
  });

  test('leaves out what has gone, unless all are asked for; the oldest use-by comes first', async () => {
    const { packingId } = await aSausageLot(kitchen, larder, 'shipped');
    expect(await inStock(packingId)).toBeUndefined();
    const all = await stock('any', inspector);
    expect(all.find((one) => one.packingId === packingId)).toMatchObject({ left: 0, count: 10 });
    expect(all.map(({ useBy }) => useBy)).toEqual(all.map(({ useBy }) => useBy).sort());
    expect(await stock('any', stranger)).toEqual([]);
  });
});

describe('shipping', () => {
  test('numbers shipments one after the other and shows what left, to whom', async () => {
    const { packingId, code: lotCode, lotId } = await aSausageLot(kitchen, larder, 'reviewed');
    const first = await shipped([{ packingId, count: 4 }]);
    const second = await shipped([{ packingId, count: 6 }]);
    expect(second.number).toBe(first.number + 1);
    expect(first).toMatchObject({
      customer: { name: 'Fenwick Deli' },
      made: { name: 'The operator' },
      lines: [
        { packingCode: `${lotCode}-P1`, lotId, lotCode, productName: 'Smoked sausage', count: 4, netGrams: 3200 },
      ],
    });
    const { shipments } = await done<ReplyOf<typeof contract.listShipments>>(
      ask(inspector, contract.listShipments, {}),
    );
    expect(shipments.slice(0, 2).map(({ number }) => number)).toEqual([second.number, first.number]);
    expect(await kitchen.showLot(lotId)).toMatchObject({ standing: 'shipped', packagesLeft: 0 });
  });

  test('lists a page of what left before a moment', async () => {
    const { packingId } = await aSausageLot(kitchen, larder, 'reviewed');
    const { number } = await shipped([{ packingId, count: 1 }]);
    const before = kitchen.now();
    larder.clock.moveOn(1000);
    await shipped([{ packingId, count: 1 }]);
    const page = async (moment: string) =>
      done<ReplyOf<typeof contract.listShipments>>(ask(inspector, contract.listShipments, { before: moment }));
    const [newest] = (await page(kitchen.now())).shipments;
    expect(newest?.number).toBe(number);
    expect((await page(before)).shipments.map((shipment) => shipment.number)).not.toContain(number);
    expect(await page('2026-01-01T00:00:00Z')).toEqual({ shipments: [], more: false });
  });

  test('refuses a lot that is not cleared, and names it and why; nothing of the load leaves', async () => {
    const cleared = await aSausageLot(kitchen, larder, 'reviewed');
    const waiting = await aSausageLot(kitchen, larder, 'packed');
    const reply = await ship([
      { packingId: cleared.packingId, count: 1 },
      { packingId: waiting.packingId, count: 1 },
    ]);
    const [status, problem, detail] = said(reply);
    expect([status, problem]).toEqual([409, 'not-cleared']);
    expect(detail).toMatch(new RegExp(`^Lot ${waiting.code}: .*pre-shipment review`));
    expect(reply.body.errors).toEqual([{ pointer: '#/lines/1', detail }]);
    expect(await inStock(cleared.packingId)).toMatchObject({ left: 10 });
  });

  test('refuses a cleared lot again as soon as a deviation opens on it', async () => {
    const { lotId, packingId } = await aSausageLot(kitchen, larder, 'reviewed');
    await done(
      ask(kitchen.operator, contract.openDeviation, {
        deviationId: v7(),
        lotId,
        description: 'Glass broke over the table.',
        takenAt: kitchen.now(),
      }),
    );
    const [status, problem, detail] = said(await ship([{ packingId, count: 1 }]));
    expect([status, problem]).toEqual([409, 'not-cleared']);
    expect(detail).toMatch(/Glass broke over the table\./);
  });

  test('no more than is left, named for every run that is short', async () => {
    const { packingId, code: lotCode } = await aSausageLot(kitchen, larder, 'reviewed');
    await shipped([{ packingId, count: 7 }]);
    expect(said(await ship([{ packingId, count: 4 }]))).toEqual([
      422,
      'more-than-there-is',
      `3 packages are left of ${lotCode}-P1, 4 were asked for.`,
    ]);
  });

  test('of two that would ship the rest at the same moment, one does', async () => {
    const { packingId } = await aSausageLot(kitchen, larder, 'reviewed');
    const replies = await Promise.all([ship([{ packingId, count: 6 }]), ship([{ packingId, count: 6 }])]);
    expect(replies.map(({ status }) => status).sort()).toEqual([200, 422]);
    expect(await inStock(packingId)).toMatchObject({ left: 4 });
  });

  test('sent twice leaves once', async () => {
    const { packingId } = await aSausageLot(kitchen, larder, 'reviewed');
    const load = { shipmentId: v7(), customerId: await aCustomer(), takenAt: kitchen.now() };
    const first = await ship([{ packingId, count: 2 }], load);
    expect((await ship([{ packingId, count: 2 }], load)).body).toEqual(first.body);
    expect(code(await ship([{ packingId, count: 3 }], load))).toEqual([409, 'sent-differently']);
    expect(await inStock(packingId)).toMatchObject({ left: 8 });
  });

  test('what was condemned in its packages does not leave', async () => {
    const { lotId, code: lotCode, packingId } = await aSausageLot(kitchen, larder, 'packed');
    await condemn(lotId, kg(6.4)); // eight of ten packages
    await done(ask(kitchen.reviewer, contract.signReview, { reviewId: v7(), lotId, statement: 'Complete.' }));
    expect(said(await ship([{ packingId, count: 3 }]))).toEqual([
      422,
      'more-than-there-is',
      `Of lot ${lotCode} 6400 g were condemned in their packages: 1600 g may ship, 2400 g were asked for.`,
    ]);
    await shipped([{ packingId, count: 2 }]);
    expect(code(await ship([{ packingId, count: 1 }]))).toEqual([409, 'not-cleared']);
    expect(await inStock(packingId)).toMatchObject({ left: 8, mayShip: false });
  });

  describe('of a lot of which some was condemned', () => {
    const lb = (value: number) => ({ value, unit: 'lb' as const });
    const sign = (lotId: string) =>
      ask(kitchen.reviewer, contract.signReview, { reviewId: v7(), lotId, statement: 'Complete.' });

    test('nothing ships while 25.9 of 28.7 lb are undecided, and no more than those afterwards', async () => {
      const { lotId, deviationId, packingId } = await aHeldLot();
      await act(kitchen.operator, deviationId, kitchen.now());
      await done(decide(shop.owner, deviationId, { decision: 'condemn', weight: lb(2.8) }));
      const closed = await ask(shop.owner, contract.closeDeviation, { closingId: v7(), deviationId, note: '' });
      expect([closed.status, closed.body.code, closed.body.figures?.undecided]).toEqual([409, 'product-undecided', '25.9 lb']);
      expect(code(await sign(lotId))).toEqual([409, 'review-incomplete']);
      expect(said(await ship([{ packingId, count: 18 }]))[1]).toBe('not-cleared');

      await settle(shop.owner, deviationId, kitchen.now());
      await done(sign(lotId));
      expect(code(await ship([{ packingId, count: 26 }]))).toEqual([422, 'more-than-there-is']);
      await shipped([{ packingId, count: 25 }]);
    });

    test('all of it condemned: the lot says so, and none of its packages may ship', async () => {
      const { lotId, deviationId, packingId } = await aHeldLot();
      await settle(shop.owner, deviationId, kitchen.now(), [{ decision: 'condemn' }]);
      expect(await kitchen.showLot(lotId)).toMatchObject({ standing: 'condemned' });
      expect(await inStock(packingId)).toMatchObject({ standing: 'condemned', mayShip: false });
      expect(said(await ship([{ packingId, count: 1 }]))[1]).toBe('not-cleared');
      const { lots } = await done<ReplyOf<typeof contract.listLots>>(
        ask(kitchen.operator, contract.listLots, { standing: 'condemned' }),
      );
      expect(lots.map((lot) => lot.lotId)).toContain(lotId);
    });

    test('condemned before anything is packed, it is not packed', async () => {
      const { lotId } = await aSausageLot(kitchen, larder, 'cured');
      await condemn(lotId, kg(2.025));
      expect(code(await pack(lotId, { count: 1, net: kg(8.001) }))).toEqual([422, 'more-than-there-is']);
      await packed(lotId, { count: 1, net: kg(8) });
    });

    test('what had left is let go or called back, and only what is here can be condemned', async () => {
      const { lotId, packingId } = await aSausageLot(kitchen, larder, 'reviewed'); // 10 packages of 800 g of 10.025 kg
      await shipped([{ packingId, count: 5 }]);
      const deviationId = await openedOn(lotId);
      const tooMuch = await decide(shop.owner, deviationId, { decision: 'condemn', weight: kg(10.025) });
      expect([tooMuch.body.code, tooMuch.body.figures]).toEqual([
        'more-than-there-is',
        { asked: '10.025 kg', undecided: '10.025 kg', here: '6.025 kg', left: '4 kg' },
      ]);
      await done(decide(shop.owner, deviationId, { decision: 'condemn', weight: kg(6.025) }));
      expect(code(await decide(shop.owner, deviationId, { decision: 'condemn', weight: kg(4) }))).toEqual([422, 'more-than-there-is']);
      await done(decide(shop.owner, deviationId, { decision: 'recall', weight: kg(3) }));
      expect(code(await decide(shop.owner, deviationId, { decision: 'recall', weight: kg(1.001) }))).toEqual([422, 'more-than-there-is']);
      const closed = await settle(shop.owner, deviationId, kitchen.now(), [{ reason: 'Eaten, nobody fell ill.' }]);
      expect(closed).toMatchObject({ open: false, shippedAlready: true, undecided: { grams: 0 } });
    });
  });

  describe('of a lot of which some is to be reworked', () => {
    test('its packages stay, until they are opened for a later lot', async () => {
      const { lotId, packingId, code: lotCode } = await aSausageLot(kitchen, larder, 'packed'); // 10 packages of 800 g
      const deviationId = await openedOn(lotId);
      await settle(shop.owner, deviationId, kitchen.now(), [{ decision: 'rework', weight: kg(1.6) }, {}]);
      await done(ask(kitchen.reviewer, contract.signReview, { reviewId: v7(), lotId, statement: 'Complete.' }));
      expect(said(await ship([{ packingId, count: 9 }]))).toEqual([
        422,
        'more-than-there-is',
        `Of lot ${lotCode} 1600 g are to be reworked: 6400 g may ship, 7200 g were asked for.`,
      ]);
      const into = await kitchen.startLot();
      const before = await kitchen.showLot(lotId);
      expect(code(await reworkInto(into.lotId, lotId, 4))).toEqual([422, 'more-than-there-is']);
      await done(reworkInto(into.lotId, lotId, 1.6));
      expect(before.standing).toBe('cleared');
      expect(code(await ship([{ packingId, count: 9 }]))).toEqual([422, 'more-than-there-is']);
      await shipped([{ packingId, count: 8 }]);
    });

    test('loose, it is not packed, and the lot asks for it when nothing else is left', async () => {
      const { lotId } = await aSausageLot(kitchen, larder, 'cured');
      const deviationId = await openedOn(lotId);
      await settle(shop.owner, deviationId, kitchen.now(), [{ decision: 'rework' }]);
      expect(await kitchen.showLot(lotId)).toMatchObject({
        standing: 'in-work',
        because: expect.stringContaining('put it into a later lot'),
      });
      const [status, problem, detail] = said(await pack(lotId, { count: 1, net: g(25) }));
      expect([status, problem]).toEqual([422, 'more-than-there-is']);
      expect(detail).toContain('10.025 kg are to be reworked');
      await done(reworkInto((await kitchen.startLot()).lotId, lotId, 10.025));
      expect((await kitchen.showLot(lotId)).standing).toBe('ended');
    });
  });

  test('names a customer and packages of this shop', async () => {
    const { packingId } = await aSausageLot(kitchen, larder, 'reviewed');
    expect(code(await ship([{ packingId, count: 1 }], { customerId: v7() }))).toEqual([404, 'not-found']);
    expect(
      said(
        await ship([
          { packingId, count: 1 },
          { packingId: v7(), count: 1 },
        ]),
      ),
    ).toEqual([404, 'not-found', 'Line 2 names packages that are not in this shop.']);
    expect(
      code(
        await ship([
          { packingId, count: 1 },
          { packingId, count: 1 },
        ]),
      ),
    ).toEqual([400, 'invalid-input']);
  });

  test('is not for the inspector, nor of another shop’s packages', async () => {
    const { packingId } = await aSausageLot(kitchen, larder, 'reviewed');
    expect(code(await ship([{ packingId, count: 1 }], {}, inspector))).toEqual([403, 'not-allowed']);
    const theirs = (await done<ReplyOf<typeof contract.recordCustomer>>(customer({}, stranger))).customerId;
    expect(code(await ship([{ packingId, count: 1 }], { customerId: theirs }, stranger))).toEqual([404, 'not-found']);
    expect(
      (await done<ReplyOf<typeof contract.listShipments>>(ask(stranger, contract.listShipments, {}))).shipments,
    ).toEqual([]);
  });
});

/** A deviation on a lot, opened by hand. */
async function openedOn(lotId: string, description = 'Seals leak.'): Promise<string> {
  const deviationId = v7();
  await done(ask(kitchen.operator, contract.openDeviation, { deviationId, lotId, description, takenAt: kitchen.now() }));
  return deviationId;
}

/** A deviation on a lot, opened by hand, settled by condemning some of it and releasing the rest, and closed. */
async function condemn(lotId: string, weight: { value: number; unit: 'kg' }): Promise<void> {
  const deviationId = await openedOn(lotId);
  await settle(shop.owner, deviationId, kitchen.now(), [{ decision: 'condemn', weight }, {}]);
}

const reworkInto = (lotId: string, sourceLotId: string, value: number) =>
  ask(kitchen.operator, contract.putIn, { inputId: v7(), lotId, sourceLotId, weight: kg(value), takenAt: kitchen.now() });

/** 28.7 lb, 28 of them in packages of a pound, and a deviation on it; every control point is met. */
async function aHeldLot() {
  const lb = (value: number) => ({ value, unit: 'lb' as const });
  const weights = { meat: lb(28.63), cure: lb(0.07), packages: { count: 28, net: lb(1) } };
  const lot = await aSausageLot(kitchen, larder, 'packed', weights);
  return { ...lot, deviationId: await openedOn(lot.lotId) };
}
