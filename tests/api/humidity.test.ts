import * as contract from '@larderbook/contracts';
import { cookedMeat65Log, type HumidityKept } from '@larderbook/haccp';
import { v7 } from 'uuid';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { anAdoptedPlan } from '../builders/a-plan';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aShop, done, type Shop } from '../builders/a-shop';
import { ask } from '../support/ask';
import { printed } from '../support/printed';
import { startApp, type TestApp } from '../support/start-app';

let larder: TestApp;
let shop: Shop;
let kitchen: SausageKitchen;
const minute = 60_000;
const [cookId, humidityId] = [v7(), v7()];

beforeAll(async () => {
  larder = await startApp();
  shop = await aShop(larder);
  kitchen = await aSausageKitchen(shop, larder);
  const { content } = await done<contract.Plan>(ask(shop.owner, contract.showPlan, { planId: kitchen.planId }));
  const [model] = content.controlPoints as [contract.ControlPoint];
  const own: contract.ControlPoint = { ...model, kind: 'prerequisite', probes: [], plausible: undefined, follows: undefined };
  const { source } = cookedMeat65Log;
  const cook: contract.ControlPoint = {
    ...own,
    controlPointId: cookId,
    name: 'Roasting',
    takenAs: 'curve',
    limits: [{ limitId: v7(), limit: { ...cookedMeat65Log, longestGapSeconds: 3600 } }],
  };
  const humid: contract.ControlPoint = {
    ...own,
    controlPointId: humidityId,
    name: 'Humidity',
    takenAs: 'attestation',
    follows: cookId,
    limits: [{ limitId: v7(), limit: { kind: 'attestation', statement: 'Humidity was kept.', asks: 'humidity', source } }],
  };
  await anAdoptedPlan(shop.owner, kitchen.productId, { ...content, controlPoints: [...content.controlPoints, cook, humid] });
});
afterAll(() => larder.close());

const begun = () => larder.clock.now().getTime() - 10 * 60 * minute;
const at = (minutes: number) => new Date(begun() + minutes * minute).toISOString();

async function cooked(fahrenheit: number) {
  const { lotId } = await kitchen.startLot();
  const read = (minutes: number, value: number) =>
    done(
      ask(kitchen.operator, contract.recordReading, {
        readingId: v7(),
        lotId,
        controlPointId: cookId,
        entered: { value, unit: '°F' },
        takenAt: at(minutes),
        sure: true,
      }),
    );
  await read(0, 41);
  await read(60, 100);
  for (let minutes = 100; minutes <= 200; minutes += 20) await read(minutes, fahrenheit);
  return lotId;
}
const end = (lotId: string) =>
  done<contract.ReplyOf<typeof contract.endStage>>(
    ask(kitchen.operator, contract.endStage, { stageEndId: v7(), lotId, controlPointId: cookId, takenAt: at(200) }),
  );
const answer = (lotId: string, humidity?: object) =>
  ask(kitchen.operator, contract.recordReading, {
    readingId: v7(),
    lotId,
    controlPointId: humidityId,
    takenAt: at(205),
    entered: { answer: true, seen: 'oven 2', humidity: humidity as HumidityKept | undefined },
  });
const sealed = (minutes: number) => ({ how: 'sealed oven', intoOven: at(0), from: at(10), minutes });

test('1 h 30 of a 3 h 20 cook is missed and 1 h 40 is met; what was kept is shown', async () => {
  const lotId = await cooked(147);
  await end(lotId);
  expect(await done(answer(lotId, sealed(100)))).toMatchObject({ verdicts: [{ verdict: { kind: 'met' } }] });
  expect(await done(answer(lotId, sealed(90)))).toMatchObject({
    verdicts: [{ verdict: { kind: 'missed' } }],
    deviationId: expect.any(String),
  });
  const point = (await kitchen.showLot(lotId)).controlPoints.find(({ controlPoint }) => controlPoint.name === 'Humidity');
  expect(point).toMatchObject({ stands: 'missed' });
  expect(point?.readings[0]?.entered).toMatchObject({ seen: 'oven 2', humidity: { how: 'sealed oven', minutes: 100 } });
});

test('a sealed oven beside rows below 145 °F is missed once the cook has ended, and opens the deviation then', async () => {
  const lotId = await cooked(140);
  expect(await done(answer(lotId, sealed(150)))).toMatchObject({ verdicts: [{ verdict: { kind: 'undetermined' } }] });
  expect(await end(lotId)).toMatchObject({ deviationId: expect.any(String) });
});

test('a bare yes is open, and values that cannot be are refused', async () => {
  const lotId = await cooked(147);
  await end(lotId);
  expect(await done(answer(lotId))).toMatchObject({ verdicts: [{ verdict: { kind: 'undetermined' } }] });
  expect((await answer(lotId, { how: 'sealed oven', minutes: 100 })).status).toBe(400);
});

test('papers say how humidity was kept, its values and both moments, and the log judges it by the cook that ended since', async () => {
  const lotId = await cooked(147);
  const steamed = { how: 'humid for a quarter', intoOven: at(0), from: at(5), minutes: 100, percent: 92 };
  await done(answer(lotId, steamed));
  await end(lotId);
  const [from, to] = [-1440, 1440].map((minutes) => at(minutes).slice(0, 10));
  const log = await printed(shop.owner, `/monitoring-log.pdf?controlPointId=${humidityId}&from=${from}&to=${to}`);
  const record = await printed(shop.owner, `/lots/${lotId}/lot-record.pdf`);
  const clock = new Intl.DateTimeFormat('en-US', { timeStyle: 'short', timeZone: 'America/Chicago' });
  const said = (minutes: number) =>
    clock
      .format(Date.parse(at(minutes)))
      .toLowerCase()
      .replace(/\s/g, ' ');
  for (const { text } of [log, record]) {
    expect(text).toContain('relative humidity at least 92 % for 1 h 40 min');
    expect(text).toMatch(new RegExp(`into the oven [^;]*${said(0)}, humid from [^;]*${said(5)}`));
    expect(text).toContain('oven 2');
  }
  const { code } = await kitchen.showLot(lotId);
  expect(log.text).toMatch(new RegExp(`${code} Smoked sausage yes met`));
});
