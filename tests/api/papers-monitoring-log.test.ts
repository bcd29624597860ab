import * as contract from '@larderbook/contracts';
import type { MonitoringRowData } from '@larderbook/documents';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { Database } from '../../apps/api/src/platform/database';
import { logRows } from '../../apps/api/src/papers/log-rows';
import { tellingIn } from '../../apps/api/src/papers/telling';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aCurve, aSausageLot } from '../builders/a-sausage-lot';
import { anotherShop, aShop, done, type Shop, type Worker } from '../builders/a-shop';
import { ask, code } from '../support/ask';
import { type Device } from '../support/device';
import { printed } from '../support/printed';
import { startApp, type TestApp } from '../support/start-app';

let larder: TestApp;
let shop: Shop;
let kitchen: SausageKitchen;
let inspector: Worker;
beforeAll(async () => {
  larder = await startApp(new Date('2026-03-02T14:00:00Z')); // eight in the morning in the shop
  shop = await aShop(larder);
  kitchen = await aSausageKitchen(shop, larder);
  inspector = await shop.hire('inspector');
});
afterAll(() => larder.close());

const print = (path: string) => printed(inspector, path);
const refused = async (path: string, by: Device = inspector) => code(await by.get(path));
const logOf = (point: keyof SausageKitchen['points'], from: string, to: string) =>
  `/monitoring-log.pdf?controlPointId=${kitchen.points[point]}&from=${from}&to=${to}`;

describe('the monitoring log', () => {
  test('takes the days of the shop, not of Greenwich', async () => {
    const { lotId, code } = await kitchen.startLot();
    const read = (seen: string, takenAt: string) => kitchen.read(lotId, 'label', { entered: { answer: true, seen }, takenAt });
    await read('first of March', '2026-03-01T06:00:00Z'); // midnight
    await read('last of March 1', '2026-03-02T05:59:59Z');
    await read('first of March 2', '2026-03-02T06:00:00Z');
    const { text, name } = await print(logOf('label', '2026-03-01', '2026-03-01'));
    expect(name).toBe('inline; filename="Smoked-sausage-Label-log-2026-03-01-to-2026-03-01.pdf"');
    expect(text).toContain(code);
    expect(text).toContain('“first of March”');
    expect(text).toContain('“last of March 1”');
    expect(text).not.toContain('first of March 2');
    expect(text).toContain('PRE 1');
  });

  test('shows who, with what, when last checked, against which limit, and what it adds up to', async () => {
    const instrumentId = v7();
    await done(
      ask(kitchen.operator, contract.recordInstrument, {
        instrumentId,
        name: 'T-03',
        kind: 'thermometer',
        unit: '°F',
        tolerance: 1,
        checkEveryDays: 7,
      }),
    );
    const check = {
      calibrationId: v7(),
      instrumentId,
      method: 'ice point' as const,
      expected: 32,
      observed: 32.4,
      action: '',
      takenAt: kitchen.now(),
    };
    await done(ask(shop.owner, contract.recordCalibration, check));
    const { lotId } = await kitchen.startLot();
    for (const value of [38, 47]) {
      larder.clock.moveOn(60_000);
      await kitchen.read(lotId, 'coldRoom', { entered: { value, unit: '°F' }, instrumentId });
    }
    const { text } = await print(logOf('coldRoom', '2026-03-02', '2026-03-02'));
    for (const said of [
      'T-03, thermometer; checked Mar 2, 2026',
      'by Odile Farrow: ice point: reads 32.4 °F where 32 °F is right, within ± 1 °F',
      '≤ 41 °F (5 °C)',
      'FDA Food Code',
      '1 met, 1 missed',
      '47 °F against ≤ 41 °F (5 °C): 6 °F over.',
      'Corrective action: deviation No.',
      'TO The operator',
      'No review of this period is recorded.',
    ])
      expect(text).toContain(said);
  });

  test('judges a curve at its last reading, and lists the reviews signed of what was monitored', async () => {
    larder.clock.moveTo(new Date('2026-03-03T14:00:00Z'));
    const { code } = await aSausageLot(kitchen, larder, 'reviewed');
    const { text } = await print(logOf('chill', '2026-03-03', '2026-03-03'));
    expect(text.match(/part of a curve/g)).toHaveLength(5);
    expect(text).toContain(`${code} Smoked sausage curve met`);
    expect(text).toContain('1 curve met, 5 readings of curves');
    expect(text).toContain(`Lot ${code}: Complete and met.`);
  });

  test('shows the weighings of a cure, with the target of each', async () => {
    const { text } = await print(logOf('cure', '2026-03-03', '2026-03-03'));
    for (const said of ['25 g', 'Curing salt 6.25 %', 'target 25 g', '1 met']) expect(text).toContain(said);
  });

  test('shows a check that nobody made before packing', async () => {
    larder.clock.moveTo(new Date('2026-03-04T14:00:00Z'));
    const { lotId, code } = await aSausageLot(kitchen, larder, 'chilled');
    await kitchen.read(lotId, 'label', { entered: { answer: true, seen: 'Label 12.' } });
    const run = { packingId: v7(), lotId, count: 1, net: { value: 800, unit: 'g' as const }, takenAt: kitchen.now() };
    await done(ask(kitchen.operator, contract.packLot, run));
    const { text } = await print(logOf('coldRoom', '2026-03-04', '2026-03-04'));
    expect(text).toContain(code);
    expect(text).toContain('check not made');
    expect((await print(logOf('label', '2026-03-04', '2026-03-04'))).text).not.toContain('check not made');
  });

  test('reads its rows in batches, in the same order and each once', async () => {
    const { lotId } = await kitchen.startLot();
    for (const minute of [1, 1, 2, 3, 3]) await kitchen.read(lotId, 'coldRoom', { takenAt: `2026-03-16T15:0${minute}:00Z` });
    await aCurve(kitchen, larder, lotId, 'cook', [120]);
    const database = new Database({ url: larder.database.apiUrl });
    const [point] = (await kitchen.showLot(lotId)).controlPoints.flatMap(({ controlPoint }) =>
      controlPoint.name === 'Cold room' ? [controlPoint] : [],
    );
    if (!point) throw new Error('The plan has a cold room');
    const stretch = { point, from: new Date('2026-03-03T06:00:00Z'), until: new Date('2026-03-17T00:00:00Z') };
    const rows = async (batch: number) => {
      const found: MonitoringRowData[] = [];
      for await (const row of logRows(
        (work) => database.transaction(shop, work),
        stretch,
        { ...tellingIn({ language: 'en', timeZone: 'America/Chicago', timeStyle: 'US' }), mass: 'lb' },
        new Date('2026-03-16T20:00:00Z'),
        batch,
      ))
        found.push(row);
      return found;
    };
    const whole = await rows(400);
    expect(whole.map(({ kind }) => kind)).toEqual(['reading', 'not done', ...Array.from({ length: 5 }, () => 'reading')]);
    expect(await rows(1)).toEqual(whole);
    expect(await rows(2)).toEqual(whole);
    await database.onModuleDestroy();
  });

  test('asks for a period that can be, of a control point that is', async () => {
    expect(await refused(logOf('label', '2026-03-02', '2026-03-01'))).toEqual([400, 'invalid-input']);
    expect(await refused(logOf('label', '2026-02-30', '2026-03-01'))).toEqual([400, 'invalid-input']);
    expect(await refused(logOf('label', '2025-01-01', '2026-02-05'))).toEqual([422, 'period-too-long']);
    expect((await print(logOf('label', '2025-01-01', '2026-02-04'))).text).toContain('No reading was taken in this period.');
    expect(await refused(`/monitoring-log.pdf?controlPointId=${v7()}&from=2026-03-01&to=2026-03-02`)).toEqual([404, 'not-found']);
    expect(await refused(logOf('label', '2026-03-01', '2026-03-02'), (await anotherShop(larder)).owner)).toEqual([404, 'not-found']);
  });
});
