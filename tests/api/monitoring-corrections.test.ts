import * as contract from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { aColdRoomReading, type ReadingInput } from '../builders/a-cold-room-reading';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { anotherShop, aShop, done, type Shop } from '../builders/a-shop';
import { ask, code } from '../support/ask';
import { startApp, type TestApp } from '../support/start-app';

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

describe('a correction', () => {
  test('needs a reason, judges anew, and leaves both to be seen', async () => {
    const first = await done<Recorded>(send(inColdRoom(fahrenheit(36))));
    const correct = (fields: Partial<ReadingInput>) =>
      send(inColdRoom({ amends: first.readingId, reason: 'Read upside down.', ...fields }));
    expect(code(await correct({ reason: undefined }))).toEqual([422, 'reason-missing']);
    expect(code(await correct({ controlPointId: kitchen.points.cook }))).toEqual([404, 'not-found']);
    expect(code(await correct({ amends: v7() }))).toEqual([404, 'not-found']);

    const second = await done<Recorded>(correct(fahrenheit(63)));
    expect(second).toMatchObject({ verdicts: [{ verdict: { kind: 'missed' } }], deviationId: expect.any(String) });
    expect(code(await correct(fahrenheit(39)))).toEqual([409, 'already-amended']);
    expect((await kitchen.showLot(lotId)).controlPoints[3]).toMatchObject({
      stands: 'missed',
      readings: [
        { readingId: first.readingId, amendedBy: second.readingId },
        { amends: first.readingId, reason: 'Read upside down.' },
      ],
    });
  });

  test('that turns a miss into a pass keeps its deviation for a person to close', async () => {
    const { readingId, deviationId } = await done<Recorded>(send(inColdRoom(fahrenheit(83))));
    await done(send(inColdRoom({ ...fahrenheit(38), amends: readingId, reason: 'Digits swapped.' })));
    const lot = await kitchen.showLot(lotId);
    expect(lot).toMatchObject({ standing: 'on-hold', deviations: [{ deviationId, open: true }] });
    expect(lot.controlPoints[3]).toMatchObject({ stands: 'met', openDeviationId: deviationId });
  });

  test('that still misses belongs to the deviation that is open', async () => {
    const first = await done<Recorded>(send(inColdRoom(fahrenheit(64))));
    const second = await done<Recorded>(send(inColdRoom({ ...fahrenheit(46), amends: first.readingId, reason: 'Digits swapped.' })));
    const third = await done<Recorded>(send(inColdRoom({ ...fahrenheit(47), amends: second.readingId, reason: 'Seven, not six.' })));
    expect([second.deviationId, third.deviationId]).toEqual([first.deviationId, first.deviationId]);
    expect(await deviations()).toHaveLength(1);
  });

  test('of a lot of another shop is not found', async () => {
    const { readingId } = await done<Recorded>(send(inColdRoom()));
    const other = await anotherShop(larder);
    expect(code(await send(inColdRoom({ amends: readingId, reason: 'Mine now.' }), other.owner))).toEqual([404, 'not-found']);
  });
});
