import * as contract from '@larderbook/contracts';
import { v7 } from 'uuid';
import { describe, expect, test } from 'vitest';
import { act, aLotOnHold, code, kitchen, larder, lotId, settle, shop, show } from '../builders/a-lot-on-hold';
import { aCurve, aSausageLot } from '../builders/a-sausage-lot';
import { anAction } from '../builders/a-settlement';
import { anotherShop, done, type Worker } from '../builders/a-shop';
import { ask } from '../support/ask';

aLotOnHold();

type Deviation = contract.Deviation;
describe('the form of the corrective action', () => {
  test('of a critical control point is 9 CFR 417.3(a), and takes no other', async () => {
    expect(await done(show())).toMatchObject({ form: 'critical', controlPoint: { kind: 'critical' } });
    for (const action of [anAction.prerequisite, anAction.unforeseen]) expect(code(await act({ action }))).toEqual([422, 'other-form']);
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
    expect(opened).toMatchObject({
      description: [{ code: 'as-worded', figures: { said: 'A glove tip is missing.' } }],
      open: true,
      lot: { code: lot.code },
    });
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
