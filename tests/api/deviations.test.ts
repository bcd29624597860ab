import * as contract from '@larderbook/contracts';
import { receivedChilled } from '@larderbook/haccp';
import { v7 } from 'uuid';
import { describe, expect, test } from 'vitest';
import {
  act,
  aLotOnHold,
  aMiss,
  close,
  code,
  deviationId,
  dispose,
  kitchen,
  larder,
  lotId,
  settle,
  shop,
  show,
} from '../builders/a-lot-on-hold';
import { aCurve, aSausageLot } from '../builders/a-sausage-lot';
import { anAction } from '../builders/a-settlement';
import { anotherShop, done } from '../builders/a-shop';
import { ask } from '../support/ask';
import { told } from '../support/told';

aLotOnHold();

type Deviation = contract.Deviation;
const { form: _form, ...parts } = anAction.critical;

describe('a deviation', () => {
  test('says what was missed, on what, and what the plan prepared for it', async () => {
    expect(told(await done(show()))).toMatchObject({
      lot: { lotId, productName: 'Smoked sausage' },
      controlPoint: {
        controlPointId: kitchen.points.coldRoom,
        name: 'Cold room',
        correctiveAction: 'Hold the lot and call the owner.',
      },
      description: [{ tells: 'because', point: 'Cold room', verdict: { because: '46 °F is 5 °F above 41 °F.' } }],
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
          decision: 'release',
          weight: { value: 10, unit: 'kg', grams: 10_000 },
          basis: 'test result',
          by: 'The reviewer',
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
      /still needs its corrective action\. Deviation \d+: 10 kg of 10 kg are still to be decided\./,
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
    expect(code(await act({ actionId, action: { ...parts, form: 'critical', cause: 'Something else.' } }))).toEqual([
      409,
      'sent-differently',
    ]);
    expect(code(await close({ closingId: actionId }))).toEqual([409, 'sent-differently']);
  });

  test('two that close it at the same moment close it once', async () => {
    await done(act());
    await done(dispose());
    const replies = await Promise.all([close(), close()]);
    expect(replies.map(({ status }) => status).sort()).toEqual([200, 409]);
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
