import * as contract from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aShop, type Shop } from '../builders/a-shop';
import { ask, code, said } from '../support/ask';
import { startApp, type TestApp } from '../support/start-app';
import { told } from '../support/told';

let larder: TestApp;
let shop: Shop;
let kitchen: SausageKitchen;

beforeAll(async () => {
  larder = await startApp(); // 2 March 2026, 2 o'clock in the morning in the shop
  shop = await aShop(larder);
  kitchen = await aSausageKitchen(shop, larder);
});
afterAll(() => larder.close());

const kg = (value: number) => ({ value, unit: 'kg' as const });
const g = (value: number) => ({ value, unit: 'g' as const });

describe('weighing the cure', () => {
  const onTenKilos = async () => {
    const { lotId } = await kitchen.startLot();
    await kitchen.putIn(lotId);
    return lotId;
  };

  test('2.5 g of 6.25 % curing salt per kg is the standard dose and passes', async () => {
    const reply = await kitchen.weighCure(await onTenKilos(), { weight: g(25) });
    expect(told(reply)).toMatchObject({
      controlPointId: kitchen.points.cure,
      verdicts: [{ verdict: { kind: 'met', measured: '156.25 ppm' } }],
    });
    expect(reply.deviationId).toBeUndefined();
  });

  test('2.51 g per kg does not, and opens a deviation', async () => {
    const lotId = await onTenKilos();
    const { verdicts, deviationId } = await kitchen.weighCure(lotId, { weight: g(25.1) });
    expect(told(verdicts)).toMatchObject([{ verdict: { kind: 'missed', measured: '156.88 ppm', margin: '0.63 ppm too much' } }]);
    expect(await kitchen.showLot(lotId)).toMatchObject({
      standing: 'on-hold',
      deviations: [{ deviationId, open: true }],
    });
  });

  test('portions count together, and one deviation stands for the lot and the limit', async () => {
    const lotId = await onTenKilos();
    expect((await kitchen.weighCure(lotId, { weight: g(15) })).deviationId).toBeUndefined();
    const first = await kitchen.weighCure(lotId, { weight: g(15) });
    const second = await kitchen.weighCure(lotId, { weight: g(1) });
    expect(told(first.verdicts)).toMatchObject([{ verdict: { kind: 'missed', measured: '187.5 ppm' } }]);
    expect(second.deviationId).toBe(first.deviationId);
    expect((await kitchen.showLot(lotId)).deviations).toHaveLength(1);
  });

  test('the content on the label of the delivery counts before that of the item', async () => {
    const receiptId = await kitchen.receive('cure', { weight: kg(1), fractionPercent: 5.88 });
    const reply = await kitchen.weighCure(await onTenKilos(), { receiptId, weight: g(26.5) });
    expect(told(reply)).toMatchObject({ verdicts: [{ verdict: { kind: 'met', measured: '155.82 ppm' } }] });
  });

  test('before there is meat it is undetermined, never met; meat settles it', async () => {
    const { lotId } = await kitchen.startLot();
    expect(await kitchen.weighCure(lotId)).toMatchObject({ verdicts: [{ verdict: { kind: 'undetermined' } }] });
    await kitchen.putIn(lotId);
    expect(told((await kitchen.showLot(lotId)).controlPoints[0])).toMatchObject({
      stands: 'met',
      judged: [{ verdict: { measured: '156.25 ppm' } }],
    });
  });

  test('more meat brings the concentration back, but what was missed stays open until a person closes it', async () => {
    const lotId = await onTenKilos();
    await kitchen.weighCure(lotId, { weight: g(30) });
    await kitchen.putIn(lotId, { weight: kg(2) });
    const lot = await kitchen.showLot(lotId);
    expect(told(lot.controlPoints[0])).toMatchObject({
      stands: 'met',
      settled: true,
      judged: [{ verdict: { measured: '156.25 ppm' } }],
    });
    expect(lot).toMatchObject({ standing: 'on-hold', openDeviations: 1 });
  });

  test('a correction to less meat shows the miss, and opens its deviation', async () => {
    const { lotId } = await kitchen.startLot();
    const receiptId = await kitchen.receive('pork');
    const { inputId } = await kitchen.putIn(lotId, { receiptId, weight: kg(10) });
    await kitchen.weighCure(lotId);
    const corrected = await kitchen.putIn(lotId, {
      receiptId,
      weight: kg(9),
      amends: inputId,
      reason: 'Tare was left on.',
    });
    expect(corrected.deviationId).toBeDefined();
    expect(told((await kitchen.showLot(lotId)).controlPoints[0])).toMatchObject({
      stands: 'missed',
      openDeviationId: corrected.deviationId,
      judged: [{ verdict: { measured: '173.61 ppm' } }],
    });
  });

  test('a correction that brings it back under keeps the deviation', async () => {
    const lotId = await onTenKilos();
    const { weighingId, deviationId } = await kitchen.weighCure(lotId, { weight: g(250) });
    const corrected = await kitchen.weighCure(lotId, { weight: g(25), amends: weighingId, reason: 'Point slipped.' });
    expect(corrected).toMatchObject({ verdicts: [{ verdict: { kind: 'met' } }] });
    expect(await kitchen.showLot(lotId)).toMatchObject({
      standing: 'on-hold',
      deviations: [{ deviationId, open: true }],
    });
  });

  test('the wrong bag is refused', async () => {
    const lotId = await onTenKilos();
    const weigh = (fields: object) =>
      ask(kitchen.operator, contract.weighIn, {
        weighingId: v7(),
        lotId,
        itemId: kitchen.items.cure,
        weight: g(25),
        takenAt: kitchen.now(),
        ...fields,
      });
    expect(said(await weigh({ receiptId: await kitchen.receive('salt') }))).toEqual([
      422,
      'wrong-item',
      expect.stringMatching(/ is Salt, not Curing salt 6.25 %\.$/),
    ]);
    expect(code(await weigh({ itemId: kitchen.items.pork }))).toEqual([422, 'wrong-item']);
    expect(code(await weigh({ receiptId: await kitchen.receive('cure', { weight: g(20) }) }))).toEqual([422, 'more-than-there-is']);
    expect(code(await weigh({ receiptId: await kitchen.receive('cure', { decision: 'refused', reason: 'Wet.' }) }))).toEqual([
      422,
      'receipt-refused',
    ]);
    expect(code(await weigh({ weight: g(0) }))).toEqual([400, 'invalid-input']);
    expect((await kitchen.showLot(lotId)).weighings).toEqual([]);
  });
});
