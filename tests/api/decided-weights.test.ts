import * as contract from '@larderbook/contracts';
import { v7 } from 'uuid';
import { describe, expect, test } from 'vitest';
import { act, aLotOnHold, aMiss, close, code, dispose, kg, kitchen, larder, lb, lotId, said, shop, show } from '../builders/a-lot-on-hold';
import { anotherShop, done, type Worker } from '../builders/a-shop';
import { ask } from '../support/ask';

aLotOnHold();

type Deviation = contract.Deviation;

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
      because: [{ code: 'all-condemned' }],
    });
    expect(await toDestroy()).toContainEqual(expect.objectContaining({ code: (await kitchen.showLot(lotId)).code, toDestroy: true }));

    await done(destroy(dispositions[0]?.dispositionId ?? ''));
    expect(await kitchen.showLot(lotId)).toMatchObject({
      standing: 'condemned',
      because: [{ code: 'all-destroyed' }],
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
