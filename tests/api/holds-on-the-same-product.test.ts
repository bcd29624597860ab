import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { aLoadingDock, g, kg, type LoadingDock } from '../builders/a-loading-dock';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aSausageLot } from '../builders/a-sausage-lot';
import { act, close, decide, settle, showDeviation } from '../builders/a-settlement';
import { aShop, done, type Shop } from '../builders/a-shop';
import { code } from '../support/ask';
import { startApp, type TestApp } from '../support/start-app';

let larder: TestApp;
let shop: Shop;
let kitchen: SausageKitchen;
let today: LoadingDock['today'];
let standing: LoadingDock['standing'];
let openOn: LoadingDock['openOn'];
let send: LoadingDock['send'];
let sign: LoadingDock['sign'];
let mayShip: LoadingDock['mayShip'];
let made: LoadingDock['made'];

beforeAll(async () => {
  larder = await startApp();
  shop = await aShop(larder);
  kitchen = await aSausageKitchen(shop, larder);
  ({ today, standing, openOn, send, sign, mayShip, made } = await aLoadingDock(kitchen, shop));
});
afterAll(() => larder.close());

describe('a hundredth that counts as nothing', () => {
  test('is never the whole of a small lot that some of it went into', async () => {
    const from = await kitchen.startLot();
    await kitchen.putIn(from.lotId, { weight: kg(100) });
    const deviationId = await openOn(from.lotId);
    const small = await kitchen.startLot();
    await kitchen.putIn(small.lotId, { sourceLotId: from.lotId, weight: kg(1) });
    await act(kitchen.reviewer, deviationId, kitchen.now());
    await done(decide(kitchen.reviewer, deviationId, { decision: 'condemn', weight: kg(99) }));
    expect(code(await close(kitchen.reviewer, deviationId))).toEqual([409, 'product-undecided']);
    expect(await standing(small.lotId)).toBe('on-hold');
    await done(decide(kitchen.reviewer, deviationId, { decision: 'condemn', lotId: small.lotId, weight: kg(1) }));
    await done(close(kitchen.reviewer, deviationId));
    expect(await standing(small.lotId)).toBe('condemned');
  });
});

describe('two holds on the same pounds', () => {
  test('what one condemns may be what the other released: as much is undecided', async () => {
    const { lotId } = await kitchen.startLot();
    await kitchen.putIn(lotId);
    const [first, second] = [await openOn(lotId), await openOn(lotId)];
    await act(kitchen.reviewer, first, kitchen.now());
    await done(decide(kitchen.reviewer, first, { weight: kg(5) }));
    await done(decide(kitchen.reviewer, second, { decision: 'condemn', weight: kg(5) }));
    expect(await showDeviation(kitchen.operator, first)).toMatchObject({ atStake: kg(5), undecided: kg(5) });
    expect(code(await close(kitchen.reviewer, first))).toEqual([409, 'product-undecided']);
    await done(decide(kitchen.reviewer, first, { weight: kg(5) }));
    await done(close(kitchen.reviewer, first));
    expect(await standing(lotId)).toBe('on-hold');
  });

  test('all that one released stays released when the other condemns some', async () => {
    const { lotId } = await kitchen.startLot();
    await kitchen.putIn(lotId);
    const [first, second] = [await openOn(lotId), await openOn(lotId)];
    await done(decide(kitchen.reviewer, first));
    await done(decide(kitchen.reviewer, second, { decision: 'condemn', weight: kg(5) }));
    expect(await showDeviation(kitchen.operator, first)).toMatchObject({ atStake: kg(5), undecided: { grams: 0 } });
  });
});

describe('a closed hold that a correction opens again', () => {
  test('is among the open ones of today, though the correction was in a lot two steps away', async () => {
    const first = await kitchen.startLot();
    await kitchen.putIn(first.lotId, { weight: kg(10) });
    const deviationId = await openOn(first.lotId);
    const second = await kitchen.startLot();
    await kitchen.putIn(second.lotId, { sourceLotId: first.lotId, weight: kg(10) });
    const third = await kitchen.startLot();
    await kitchen.putIn(third.lotId, { sourceLotId: second.lotId, weight: kg(10) });
    const { inputId } = await kitchen.putIn(third.lotId, { weight: kg(10) });
    await act(kitchen.reviewer, deviationId, kitchen.now());
    await done(decide(kitchen.reviewer, deviationId, { lotId: third.lotId, weight: kg(20) }));
    await done(close(kitchen.reviewer, deviationId));
    expect(await standing(third.lotId)).toBe('in-work');

    const [, pork] = (await kitchen.showLot(third.lotId)).inputs;
    await kitchen.putIn(third.lotId, {
      ...{ receiptId: pork?.from.receiptId, weight: kg(30), amends: inputId, reason: 'Read 10 for 30.' },
    });
    for (const { lotId } of [first, second, third]) expect(await standing(lotId)).toBe('on-hold');
    expect((await today()).openDeviations.map((one) => one.deviationId)).toContain(deviationId);
    await done(decide(kitchen.reviewer, deviationId, { lotId: third.lotId, weight: kg(20) }));
    expect((await today()).openDeviations.map((one) => one.deviationId)).not.toContain(deviationId);
    expect(await standing(third.lotId)).toBe('in-work');
  });

  test('takes the clearance of a lot back that was reviewed with the earlier decision', async () => {
    const from = await kitchen.startLot();
    await kitchen.putIn(from.lotId, { weight: kg(10) });
    const deviationId = await openOn(from.lotId);
    const early = kitchen.now();
    const lot = await aSausageLot(kitchen, larder, 'packed');
    await kitchen.putIn(lot.lotId, { sourceLotId: from.lotId, weight: kg(1), takenAt: early });
    await kitchen.weighCure(lot.lotId, { weight: g(2.5) });
    await settle(kitchen.reviewer, deviationId, kitchen.now());
    await sign(lot.lotId);
    expect(await mayShip(lot.packingId)).toBe(true);

    const [input] = (await kitchen.showLot(from.lotId)).inputs;
    await kitchen.putIn(from.lotId, {
      ...{ receiptId: input?.from.receiptId, weight: kg(15), amends: input?.inputId, reason: 'Read 10 for 15.' },
    });
    expect(await standing(lot.lotId)).toBe('on-hold');
    await done(decide(kitchen.reviewer, deviationId, { decision: 'condemn', weight: kg(5) }));
    expect(await standing(lot.lotId)).toBe('to-review');
    expect(code(await send(lot.packingId, 1))).toEqual([409, 'not-cleared']);
  });
});

test.each([
  ['nothing', { value: 0, unit: 'kg' }],
  ['less than nothing', { value: -1, unit: 'kg' }],
  ['less than a scale can show', { value: 0.0001, unit: 'kg' }],
] as const)('a decision about %s is refused', async (_case, weight) => {
  const { lotId } = await kitchen.startLot();
  await kitchen.putIn(lotId);
  const reply = await decide(kitchen.reviewer, await openOn(lotId), { weight });
  expect(code(reply)).toEqual([400, 'invalid-input']);
});

test('a decision about a gram decides a gram, and 28.7 lb are as good as 13.018 kg', async () => {
  const { lotId } = await kitchen.startLot();
  await kitchen.putIn(lotId, { weight: { value: 28.7, unit: 'lb' } });
  const deviationId = await openOn(lotId);
  await act(kitchen.reviewer, deviationId, kitchen.now());
  await made(deviationId, { decision: 'condemn', weight: g(1) });
  expect(code(await close(kitchen.reviewer, deviationId))).toEqual([409, 'product-undecided']);
  await made(deviationId, { weight: kg(13.017) });
  expect(await showDeviation(kitchen.operator, deviationId)).toMatchObject({ undecided: { grams: 0 }, covered: true });
});
