import * as contract from '@larderbook/contracts';
import type { ReplyOf } from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aCurve, aSausageLot } from '../builders/a-sausage-lot';
import { aShop, done } from '../builders/a-shop';
import { ask } from '../support/ask';
import { startApp, type TestApp } from '../support/start-app';
import { told } from '../support/told';

const minute = 60_000;

let larder: TestApp;
let kitchen: SausageKitchen;
beforeAll(async () => {
  larder = await startApp();
  kitchen = await aSausageKitchen(await aShop(larder), larder);
});
afterAll(() => larder.close());

const end = (lotId: string, point: 'cook' | 'chill', takenAt = kitchen.now()) =>
  done<ReplyOf<typeof contract.endStage>>(
    ask(kitchen.operator, contract.endStage, { stageEndId: v7(), lotId, controlPointId: kitchen.points[point], takenAt }),
  );

/** Cooked and not yet said to be; then chilled by these readings, and the end of cooking entered after some of them. */
async function chilled(points: [minutes: number, fahrenheit: number][], endAt: number) {
  const { lotId } = await aSausageLot(kitchen, larder, 'cured');
  await aCurve(kitchen, larder, lotId, 'cook', [120, 140, 159, 160], false);
  larder.clock.moveOn(60 * minute);
  const began = larder.clock.now().getTime();
  const at = (minutes: number) => new Date(began + minutes * minute).toISOString();
  larder.clock.moveOn(500 * minute);
  for (const [minutes, value] of points) {
    await kitchen.read(lotId, 'chill', { entered: { value, unit: '°F' }, takenAt: at(minutes) });
  }
  await end(lotId, 'cook', at(endAt));
  const { verdicts, deviationId } = await end(lotId, 'chill', at(410));
  return { lotId, verdict: verdicts[0]?.verdict, deviationId };
}

test('an end of cooking entered late does not make a slow chill quick', async () => {
  const slow: [number, number][] = [
    [0, 150],
    [60, 131],
    [120, 100],
    [185, 80],
    [400, 40],
  ];
  for (const endAt of [0, 100]) {
    const { verdict, deviationId, lotId } = await chilled(slow, endAt);
    expect(told(verdict)).toMatchObject({ kind: 'missed', margin: '35 min too long' });
    expect(deviationId).toBeDefined();
    expect(await kitchen.showLot(lotId)).toMatchObject({ standing: 'on-hold' });
  }
});

test('nor does it stand for the start of a chill that was never read hot', async () => {
  const cold: [number, number][] = [
    [-30, 100],
    [10, 95],
    [60, 80],
    [300, 40],
  ];
  expect(told((await chilled(cold, 0)).verdict)).toMatchObject({
    kind: 'undetermined',
    next: 'Correct the time cooking ended, to when the core was hottest or before.',
  });
  expect(told((await chilled(cold, -60)).verdict)).toMatchObject({ kind: 'missed', margin: '30 min too long' });
});
