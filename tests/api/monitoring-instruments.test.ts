import * as contract from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { aColdRoomReading, type ReadingInput } from '../builders/a-cold-room-reading';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { anotherShop, aShop, done, type Shop } from '../builders/a-shop';
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

describe('an instrument', () => {
  type Instrument = contract.ReplyOf<typeof contract.recordInstrument>;
  const add = (fields = {}) =>
    done<Instrument>(
      ask(kitchen.operator, contract.recordInstrument, {
        instrumentId: v7(),
        name: 'Probe 3',
        kind: 'thermometer',
        unit: '°F',
        tolerance: 2,
        checkEveryDays: 1,
        ...fields,
      }),
    );
  const check = (instrumentId: string, observed: number) =>
    done<Instrument>(
      ask(kitchen.operator, contract.recordCalibration, {
        calibrationId: v7(),
        instrumentId,
        method: 'ice point',
        expected: 32,
        observed,
        action: '',
        takenAt: kitchen.now(),
      }),
    );
  const flags = async (instrumentId?: string) => (await done<Recorded>(send(inColdRoom({ instrumentId })))).flags;

  test('that nobody names, or that was never checked, is flagged', async () => {
    expect(await flags()).toEqual(['instrument-unknown']);
    const { instrumentId, overdue } = await add();
    expect(overdue).toBe(true);
    expect(await flags(instrumentId)).toEqual(['instrument-overdue']);
  });

  test('within its tolerance is good until its next check is due', async () => {
    const { instrumentId } = await add();
    const checked = await check(instrumentId, 34);
    expect(told(checked)).toMatchObject({
      overdue: false,
      lastCheck: { verdict: { kind: 'met', because: 'It reads 2 °F too high; ± 2 °F is allowed.' } },
    });
    expect(await flags(instrumentId)).toEqual([]);
    larder.clock.moveOn(24 * 60 * minute + 1);
    expect(await flags(instrumentId)).toContain('instrument-overdue');
    const { instruments } = await done<contract.ReplyOf<typeof contract.listInstruments>>(
      ask(kitchen.operator, contract.listInstruments, {}),
    );
    expect(instruments.find((one) => one.instrumentId === instrumentId)).toMatchObject({
      overdue: true,
      dueAt: checked.dueAt,
    });
  });

  test('beyond its tolerance is not to be trusted', async () => {
    const { instrumentId } = await add();
    expect(told(await check(instrumentId, 29.999))).toMatchObject({
      overdue: true,
      lastCheck: { verdict: { kind: 'missed', margin: '0.001 °F beyond' } },
    });
    expect(await flags(instrumentId)).toEqual(['instrument-overdue']);
  });

  test('of another shop is unknown here, and the inspector checks none', async () => {
    const { instrumentId } = await add();
    const calibration = {
      calibrationId: v7(),
      instrumentId,
      method: 'ice point' as const,
      expected: 32,
      observed: 32,
      action: '',
      takenAt: kitchen.now(),
    };
    expect(code(await ask((await anotherShop(larder)).owner, contract.recordCalibration, calibration))).toEqual([404, 'not-found']);
    expect(code(await ask(await shop.hire('inspector'), contract.recordCalibration, calibration))).toEqual([403, 'not-allowed']);
  });
});
