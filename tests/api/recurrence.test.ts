import * as contract from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { anAction, showDeviation } from '../builders/a-settlement';
import { aShop, done, password } from '../builders/a-shop';
import { ask } from '../support/ask';
import { startApp, type TestApp } from '../support/start-app';

let larder: TestApp;
let kitchen: SausageKitchen;
beforeAll(async () => {
  larder = await startApp();
  kitchen = await aSausageKitchen(await aShop(larder), larder);
});
afterAll(() => larder.close());

const { different: _, ...without } = anAction.critical;
const act = (deviationId: string, action: contract.CorrectiveAction) =>
  ask(kitchen.operator, contract.recordCorrectiveAction, { actionId: v7(), deviationId, action, takenAt: kitchen.now() });

async function missed() {
  const lot = await kitchen.startLot();
  await kitchen.putIn(lot.lotId);
  const { deviationId = '' } = await kitchen.read(lot.lotId, 'coldRoom', { entered: { value: 46, unit: '°F' } });
  return { ...lot, shown: await showDeviation(kitchen.operator, deviationId) };
}

/** Sessions end on the way. */
async function later(milliseconds: number): Promise<void> {
  larder.clock.moveOn(milliseconds);
  const { userName } = kitchen.operator;
  await done(kitchen.operator.post('/session', { userName, password }));
}

test('a control point that deviated in the 90 days before names when, and asks what will be different', async () => {
  const first = await missed();
  expect(first.shown.recurrence).toEqual([]);
  await done(act(first.shown.deviationId, without));

  await later(90 * 86_400_000);
  const second = await missed();
  expect(second.shown.recurrence).toEqual([
    {
      deviationId: first.shown.deviationId,
      number: first.shown.number,
      code: first.code,
      openedAt: first.shown.opened.recordedAt,
      description: [{ tells: 'because', point: 'Cold room', verdict: first.shown.verdict }],
    },
  ]);
  const { status, body } = await act(second.shown.deviationId, without);
  expect([status, body.code, body.errors[0].pointer]).toEqual([422, 'say-what-will-differ', '#/action/different']);
  await done(act(second.shown.deviationId, anAction.critical));

  await later(1000);
  const third = await missed(); // 90 days and a second after the first
  expect(third.shown.recurrence.map(({ number }) => number)).toEqual([second.shown.number]);
});

test('another control point is no recurrence, and what is unforeseen has none', async () => {
  const { lotId } = await missed();
  const label = await kitchen.read(lotId, 'label', { entered: { answer: false, seen: 'Blurred.' } });
  expect((await showDeviation(kitchen.operator, label.deviationId ?? '')).recurrence).toEqual([]);
  const seen = { deviationId: v7(), lotId, description: 'A glove tip is missing.', takenAt: kitchen.now() };
  await done(ask(kitchen.operator, contract.openDeviation, seen));
  expect((await showDeviation(kitchen.operator, seen.deviationId)).recurrence).toEqual([]);
});
