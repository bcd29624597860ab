import * as contract from '@larderbook/contracts';
import { receivedChilled } from '@larderbook/haccp';
import { v7 } from 'uuid';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aCurve, aSausageLot } from '../builders/a-sausage-lot';
import { anAction, settle as settleIt, type Decided } from '../builders/a-settlement';
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
const kg = (value: number) => ({ value, unit: 'kg' as const });
const lb = (value: number) => ({ value, unit: 'lb' as const });

async function aMiss(onLot: string, value = 46): Promise<string> {
  const { deviationId: opened } = await kitchen.read(onLot, 'coldRoom', { entered: { value, unit: '°F' } });
  if (!opened) throw new Error('Nothing was missed');
  return opened;
}

const { form: _form, ...parts } = anAction.critical;
const act = (fields: Partial<contract.InputOf<typeof contract.recordCorrectiveAction>> = {}, by: Worker = kitchen.operator) =>
  ask(by, contract.recordCorrectiveAction, {
    actionId: v7(),
    deviationId,
    action: anAction.critical,
    takenAt: kitchen.now(),
    ...fields,
  });
type Fields = Partial<contract.InputOf<typeof contract.recordDisposition>>;
/** Releases all of the lot, unless said otherwise. */
const dispose = (fields: Fields = {}, by: Worker = kitchen.reviewer) => {
  const basis = (fields.decision ?? 'release') === 'release' ? ('test result' as const) : undefined;
  return ask(by, contract.recordDisposition, {
    dispositionId: v7(),
    deviationIds: [deviationId],
    lotId: fields.receiptId ? undefined : lotId,
    decision: 'release',
    weight: kg(10),
    reason: 'Core never above 40 °F.',
    basis,
    ...fields,
  });
};
const close = (fields = {}, by: Worker = kitchen.reviewer) =>
  ask(by, contract.closeDeviation, { closingId: v7(), deviationId, note: '', ...fields });
const settle = (fields: Decided & { deviationId?: string } = {}) => {
  const { deviationId: which = deviationId, ...decided } = fields;
  return settleIt(kitchen.reviewer, which, kitchen.now(), [decided]);
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
      actions: [{ action: anAction.critical, made: { name: 'The reviewer' } }],
      undecided: { grams: 0 },
      dispositions: [
        {
          decision: 'release', weight: { value: 10, unit: 'kg', grams: 10_000 }, basis: 'test result', by: 'The reviewer',
          toDestroy: false,
        },
      ],
      closing: { by: 'The reviewer' },
    });
    expect(await kitchen.showLot(lotId)).toMatchObject({ standing: 'on-hold', openDeviations: 1 });
    await settle({ deviationId: other });
    const lot = await kitchen.showLot(lotId);
    expect(lot).toMatchObject({ standing: 'in-work', openDeviations: 0 });
    expect(lot.controlPoints[3]).toMatchObject({ stands: 'missed', settled: true });
  });

  test('does not close without its corrective action and a decision about all of its product', async () => {
    expect(code(await close())).toEqual([409, 'actions-missing']);
    expect((await close()).body.detail).toMatch(
      /still needs its corrective action and decisions: 10 kg of 10 kg are still to be decided\.$/,
    );
    await done(act());
    expect(code(await close())).toEqual([409, 'product-undecided']);
    await done(dispose());
    await done(close());
  });

  test('that is closed takes nothing more', async () => {
    await done(act());
    await done(act({ action: { ...anAction.critical, cause: 'The hinge had sagged as well.' } }));
    await done(dispose());
    expect(code(await dispose({ decision: 'condemn' }))).toEqual([409, 'all-decided']);
    await done(close());
    for (const again of [act(), dispose(), close()]) expect(code(await again)).toEqual([409, 'deviation-closed']);
    expect(await done(show())).toMatchObject({ actions: [{}, {}], dispositions: [{ decision: 'release' }] });
  });

  test.each(['cause', 'control', 'prevention', 'product'])('asks for each of the four parts: %s', async (part) => {
    const reply = await act({ action: { ...anAction.critical, [part]: ' ' } });
    expect([...code(reply), reply.body.errors[0].pointer]).toEqual([400, 'invalid-input', `#/action/${part}`]);
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
    expect(code(await act({ actionId, action: { ...parts, form: 'critical', cause: 'Something else.' } }))).toEqual([409, 'sent-differently']);
    expect(code(await close({ closingId: actionId }))).toEqual([409, 'sent-differently']);
  });

  test('two that close it at the same moment close it once', async () => {
    await done(act());
    await done(dispose());
    const replies = await Promise.all([close(), close()]);
    expect(replies.map(({ status }) => status).sort()).toEqual([200, 409]);
  });
});

describe('the weight a decision is about', () => {
  test('is no more than is undecided, in the unit that was entered', async () => {
    const { code: lotCode } = await kitchen.showLot(lotId);
    expect(said(await dispose({ weight: lb(23) }))).toEqual([
      422,
      'more-than-there-is',
      `The decision is about 23 lb. Of ${lotCode} 22.046 lb are still to be decided, and 22.046 lb of it are here.`,
    ]);
    expect(code(await dispose({ weight: lb(0) }))).toEqual([400, 'invalid-input']);
    expect(code(await dispose({ weight: undefined }))).toEqual([400, 'invalid-input']);
  });

  test('that reads like all of it is all of it, whatever the unit', async () => {
    expect(await done(dispose({ weight: lb(22.046) }))).toMatchObject({
      undecided: { grams: 0 },
      dispositions: [{ weight: { value: 22.046, unit: 'lb', grams: 10_000 } }],
    });
  });

  test('of a lot nothing was put into is none: there is nothing to decide, and it closes', async () => {
    const empty = await kitchen.startLot();
    const opened = await aMiss(empty.lotId);
    const one = { deviationIds: [opened], lotId: empty.lotId, weight: { value: 1, unit: 'g' as const } };
    expect(code(await dispose(one))).toEqual([409, 'all-decided']);
    await done(act({ deviationId: opened }));
    expect(await done(close({ deviationId: opened }))).toMatchObject({ open: false, dispositions: [] });
  });

  test('that is condemned is gone: not to be taken, decided about or packed again', async () => {
    await done(act());
    await done(dispose({ decision: 'condemn', weight: kg(4) }));
    await done(dispose({ weight: kg(6) }));
    await done(close());
    const other = await aMiss(lotId, 50);
    expect((await dispose({ deviationIds: [other], weight: kg(7) })).body.detail).toMatch(/ 6 kg are still to be decided/);
    const rework = {
      inputId: v7(),
      lotId: (await kitchen.startLot()).lotId,
      sourceLotId: lotId,
      weight: kg(6.5),
      takenAt: kitchen.now(),
    };
    expect(code(await ask(kitchen.operator, contract.putIn, rework))).toEqual([422, 'more-than-there-is']);
  });

  test('when it is the whole lot, the lot is condemned, and held apart until it is destroyed', async () => {
    await done(act());
    const { dispositions } = await done<Deviation>(dispose({ decision: 'condemn' }));
    await done(close());
    expect(await kitchen.showLot(lotId)).toMatchObject({
      standing: 'condemned',
      because: 'All of it was condemned and is held apart. Next: destroy it and record how.',
    });
    expect(await toDestroy()).toContainEqual(expect.objectContaining({ code: (await kitchen.showLot(lotId)).code, toDestroy: true }));

    await done(destroy(dispositions[0]?.dispositionId ?? ''));
    expect(await kitchen.showLot(lotId)).toMatchObject({
      standing: 'condemned',
      because: 'All of it was condemned and destroyed.',
    });
    expect((await toDestroy()).filter(({ lotId: of }) => of === lotId)).toEqual([]);
  });
});

const toDestroy = async () =>
  (await done<contract.ReplyOf<typeof contract.showToday>>(ask(kitchen.operator, contract.showToday, {}))).toDestroy;
const destroy = (dispositionId: string, fields = {}, by: Worker = kitchen.operator) =>
  ask(by, contract.recordDestruction, {
    destructionId: v7(),
    dispositionId,
    method: 'Dyed green and burnt.',
    takenAt: kitchen.now(),
    ...fields,
  });

describe('the destruction of condemned product', () => {
  test('is kept with how and when, under the name of whoever saw it', async () => {
    const { dispositions } = await done<Deviation>(dispose({ decision: 'condemn', weight: kg(2.8) }));
    const takenAt = kitchen.now();
    larder.clock.moveOn(90 * 60_000);
    await done(destroy(dispositions[0]?.dispositionId ?? '', { takenAt }));
    expect(await done(show())).toMatchObject({
      dispositions: [
        {
          toDestroy: false,
          destruction: { method: 'Dyed green and burnt.', by: 'The operator', at: takenAt, recordedAt: kitchen.now() },
        },
      ],
    });
  });

  test('is recorded once, of what was condemned in this shop, by somebody who works here', async () => {
    const released = await done<Deviation>(dispose({ weight: kg(1) }));
    expect(code(await destroy(released.dispositions[0]?.dispositionId ?? ''))).toEqual([422, 'not-condemned']);
    const { dispositions } = await done<Deviation>(dispose({ decision: 'condemn', weight: kg(1) }));
    const condemned = dispositions[1]?.dispositionId ?? '';
    expect(code(await destroy(condemned, {}, await shop.hire('inspector')))).toEqual([403, 'not-allowed']);
    expect(code(await destroy(condemned, {}, (await anotherShop(larder)).owner))).toEqual([404, 'not-found']);
    expect(code(await destroy(condemned, { method: '' }))).toEqual([400, 'invalid-input']);
    expect(code(await destroy(v7()))).toEqual([404, 'not-found']);
    const sent = { destructionId: v7() };
    await done(destroy(condemned, sent));
    await done(destroy(condemned, sent));
    expect(code(await destroy(condemned, { ...sent, method: 'Buried.' }))).toEqual([409, 'sent-differently']);
    expect(code(await destroy(condemned))).toEqual([409, 'destroyed-already']);
  });
});

describe('a hold of which some is decided', () => {
  beforeEach(async () => {
    ({ lotId } = await kitchen.startLot());
    await kitchen.putIn(lotId, { weight: lb(28.7) });
    deviationId = await aMiss(lotId);
    await done(act());
  });

  test('goes on: condemning 2.8 of 28.7 lb does not free the other 25.9 lb', async () => {
    expect(await done(dispose({ decision: 'condemn', weight: lb(2.8) }))).toMatchObject({
      atStake: lb(28.7),
      undecided: lb(25.9),
      covered: false,
      open: true,
    });
    const { body, ...refused } = await close();
    expect([refused.status, body.code, body.figures]).toEqual([
      409,
      'product-undecided',
      { undecided: '25.9 lb', atStake: '28.7 lb' },
    ]);
    expect(await kitchen.showLot(lotId)).toMatchObject({
      standing: 'on-hold',
      because: expect.stringContaining('Next: decide what becomes of 25.9 lb of 28.7 lb.'),
    });
  });

  test('ends when the rest is reworked and released, each for so much', async () => {
    await done(dispose({ decision: 'condemn', weight: lb(2.8) }));
    await done(dispose({ decision: 'rework', weight: lb(5) }));
    await done(dispose({ weight: lb(20.9), basis: 'process authority', reason: 'Letter of 2 March.' }));
    expect(await done(close())).toMatchObject({
      open: false,
      dispositions: [
        { decision: 'condemn', weight: lb(2.8), toDestroy: true },
        { decision: 'rework', weight: lb(5), toDestroy: false },
        { decision: 'release', weight: lb(20.9), basis: 'process authority', reason: 'Letter of 2 March.' },
      ],
    });
    expect((await kitchen.showLot(lotId)).standing).toBe('in-work');
  });

  test('may leave a hundredth that scales do not agree about, and no more', async () => {
    await done(dispose({ weight: lb(28.412) }));
    expect(code(await close())).toEqual([409, 'product-undecided']);
    await done(dispose({ weight: lb(0.001) }));
    await done(close());
  });

  test('has more to decide when more meat goes in', async () => {
    await done(dispose({ weight: lb(28.7) }));
    await kitchen.putIn(lotId, { weight: lb(4) });
    expect(await done(show())).toMatchObject({ atStake: lb(32.7), undecided: lb(4), covered: false });
    expect(code(await close())).toEqual([409, 'product-undecided']);
    await done(dispose({ weight: lb(4) }));
    await done(close());
    await kitchen.putIn(lotId, { weight: lb(4) }); // fresh meat, put in after it was settled
    expect(await done(show())).toMatchObject({ open: false, atStake: lb(32.7) });
  });

  test('has less to decide when a loss is recorded', async () => {
    await done(dispose({ weight: lb(24.4) }));
    const loss = { removalId: v7(), lotId, kind: 'loss in cooking', weight: lb(4.3), note: '', takenAt: kitchen.now() } as const;
    await done(ask(kitchen.operator, contract.recordRemoval, loss));
    expect(await done(show())).toMatchObject({ atStake: lb(24.4), undecided: lb(0), covered: true });
  });

  test('is undecided again when a weight turns out to have been more, though it was closed', async () => {
    await done(dispose({ weight: lb(28.7) }));
    await done(close());
    const [input] = (await kitchen.showLot(lotId)).inputs;
    await kitchen.putIn(lotId, {
      receiptId: input?.from.receiptId,
      weight: lb(38.7),
      amends: input?.inputId,
      reason: 'Read 28.7 for 38.7.',
    });
    expect(await done(show())).toMatchObject({ open: true, undecided: lb(10), closing: { by: 'The reviewer' } });
    expect((await kitchen.showLot(lotId)).standing).toBe('on-hold');
    const open = await done<contract.ReplyOf<typeof contract.listDeviations>>(
      ask(kitchen.operator, contract.listDeviations, { open: 'only' }),
    );
    expect(open.deviations.map((one) => one.deviationId)).toContain(deviationId);
    await done(dispose({ weight: lb(10) }));
    expect(await done(show())).toMatchObject({ open: false });
    expect((await kitchen.showLot(lotId)).standing).toBe('in-work');
  });

  test('is decided by two people at once: the second is told what is left', async () => {
    const replies = await Promise.all([
      dispose({ decision: 'condemn', weight: lb(20) }),
      dispose({ weight: lb(20) }, shop.owner),
    ]);
    expect(replies.map(({ status }) => status).sort()).toEqual([200, 422]);
    const refused = replies.find(({ status }) => status === 422);
    expect([refused?.body.code, refused?.body.figures.undecided]).toEqual(['more-than-there-is', '8.7 lb']);
    expect(refused?.body.errors).toEqual([{ pointer: '#/weight', detail: 'At most 8.7 lb.' }]);
  });

  test('is decided once for all the deviations of the same pounds, and counted once', async () => {
    const other = await aMiss(lotId, 52);
    expect(await done(show(other))).toMatchObject({ products: [{ alsoOpen: [{ deviationId, undecided: lb(28.7) }] }] });
    await done(dispose({ deviationIds: [deviationId, other], decision: 'condemn', weight: lb(2.8) }));
    await done(dispose({ deviationIds: [deviationId, other], weight: lb(25.9) }));
    await done(act({ deviationId: other }));
    await done(close());
    await done(close({ deviationId: other }));
    const { balance } = await done<contract.Trace>(ask(kitchen.operator, contract.showTrace, { nodeId: lotId }));
    expect(balance.find(({ id }) => id === lotId)).toMatchObject({ accountedPercent: '100' });
    expect(balance.find(({ id }) => id === lotId)?.condemnedGrams).toBeCloseTo(2.8 * 453.59237, 6);
  });

  test('keeps what another decision condemned out of what is still to decide', async () => {
    await done(dispose({ decision: 'condemn', weight: lb(8.7) }));
    const other = await aMiss(lotId, 52);
    expect(await done(show(other))).toMatchObject({ atStake: lb(20), undecided: lb(20) });
  });

  test('names only deviations that stand on the product', async () => {
    const elsewhere = await kitchen.startLot();
    await kitchen.putIn(elsewhere.lotId);
    const other = await aMiss(elsewhere.lotId);
    expect(code(await dispose({ deviationIds: [deviationId, other] }))).toEqual([422, 'wrong-product']);
    expect(code(await dispose({ lotId: elsewhere.lotId }))).toEqual([422, 'wrong-product']);
    expect(code(await dispose({ deviationIds: [deviationId, v7()] }))).toEqual([404, 'not-found']);
    expect(code(await dispose({ deviationIds: [] }))).toEqual([400, 'invalid-input']);
    expect(code(await dispose({ deviationIds: [deviationId, deviationId] }))).toEqual([400, 'invalid-input']);
  });

  test.each([
    ['a release without a basis', { basis: undefined }, '#/basis'],
    ['a basis of what is condemned', { decision: 'condemn', basis: 'test result' }, '#/basis'],
    ['a lot sent back to a supplier', { decision: 'return' }, '#/decision'],
    ['no reason', { reason: ' ' }, '#/reason'],
    ['a lot and a delivery', { receiptId: v7(), lotId: v7() }, '#/lotId'],
  ] as const)('refuses %s beside its field', async (_case, fields, pointer) => {
    const reply = await dispose(fields);
    expect([...code(reply), reply.body.errors[0].pointer]).toEqual([400, 'invalid-input', pointer]);
  });

  test('travels with what is reworked out of it, and with a decision about it there', async () => {
    const into = await kitchen.startLot();
    await kitchen.putIn(into.lotId, { sourceLotId: lotId, weight: lb(8.7) });
    await done(dispose({ weight: lb(20) }));
    expect(await done(show())).toMatchObject({
      undecided: lb(8.7),
      products: [{ lotId }, { lotId: into.lotId, atStake: lb(8.7), undecided: lb(8.7) }],
    });
    expect((await kitchen.showLot(into.lotId)).standing).toBe('on-hold');
    await done(dispose({ lotId: into.lotId, decision: 'condemn', weight: lb(8.7) }));
    expect(await done(close())).toMatchObject({ open: false, undecided: { grams: 0 } });
    expect((await kitchen.showLot(into.lotId)).standing).toBe('condemned');
  });
});

describe('a deviation of a delivery', () => {
  test('concerns what is in store and what is in lots, and sends back or condemns what is in store alone', async () => {
    const itemId = v7();
    const pork = { itemId, name: 'Pork jowl', kind: 'meat', species: 'pork', receivingLimit: receivedChilled } as const;
    await done(ask(shop.owner, contract.recordItem, { ...pork, allergens: [] }));
    const warm = { itemId, weight: lb(40), temperature: { value: 47, unit: '°F' as const }, reason: 'Short of meat.' };
    const receiptId = await kitchen.receive('pork', warm);
    const { deviationId: opened = '' } = await done<contract.Receipt>(ask(shop.owner, contract.showReceipt, { receiptId }));
    const into = await kitchen.startLot();
    await kitchen.putIn(into.lotId, { receiptId, weight: lb(15) });
    const of = { deviationIds: [opened], receiptId };
    expect(code(await dispose({ ...of, decision: 'condemn', weight: lb(26) }))).toEqual([422, 'more-than-there-is']);
    expect(code(await dispose({ ...of, decision: 'rework', weight: lb(5) }))).toEqual([400, 'invalid-input']);
    await done(dispose({ ...of, decision: 'condemn', weight: lb(5) }));
    await done(dispose({ ...of, decision: 'return', weight: lb(20) }));
    expect(await done(show(opened))).toMatchObject({ form: 'unforeseen', atStake: lb(40), undecided: lb(15) });
    await done(act({ deviationId: opened, action: anAction.unforeseen }));
    expect(code(await close({ deviationId: opened }))).toEqual([409, 'product-undecided']);
    expect((await kitchen.showLot(into.lotId)).standing).toBe('on-hold');

    await done(dispose({ deviationIds: [opened], lotId: into.lotId, weight: lb(15) }));
    await done(close({ deviationId: opened }));
    expect((await kitchen.showLot(into.lotId)).standing).toBe('in-work');
    expect(await done(ask(shop.owner, contract.showReceipt, { receiptId }))).toMatchObject({ leftGrams: 0 });
    const { balance } = await done<contract.Trace>(ask(kitchen.operator, contract.showTrace, { nodeId: receiptId }));
    expect(balance.find(({ id }) => id === receiptId)).toMatchObject({ accountedPercent: '100', onHandGrams: 0 });
  });
});

describe('the form of the corrective action', () => {
  test('of a critical control point is 9 CFR 417.3(a), and takes no other', async () => {
    expect(await done(show())).toMatchObject({ form: 'critical', controlPoint: { kind: 'critical' } });
    for (const action of [anAction.prerequisite, anAction.unforeseen])
      expect(code(await act({ action }))).toEqual([422, 'other-form']);
  });

  test('of a prerequisite says what was done', async () => {
    const { deviationId: opened = '' } = await kitchen.read(lotId, 'label', { entered: { answer: false, seen: 'Blurred.' } });
    expect(await done(show(opened))).toMatchObject({ form: 'prerequisite', controlPoint: { kind: 'prerequisite' } });
    expect(code(await act({ deviationId: opened }))).toEqual([422, 'other-form']);
    await done(act({ deviationId: opened, action: anAction.prerequisite }));
  });

  test('of what a person saw is 9 CFR 417.3(b), with each of its parts and who reassessed', async () => {
    const opened = v7();
    const seen = { deviationId: opened, lotId, description: 'A glove tip is missing.', takenAt: kitchen.now() };
    expect(await done(ask(kitchen.operator, contract.openDeviation, seen))).toMatchObject({ form: 'unforeseen' });
    expect(code(await act({ deviationId: opened }))).toEqual([422, 'other-form']);
    for (const part of ['segregation', 'acceptability', 'product', 'reassessment', 'reassessedBy']) {
      const reply = await act({ deviationId: opened, action: { ...anAction.unforeseen, [part]: '' } });
      expect([...code(reply), reply.body.errors[0].pointer]).toEqual([400, 'invalid-input', `#/action/${part}`]);
    }
    await done(act({ deviationId: opened, action: anAction.unforeseen }));
    expect(await done(show(opened))).toMatchObject({ actions: [{ action: anAction.unforeseen }] });
  });

  test('of a critical control point that a person doubts is 9 CFR 417.3(b): no limit was missed', async () => {
    const doubt = { deviationId: v7(), lotId, controlPointId: kitchen.points.cook, description: 'The logger was off.' };
    const opened = await done<Deviation>(ask(kitchen.operator, contract.openDeviation, { ...doubt, takenAt: kitchen.now() }));
    expect(opened).toMatchObject({ form: 'unforeseen', controlPoint: { kind: 'critical' } });
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
