import * as contract from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { aColdRoomReading, type ReadingInput } from '../builders/a-cold-room-reading';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aCurve } from '../builders/a-sausage-lot';
import { aShop, done, type Shop } from '../builders/a-shop';
import { ask, code } from '../support/ask';
import { startApp, type TestApp } from '../support/start-app';
import { told } from '../support/told';

const minute = 60_000;
let larder: TestApp;
let shop: Shop;
let kitchen: SausageKitchen;
let lotId: string;

beforeAll(async () => {
  larder = await startApp();
  shop = await aShop(larder);
  kitchen = await aSausageKitchen(shop, larder);
});
beforeEach(async () => void ({ lotId } = await kitchen.startLot()));
afterAll(() => larder.close());

type Recorded = contract.ReplyOf<typeof contract.recordReading>;

const inColdRoom = (fields: Partial<ReadingInput> = {}) => aColdRoomReading(kitchen, lotId, fields);
const send = (reading: ReadingInput, by = kitchen.operator) => ask(by, contract.recordReading, reading);
const fahrenheit = (value: number) => ({ entered: { value, unit: '°F' as const } });
const deviations = async () => (await kitchen.showLot(lotId)).deviations;

describe('a cook and its chill', () => {
  const end = (point: 'cook' | 'chill' | 'coldRoom', fields = {}) =>
    ask(kitchen.operator, contract.endStage, {
      stageEndId: v7(),
      lotId,
      controlPointId: kitchen.points[point],
      takenAt: kitchen.now(),
      ...fields,
    });
  const read = async (point: 'cook' | 'chill', value: number, fields: Partial<ReadingInput> = {}) =>
    done<Recorded>(send(inColdRoom({ controlPointId: kitchen.points[point], ...fahrenheit(value), ...fields })));
  const standOf = async (point: 0 | 1 | 2) => (await kitchen.showLot(lotId)).controlPoints[point];

  test('a cook runs until a row of its table is satisfied', async () => {
    expect(told(await read('cook', 120))).toMatchObject({
      verdicts: [{ verdict: { kind: 'undetermined', running: { stage: 'come-up' } } }],
    });
    expect(await standOf(1)).toMatchObject({ stands: 'running' });
    larder.clock.moveOn(20 * minute);
    await read('cook', 145);
    larder.clock.moveOn(3 * minute);
    expect(told(await read('cook', 145))).toMatchObject({
      verdicts: [{ verdict: { kind: 'undetermined', next: expect.stringContaining('1 min') } }],
    });
    larder.clock.moveOn(minute);
    expect(told(await read('cook', 145))).toMatchObject({
      verdicts: [{ verdict: { kind: 'met', measured: '4 min at or above 145 °F' } }],
    });
    expect(await done(end('cook'))).toMatchObject({ verdicts: [{ verdict: { kind: 'met' } }] });
    expect(await standOf(1)).toMatchObject({
      stands: 'met',
      endedAt: kitchen.now(),
      readings: [{ probe: 'core', judged: [] }, {}, {}, {}],
    });
  });

  test('a cook that ends too cold is missed, once, however often it is read again', async () => {
    const ended = await aCurve(kitchen, larder, lotId, 'cook', [120, 128, 129]);
    expect(told(ended)).toMatchObject({
      verdicts: [{ verdict: { kind: 'missed', margin: '1 °F short' } }],
      deviationId: expect.any(String),
    });
    expect((await read('cook', 128)).deviationId).toBe(ended?.deviationId);
    expect(await deviations()).toHaveLength(1);
    larder.clock.moveOn(20 * minute);
    expect(await read('cook', 158)).toMatchObject({ verdicts: [{ verdict: { kind: 'met' } }] });
    expect(await standOf(1)).toMatchObject({ stands: 'met', openDeviationId: ended?.deviationId });
  });

  test('a chill counts from the end of its cook, even when that is entered afterwards', async () => {
    const cookEnd = kitchen.now();
    larder.clock.moveOn(80 * minute);
    await read('chill', 100);
    larder.clock.moveOn(20 * minute);
    expect((await read('chill', 79)).deviationId).toBeUndefined(); // where it began is not known yet
    expect(await standOf(2)).toMatchObject({ stands: 'running' });
    await done(end('cook', { takenAt: cookEnd }));
    expect(await standOf(2)).not.toMatchObject({ stands: 'met' });
  });

  test('a chill that was too slow is missed while it runs, and opens one deviation', async () => {
    const readings: Recorded[] = [];
    for (const value of [140, 125, 110, 95, 85, 82, 78]) {
      readings.push(await read('chill', value));
      larder.clock.moveOn(30 * minute);
    }
    const opened = readings.map(({ deviationId }) => deviationId).filter((deviationId) => deviationId !== undefined);
    expect(opened.length).toBeGreaterThan(1);
    expect(new Set(opened).size).toBe(1);
    expect(await deviations()).toMatchObject([{ deviationId: opened[0], open: true }]);
    expect(await standOf(2)).toMatchObject({
      stands: 'missed',
      bands: [
        { label: { from: { value: '130', unit: '°F' }, to: { value: '80', unit: '°F' } }, kind: 'missed' },
        { label: { from: { value: '80', unit: '°F' }, to: { value: '40', unit: '°F' } } },
      ],
    });
  });

  test('of several probes the worst governs', async () => {
    for (const [left, right] of [
      [140, 140],
      [158, 129],
    ] as const) {
      await read('cook', left, { probe: 'left' });
      await read('cook', right, { probe: 'right' });
      larder.clock.moveOn(10 * minute);
    }
    expect(told(await done(end('cook')))).toMatchObject({
      verdicts: [
        {
          verdict: {
            kind: 'missed',
            probe: 'right',
            notes: expect.arrayContaining(['Probe right governs: the worst of 2 probes.', 'No reading of core.']),
          },
        },
      ],
    });
  });

  test('is finished once, and only a series is finished', async () => {
    await read('cook', 160);
    await done(end('cook'));
    expect(code(await end('cook'))).toEqual([409, 'stage-ended-already']);
    expect(code(await end('coldRoom'))).toEqual([422, 'wrong-kind-of-value']);
    expect(code(await end('cook', { controlPointId: v7() }))).toEqual([422, 'no-such-control-point']);
    expect(code(await end('chill', { lotId: v7() }))).toEqual([404, 'not-found']);
  });
});
