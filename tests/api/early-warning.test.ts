import { Readable } from 'node:stream';
import * as contract from '@larderbook/contracts';
import type { ReplyOf } from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { readBack } from '../../packages/documents/src/read-back.test-data';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aSausageLot } from '../builders/a-sausage-lot';
import { aSausagePlan } from '../builders/a-sausage-plan';
import { anotherShop, aShop, done, type Shop } from '../builders/a-shop';
import { ask } from '../support/ask';
import { startApp, type TestApp } from '../support/start-app';

const minute = 60_000;
const air = 'Air of the blast chiller';

let larder: TestApp;
let shop: Shop;
let kitchen: SausageKitchen;
beforeAll(async () => {
  larder = await startApp();
  shop = await aShop(larder);
  kitchen = await aSausageKitchen(shop, larder, { surroundings: { name: air, setPoint: { value: 34, unit: '°F' } } });
});
afterAll(() => larder.close());

/** A core on its way from 140 °F to the air around it, read every ten minutes; the clock goes with it. */
async function chill(lotId: string, { tauHours = 0.9, around = 34, until = 40, from = 0 } = {}) {
  for (let minutes = from; minutes <= until; minutes += 10) {
    if (minutes > 0) larder.clock.moveOn(10 * minute);
    const value = Math.round((around + (140 - around) * Math.exp(-minutes / 60 / tauHours)) * 10) / 10;
    await kitchen.read(lotId, 'chill', { entered: { value, unit: '°F' } });
  }
}
const readAir = (lotId: string, value: number) => kitchen.read(lotId, 'chill', { entered: { value, unit: '°F' }, probe: air });
const chilling = async (lotId: string) => {
  const { controlPoints, ...lot } = await kitchen.showLot(lotId);
  const point = controlPoints.find(({ controlPoint }) => controlPoint.controlPointId === kitchen.points.chill);
  if (!point) throw new Error('the chill is gone');
  return { ...lot, point, forecast: point.forecast };
};
const print = async (path: string): Promise<string> => {
  const { status, body } = await shop.owner.get(path);
  if (status !== 200) throw new Error(`Answered ${status}: ${JSON.stringify(body)}`);
  return (await readBack(Readable.from([body as Buffer]))).text;
};
const cooked = async () => (await aSausageLot(kitchen, larder, 'cooked')).lotId;
const today = () => done<ReplyOf<typeof contract.showToday>>(ask(shop.owner, contract.showToday, {}));

describe('when a chill will be there', () => {
  test('is too early to tell at first, and worked out anew with each reading', async () => {
    const lotId = await cooked();
    await chill(lotId, { until: 10 });
    expect((await chilling(lotId)).forecast).toMatchObject({ state: 'too early to tell', target: { value: '80', unit: '°F' } });
    await chill(lotId, { from: 20, until: 40 });
    const { forecast, point } = await chilling(lotId);
    expect(forecast).toMatchObject({
      state: 'on course',
      use: 'advice, never acceptance',
      by: point.bands[0]?.deadline,
      medium: { celsius: expect.closeTo(1.11, 2), from: 'set point' },
    });
    const { arrival } = forecast as { arrival: { best: number; earliest: number; latest: number } };
    const began = Date.parse(point.readings[0]?.made.at ?? '');
    expect(arrival.best).toBeCloseTo(began + 0.9 * Math.log(106 / 46) * 60 * minute, -5);
    expect([arrival.earliest < arrival.best, arrival.best < arrival.latest]).toEqual([true, true]);

    await chill(lotId, { from: 50, until: 60 });
    expect((await chilling(lotId)).forecast).toMatchObject({ target: { value: '40', unit: '°F' } });
  });

  test('at risk comes first on the day’s sheet, and a corrected reading changes it', async () => {
    const calm = await cooked();
    await chill(calm, { until: 40 });
    const lotId = await cooked();
    await chill(lotId, { tauHours: 1.95, until: 50 });
    const { forecast, point, warning, code } = await chilling(lotId);
    expect(forecast).toMatchObject({ state: 'at risk', next: expect.arrayContaining([{ code: 'cool-faster' }]) as unknown });
    expect(warning).toEqual({ controlPointId: kitchen.points.chill, name: 'Chill', forecast });
    const before = await today();
    expect(before.inWork[0]).toMatchObject({ code, warning: { forecast: { state: 'at risk' } } });
    expect(before.inWork.find(({ lotId: other }) => other === calm)?.running?.deadline).toBeLessThan(
      before.inWork[0]?.running?.deadline ?? 0,
    );

    const last = point.readings.at(-1);
    const takenAt = last?.made.at ?? '';
    const corrected = { entered: { value: 82, unit: '°F' as const }, amends: last?.readingId, reason: 'Misread.' };
    await kitchen.read(lotId, 'chill', { ...corrected, takenAt });
    const after = await chilling(lotId);
    expect(after.forecast).not.toMatchObject({ state: 'at risk' });
    expect(after.forecast).not.toEqual(forecast);
  });

  test('will miss is told in time, and changes neither verdict nor standing', async () => {
    const lotId = await cooked();
    await chill(lotId, { tauHours: 4, until: 50 });
    const { forecast, point, standing, openDeviations, warning, running } = await chilling(lotId);
    expect(forecast).toMatchObject({ state: 'will miss', by: running?.deadline });
    expect(warning?.forecast.state).toBe('will miss');
    expect(larder.clock.now().getTime()).toBeLessThan(forecast?.by ?? 0);
    expect({ standing, openDeviations, stands: point.stands }).toEqual({
      standing: 'in-work',
      openDeviations: 0,
      stands: 'running',
    });
    expect(point.judged.map(({ verdict }) => verdict.kind)).toEqual(['undetermined']);
    expect((await today()).inWork[0]).toMatchObject({ lotId, warning: { forecast: { state: 'will miss' } } });
  });

  test('on course does not pass a chill that nobody went on reading', async () => {
    const lotId = await cooked();
    await chill(lotId, { until: 40 });
    expect((await chilling(lotId)).forecast?.state).toBe('on course');
    larder.clock.moveOn(60 * minute);
    const late = await chilling(lotId);
    expect(late.forecast).toMatchObject({ state: 'undetermined', next: [{ code: 'read-core-now' }] });
    const end = { stageEndId: v7(), lotId, controlPointId: kitchen.points.chill, takenAt: kitchen.now() };
    const ended = await done<ReplyOf<typeof contract.endStage>>(ask(kitchen.operator, contract.endStage, end));
    expect(ended.verdicts.map(({ verdict }) => verdict.kind)).toEqual(['missed']);
    expect((await chilling(lotId)).forecast).toBeUndefined();
  });
});

describe('what the product lies in', () => {
  test('stands on paper as judged by nothing, and the curve is judged without it', async () => {
    const lotId = await cooked();
    await chill(lotId, { until: 50 });
    larder.clock.moveOn(30 * minute);
    await readAir(lotId, 36.5);
    await kitchen.read(lotId, 'chill', { entered: { value: 39.5, unit: '°F' } });
    await readAir(lotId, 35.5);
    const end = { stageEndId: v7(), lotId, controlPointId: kitchen.points.chill, takenAt: kitchen.now() };
    await done(ask(kitchen.operator, contract.endStage, end));
    const record = await print(`/lots/${lotId}/lot-record.pdf`);
    expect(record).toContain(`${air} (not judged)`);
    const day = kitchen.now().slice(0, 10);
    const period = `from=${day}&to=${day}`;
    const log = await print(`/monitoring-log.pdf?controlPointId=${kitchen.points.chill}&${period}`);
    expect(log).toContain('36.5 °F not judged');
    expect(log).toMatch(/39\.5 °F part of a curve/);
    expect(log).toMatch(/35\.5 °F not judged/);
    const plan = await print(`/plans/${kitchen.planId}/paper`);
    expect(plan).toContain(`${air}, set to 34 °F by the shop’s own habit. Judged by no limit`);
  });

  test('is kept and shown, takes the place of the set point, and is judged by nothing', async () => {
    const lotId = await cooked();
    await chill(lotId, { until: 10 });
    const before = await chilling(lotId);
    const { verdicts, deviationId } = await readAir(lotId, 38.5);
    expect([verdicts, deviationId]).toEqual([[], undefined]);
    await chill(lotId, { from: 20, until: 40 });
    const { point, forecast } = await chilling(lotId);
    expect(point.readings.find(({ probe }) => probe === air)).toMatchObject({ entered: { value: 38.5 }, judged: [] });
    expect(forecast).toMatchObject({ medium: { celsius: expect.closeTo(3.61, 2), from: 'measured' } });
    expect(before.point.stands).toBe('running');
    expect(point.judged[0]?.verdict).toMatchObject({ kind: 'undetermined', probe: 'core' });
    expect(JSON.stringify([point.judged, point.bands])).not.toContain('38.5');
  });

  test('as cold as the bound it is no core that has arrived; hot as the oven it asks nothing', async () => {
    const lotId = await cooked();
    await chill(lotId, { until: 10 });
    for (const value of [79, 60, 39]) await readAir(lotId, value);
    const { point } = await chilling(lotId);
    expect(point.judged[0]?.verdict).toMatchObject({ kind: 'undetermined', running: { figures: { to: { value: '80', unit: '°F' } } } });
    expect(point.judged[0]?.verdict.probe).toBe('core');
    expect(point.bands).toHaveLength(1);
  });

  test('a change of it begins anew', async () => {
    const lotId = await cooked();
    await readAir(lotId, 60);
    await chill(lotId, { until: 40 });
    await readAir(lotId, 35);
    const { forecast } = await chilling(lotId);
    expect(forecast).toMatchObject({
      state: 'too early to tell',
      because: expect.arrayContaining([{ code: 'medium-changed' }]) as unknown,
      next: [{ code: 'read-core-and-medium' }],
    });
  });

  test('may not bear the name of a probe, nor stand where no series is read', async () => {
    const { content } = aSausagePlan({ surroundings: { name: 'CORE' } });
    const planId = v7();
    const { incomplete } = await done<contract.Plan>(
      ask(shop.owner, contract.recordPlan, { planId, productId: kitchen.productId, content }),
    );
    expect(incomplete).toEqual(['Chill: “CORE” is one of its probes. Give what it lies in another name.']);
    const adopted = await ask(shop.owner, contract.adoptPlan, { adoptionId: v7(), planId, statement: 'Adopted.' });
    expect(adopted.body).toMatchObject({ code: 'plan-incomplete' });
  });
});

test('where nobody says or reads what it lies in, it says what to do', async () => {
  const elsewhere = await anotherShop(larder);
  const plain = await aSausageKitchen(elsewhere, larder);
  const { lotId } = await aSausageLot(plain, larder, 'cooked');
  for (const value of [140, 128, 118, 108, 99]) {
    await plain.read(lotId, 'chill', { entered: { value, unit: '°F' } });
    larder.clock.moveOn(10 * minute);
  }
  const { controlPoints } = await plain.showLot(lotId);
  expect(controlPoints.find(({ forecast }) => forecast)?.forecast).toMatchObject({
    state: 'undetermined',
    next: [{ code: 'name-the-medium' }],
  });
});
