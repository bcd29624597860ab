import * as contract from '@larderbook/contracts';
import { receivedChilled } from '@larderbook/haccp';
import { v7 } from 'uuid';
import { beforeEach, describe, expect, test } from 'vitest';
import {
  act,
  aLotOnHold,
  aMiss,
  close,
  code,
  deviationId,
  dispose,
  holdALot,
  kitchen,
  lb,
  lotId,
  shop,
  show,
} from '../builders/a-lot-on-hold';
import { anAction } from '../builders/a-settlement';
import { done } from '../builders/a-shop';
import { ask } from '../support/ask';

aLotOnHold();

describe('a hold of which some is decided', () => {
  beforeEach(async () => {
    await holdALot(lb(28.7));
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
    expect([refused.status, body.code, body.details[0].figures]).toMatchObject([
      409,
      'product-undecided',
      { undecided: { value: '25.9', unit: 'lb' }, atStake: { value: '28.7', unit: 'lb' } },
    ]);
    expect(await kitchen.showLot(lotId)).toMatchObject({
      standing: 'on-hold',
      because: expect.arrayContaining([
        { code: 'next-decide', figures: { undecided: { value: '25.9', unit: 'lb' }, atStake: { value: '28.7', unit: 'lb' } } },
      ]),
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
    const replies = await Promise.all([dispose({ decision: 'condemn', weight: lb(20) }), dispose({ weight: lb(20) }, shop.owner)]);
    expect(replies.map(({ status }) => status).sort()).toEqual([200, 422]);
    const refused = replies.find(({ status }) => status === 422);
    expect([refused?.body.code, refused?.body.details[0].figures.undecided]).toEqual(['more-than-there-is', { value: '8.7', unit: 'lb' }]);
    expect(refused?.body.errors).toMatchObject([{ pointer: '#/weight', detail: 'At most 8.7 lb.', code: 'at-most-weight' }]);
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
