import * as contract from '@larderbook/contracts';
import { receivedChilled } from '@larderbook/haccp';
import { v7 } from 'uuid';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aCurve, aSausageLot } from '../builders/a-sausage-lot';
import { anotherShop, aShop, done, type Shop, type Worker } from '../builders/a-shop';
import { ask } from '../support/ask';
import { startApp, type TestApp } from '../support/start-app';

let larder: TestApp;
let shop: Shop;
let kitchen: SausageKitchen;
let lotId: string;
/** Of the lot's cold room, at 46 °F. */
let deviationId: string;

beforeAll(async () => {
  larder = await startApp();
  shop = await aShop(larder);
  kitchen = await aSausageKitchen(shop, larder);
});
beforeEach(async () => {
  ({ lotId } = await kitchen.startLot());
  await kitchen.putIn(lotId);
  deviationId = await aMiss(lotId);
});
afterAll(() => larder.close());

type Deviation = contract.Deviation;
type Reply = Awaited<ReturnType<typeof ask>>;
const said = ({ status, body }: Reply) => [status, body.code, body.detail];
const code = (reply: Reply) => said(reply).slice(0, 2);

async function aMiss(onLot: string, value = 46): Promise<string> {
  const { deviationId: opened } = await kitchen.read(onLot, 'coldRoom', { entered: { value, unit: '°F' } });
  if (!opened) throw new Error('Nothing was missed');
  return opened;
}

const parts = {
  cause: 'The door stood open; it was shut.',
  control: 'The room is at 36 °F again.',
  prevention: 'The door gets a closer.',
  product: 'The lot was held and looked at.',
};
const act = (fields = {}, by: Worker = kitchen.operator) =>
  ask(by, contract.recordCorrectiveAction, {
    actionId: v7(),
    deviationId,
    ...parts,
    takenAt: kitchen.now(),
    ...fields,
  });
const dispose = (fields = {}, by: Worker = kitchen.reviewer) =>
  ask(by, contract.recordDisposition, {
    dispositionId: v7(),
    deviationId,
    decision: 'release',
    weight: { value: 10, unit: 'kg' },
    basis: 'Core never above 40 °F.',
    ...fields,
  });
const close = (fields = {}, by: Worker = kitchen.reviewer) =>
  ask(by, contract.closeDeviation, { closingId: v7(), deviationId, note: '', ...fields });
const settle = async (fields = {}) => {
  await done(act(fields));
  await done(dispose(fields));
  return done<Deviation>(close(fields));
};
const show = (id = deviationId, by: Worker = kitchen.operator) => ask(by, contract.showDeviation, { deviationId: id });

describe('a deviation', () => {
  test('says what was missed, on what, and what the plan prepared for it', async () => {
    expect(await done(show())).toMatchObject({
      lot: { lotId, productName: 'Smoked sausage' },
      controlPoint: {
        controlPointId: kitchen.points.coldRoom,
        name: 'Cold room',
        correctiveAction: 'Hold the lot and call the owner.',
      },
      description: 'Cold room: 46 °F is 5 °F above 41 °F.',
      limit: { kind: 'range' },
      verdict: { kind: 'missed', margin: '5 °F over' },
      open: true,
      shippedAlready: false,
      actions: [],
      opened: { name: 'The operator' },
    });
  });

  test('is settled in three steps, and the hold ends with the last one', async () => {
    const other = await aMiss(lotId, 52);
    expect(await settle()).toMatchObject({
      open: false,
      actions: [{ ...parts, made: { name: 'The operator' } }],
      disposition: { decision: 'release', weight: { value: 10, unit: 'kg', grams: 10_000 }, by: 'The reviewer' },
      closing: { by: 'The reviewer' },
    });
    expect(await kitchen.showLot(lotId)).toMatchObject({ standing: 'on-hold', openDeviations: 1 });
    await settle({ deviationId: other });
    const lot = await kitchen.showLot(lotId);
    expect(lot).toMatchObject({ standing: 'in-work', openDeviations: 0 });
    expect(lot.controlPoints[3]).toMatchObject({ stands: 'missed', settled: true });
  });

  test('does not close without its corrective action and its disposition', async () => {
    expect(code(await close())).toEqual([409, 'actions-missing']);
    expect((await close()).body.detail).toMatch(/still needs its corrective action and its disposition\.$/);
    await done(act());
    expect((await close()).body.detail).toMatch(/still needs its disposition\.$/);
    await done(dispose());
    await done(close());
  });

  test('that is closed takes nothing more, and has one disposition', async () => {
    await done(act());
    await done(act({ cause: 'The hinge had sagged as well.' }));
    await done(dispose());
    expect(code(await dispose({ decision: 'condemn' }))).toEqual([409, 'deviation-already-settled']);
    await done(close());
    for (const again of [act(), dispose(), close()]) expect(code(await again)).toEqual([409, 'deviation-closed']);
    expect(await done(show())).toMatchObject({ actions: [{}, {}], disposition: { decision: 'release' } });
  });

  test.each(['cause', 'control', 'prevention', 'product'])('asks for each of the four parts: %s', async (part) => {
    const reply = await act({ [part]: ' ' });
    expect([...code(reply), reply.body.errors[0].pointer]).toEqual([400, 'invalid-input', `#/${part}`]);
  });

  test('is acted on by the floor, decided and closed by owner or reviewer, and read by the inspector', async () => {
    const inspector = await shop.hire('inspector');
    expect(code(await dispose({}, kitchen.operator))).toEqual([403, 'not-allowed']);
    expect(code(await close({}, kitchen.operator))).toEqual([403, 'not-allowed']);
    for (const refused of [act({}, inspector), dispose({}, inspector), close({}, inspector)])
      expect(code(await refused)).toEqual([403, 'not-allowed']);
    expect((await show(deviationId, inspector)).status).toBe(200);
  });

  test('of one shop does not exist in another', async () => {
    const { owner } = await anotherShop(larder);
    for (const refused of [show(deviationId, owner), act({}, owner), dispose({}, owner), close({}, owner)])
      expect(code(await refused)).toEqual([404, 'not-found']);
    expect(await done(ask(owner, contract.listDeviations, { open: 'all' }))).toEqual({ deviations: [] });
  });

  test('sent again lands once; sent otherwise is refused', async () => {
    const actionId = v7();
    await done(act({ actionId }));
    await done(act({ actionId }));
    expect((await done<Deviation>(show())).actions).toHaveLength(1);
    expect(code(await act({ actionId, cause: 'Something else.' }))).toEqual([409, 'sent-differently']);
    expect(code(await close({ closingId: actionId }))).toEqual([409, 'sent-differently']);
  });

  test('two that close it at the same moment close it once', async () => {
    await done(act());
    await done(dispose());
    const replies = await Promise.all([close(), close()]);
    expect(replies.map(({ status }) => status).sort()).toEqual([200, 409]);
  });
});

describe('the weight a disposition is about', () => {
  test('is no more than there is, in the unit that was entered', async () => {
    expect(said(await dispose({ weight: { value: 23, unit: 'lb' } }))).toEqual([
      422,
      'more-than-there-is',
      'The decision is about 23 lb, but there are 22.046 lb.',
    ]);
    expect(code(await dispose({ weight: { value: 0, unit: 'lb' } }))).toEqual([400, 'invalid-input']);
    await done(dispose({ weight: { value: 22.046, unit: 'lb' } }));
  });

  test('has to be said as long as there is product', async () => {
    const reply = await dispose({ weight: undefined });
    expect([...said(reply), reply.body.errors[0].pointer]).toEqual([
      400,
      'invalid-input',
      'Say how much the decision is about: there are 10 kg.',
      '#/weight',
    ]);
  });

  test('is left out for a lot nothing was put into', async () => {
    const empty = await kitchen.startLot();
    const opened = await aMiss(empty.lotId);
    expect(code(await dispose({ deviationId: opened, weight: { value: 1, unit: 'g' } }))).toEqual([
      422,
      'more-than-there-is',
    ]);
    expect(await done(dispose({ deviationId: opened, weight: undefined }))).toMatchObject({
      disposition: { weight: { grams: 0 } },
    });
  });

  test('that is condemned is gone: not to be taken, decided about or packed again', async () => {
    await done(act());
    await done(dispose({ decision: 'condemn', weight: { value: 4, unit: 'kg' } }));
    await done(close());
    const other = await aMiss(lotId, 50);
    expect((await dispose({ deviationId: other, weight: { value: 7, unit: 'kg' } })).body.detail).toBe(
      'The decision is about 7 kg, but there are 6 kg.',
    );
    const rework = {
      inputId: v7(),
      lotId: (await kitchen.startLot()).lotId,
      sourceLotId: lotId,
      weight: { value: 6.5, unit: 'kg' as const },
      takenAt: kitchen.now(),
    };
    expect(code(await ask(kitchen.operator, contract.putIn, rework))).toEqual([422, 'more-than-there-is']);
  });

  test('when it is the whole lot, ends it', async () => {
    await settle({ decision: 'condemn' });
    expect(await kitchen.showLot(lotId)).toMatchObject({ standing: 'ended', because: 'Nothing of it is left.' });
  });
});

describe('a deviation opened by hand', () => {
  const open = (fields = {}, by: Worker = kitchen.operator) =>
    ask(by, contract.openDeviation, {
      deviationId: v7(),
      lotId,
      description: 'A glove tip is missing.',
      takenAt: kitchen.now(),
      ...fields,
    });

  test('holds the lot like any other', async () => {
    const lot = await kitchen.startLot();
    const opened = await done<Deviation>(open({ lotId: lot.lotId }));
    expect(opened).toMatchObject({ description: 'A glove tip is missing.', open: true, lot: { code: lot.code } });
    expect(opened.controlPoint).toBeUndefined();
    expect((await kitchen.showLot(lot.lotId)).standing).toBe('on-hold');
  });

  test('settles a control point that stays undetermined', async () => {
    const lot = await aSausageLot(kitchen, larder, 'cured');
    await kitchen.read(lot.lotId, 'cook', { entered: { value: 150, unit: '°F' } });
    larder.clock.moveOn(40 * 60_000); // no reading for longer than the limit tolerates
    await aCurve(kitchen, larder, lot.lotId, 'cook', [150]);
    expect((await kitchen.showLot(lot.lotId)).controlPoints[1]).toMatchObject({
      stands: 'undetermined',
      settled: false,
    });

    const opened = await done<Deviation>(
      open({ lotId: lot.lotId, controlPointId: kitchen.points.cook, description: 'The logger was off.' }),
    );
    await settle({ deviationId: opened.deviationId });
    expect((await kitchen.showLot(lot.lotId)).controlPoints[1]).toMatchObject({
      stands: 'undetermined',
      settled: true,
    });
    await kitchen.read(lot.lotId, 'cook', { entered: { value: 140, unit: '°F' } });
    expect((await kitchen.showLot(lot.lotId)).controlPoints[1]).toMatchObject({ settled: false });
  });

  test('needs a lot of this shop, a control point of its plan, and somebody who works here', async () => {
    expect(code(await open({ lotId: v7() }))).toEqual([404, 'not-found']);
    expect(code(await open({ controlPointId: v7() }))).toEqual([422, 'no-such-control-point']);
    expect(code(await open({}, (await anotherShop(larder)).owner))).toEqual([404, 'not-found']);
    expect(code(await open({}, await shop.hire('inspector')))).toEqual([403, 'not-allowed']);
    expect(code(await open({ description: '' }))).toEqual([400, 'invalid-input']);
  });
});

describe('a miss that has changed since its deviation was closed', () => {
  test('is another; the same miss is not', async () => {
    const lot = await aSausageLot(kitchen, larder, 'cured');
    const ended = await aCurve(kitchen, larder, lot.lotId, 'cook', [120, 129]);
    const cook = { deviationId: ended?.deviationId ?? '' };
    await settle(cook);
    expect((await kitchen.showLot(lot.lotId)).controlPoints[1]).toMatchObject({ stands: 'missed', settled: true });

    const same = await kitchen.read(lot.lotId, 'cook', { entered: { value: 125, unit: '°F' } });
    expect(same.deviationId).toBe(cook.deviationId);
    expect((await kitchen.showLot(lot.lotId)).controlPoints[1]).toMatchObject({ settled: true });

    larder.clock.moveOn(20 * 60_000);
    const worse = await kitchen.read(lot.lotId, 'cook', { entered: { value: 131, unit: '°F' } });
    expect(worse.deviationId).not.toBe(cook.deviationId);
    expect(await kitchen.showLot(lot.lotId)).toMatchObject({ standing: 'on-hold', openDeviations: 1 });
  });
});

describe('the list', () => {
  const list = async (query: object = {}) =>
    (
      await done<contract.ReplyOf<typeof contract.listDeviations>>(
        ask(kitchen.operator, contract.listDeviations, { open: 'all', ...query }),
      )
    ).deviations;

  test('has the open ones first, and each under its own number', async () => {
    await settle();
    await aMiss(lotId, 60);
    const all = await list();
    const open = all.map((deviation) => deviation.open);
    expect(open).toEqual([...open].sort().reverse());
    expect(all.map(({ number }) => number).sort((a, b) => a - b)).toEqual(all.map((_deviation, index) => index + 1));
    expect(await list({ open: 'only' })).toEqual(all.filter((deviation) => deviation.open));
  });

  test('of a lot has those of its deliveries and of what was reworked into it', async () => {
    const itemId = v7();
    await done(
      ask(shop.owner, contract.recordItem, {
        itemId,
        name: 'Pork belly',
        kind: 'meat',
        species: 'pork',
        allergens: [],
        receivingLimit: receivedChilled,
      }),
    );
    const receiptId = await kitchen.receive('pork', {
      itemId,
      temperature: { value: 47, unit: '°F' },
      reason: 'Short of meat.',
    });
    const into = await kitchen.startLot();
    await kitchen.putIn(into.lotId, { receiptId });
    await kitchen.putIn(into.lotId, { sourceLotId: lotId, weight: { value: 1, unit: 'kg' } });
    const found = await list({ lotId: into.lotId });
    expect(found).toMatchObject([{ receipt: { receiptId, itemName: 'Pork belly' } }, { deviationId }]);
    expect((await kitchen.showLot(into.lotId)).deviations.map((one) => one.deviationId).sort()).toEqual(
      found.map((one) => one.deviationId).sort(),
    );
  });
});
