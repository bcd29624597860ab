import * as contract from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { aColdRoomReading, type ReadingInput } from '../builders/a-cold-room-reading';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aSausageLot } from '../builders/a-sausage-lot';
import { anotherShop, aShop, done, type Shop } from '../builders/a-shop';
import { ask, code, said } from '../support/ask';
import { run } from '../support/database';
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
const celsius = (value: number) => ({ entered: { value, unit: '°C' as const } });
const deviations = async () => (await kitchen.showLot(lotId)).deviations;

describe('one value', () => {
  test('is judged at once, in the unit it was read in', async () => {
    expect(told(await done(send(inColdRoom(fahrenheit(41)))))).toMatchObject({
      verdicts: [{ verdict: { kind: 'met', measured: '41 °F', margin: '0 °F to spare' } }],
    });
    expect(told(await done(send(inColdRoom(celsius(5)))))).toMatchObject({
      verdicts: [{ verdict: { kind: 'met', measured: '5 °C' } }],
    });
    expect(told(await done(send(inColdRoom(celsius(5.01)))))).toMatchObject({
      verdicts: [{ verdict: { kind: 'missed', margin: '0.01 °C over' } }],
    });
  });

  test('that misses opens a deviation with it, and the lot is on hold', async () => {
    const { deviationId } = await done<Recorded>(send(inColdRoom(fahrenheit(46))));
    const lot = await kitchen.showLot(lotId);
    expect(lot.standing).toBe('on-hold');
    const description = [{ tells: 'because', point: 'Cold room', verdict: { because: '46 °F is 5 °F above 41 °F.' } }];
    expect(told(lot.deviations)).toMatchObject([{ deviationId, description, open: true }]);
    expect(lot.controlPoints[3]).toMatchObject({
      stands: 'missed',
      openDeviationId: deviationId,
      readings: [{ entered: { value: 46, unit: '°F' }, deviationId }],
    });
  });

  test('sent twice at the same moment is one reading and one deviation, with one answer', async () => {
    const reading = inColdRoom(fahrenheit(46));
    const [first, second] = await Promise.all([done(send(reading)), done(send(reading))]);
    expect(second).toEqual(first);
    const lot = await kitchen.showLot(lotId);
    expect(lot.controlPoints[3]?.readings).toHaveLength(1);
    expect(lot.deviations).toHaveLength(1);
  });

  test('sent again with another value is refused', async () => {
    const reading = inColdRoom();
    await done(send(reading));
    expect(code(await send({ ...reading, ...fahrenheit(39) }))).toEqual([409, 'sent-differently']);
    expect(
      code(
        await ask(kitchen.operator, contract.startLot, {
          lotId: reading.readingId,
          productId: kitchen.productId,
          note: '',
          takenAt: kitchen.now(),
        }),
      ),
    ).toEqual([409, 'sent-differently']);
  });

  test.each([
    ['pH where a temperature is asked for', 'coldRoom', { value: 5.3, unit: 'pH' }],
    ['yes where a temperature is asked for', 'coldRoom', { answer: true, seen: 'cold' }],
    ['a temperature where yes or no is asked for', 'label', { value: 38, unit: '°F' }],
    ['pH in a curve', 'cook', { value: 5.3, unit: 'pH' }],
    ['a temperature where the cure is weighed', 'cure', { value: 38, unit: '°F' }],
  ] as const)('%s is refused', async (_case, point, entered) => {
    expect(code(await send(inColdRoom({ controlPointId: kitchen.points[point], entered })))).toEqual([422, 'wrong-kind-of-value']);
  });

  test('°F typed where °C is set is asked about, and kept with a flag when the person is sure', async () => {
    const reading = inColdRoom(celsius(38));
    expect(said(await send(reading))).toEqual([
      422,
      'implausible-value',
      '38 °C was entered; here -10 °C to 37 °C would be expected. Did you mean 38 °F?',
    ]);
    expect(await deviations()).toEqual([]);
    expect(await done(send({ ...reading, sure: true }))).toMatchObject({
      flags: expect.arrayContaining(['unusual-value']),
      verdicts: [{ verdict: { kind: 'missed' } }],
    });
  });

  test('what no food can be is asked about where the plan expects nothing in particular', async () => {
    expect(code(await send(inColdRoom({ controlPointId: kitchen.points.cook, ...fahrenheit(1000) })))).toEqual([422, 'implausible-value']);
    expect(await done(send(inColdRoom({ controlPointId: kitchen.points.cook, ...fahrenheit(1000), sure: true })))).toMatchObject({
      verdicts: [{ verdict: { kind: 'undetermined' } }],
    });
  });

  test.each([
    ['three decimals of a degree', { entered: { value: 38.123, unit: '°F' } }],
    ['words instead of a number', { entered: { value: 'cold', unit: '°F' } }],
    ['no number', { entered: { value: null, unit: '°F' } }],
    ['kelvin', { entered: { value: 276, unit: 'K' } }],
    ['a year that cannot be meant', { takenAt: '0026-03-02T08:00:00Z' }],
    ['an id that is none', { controlPointId: 'cold room' }],
    ['nothing at all', { entered: undefined, takenAt: undefined, lotId: undefined }],
  ])('%s is refused as input', async (_case, fields) => {
    const { readingId, ...body } = inColdRoom();
    expect(code(await kitchen.operator.put(`/readings/${readingId}`, { ...body, ...fields }))).toEqual([400, 'invalid-input']);
  });

  test('at a control point the plan does not have, or on a lot that is not there, is refused', async () => {
    expect(code(await send(inColdRoom({ controlPointId: v7() })))).toEqual([422, 'no-such-control-point']);
    expect(code(await send(inColdRoom({ lotId: v7() })))).toEqual([404, 'not-found']);
    expect(code(await send(inColdRoom({ instrumentId: v7() })))).toEqual([404, 'not-found']);
  });

  test('is not for the inspector, nor for another shop', async () => {
    expect(code(await send(inColdRoom(), await shop.hire('inspector')))).toEqual([403, 'not-allowed']);
    const other = await anotherShop(larder);
    expect(code(await send(inColdRoom(), other.owner))).toEqual([404, 'not-found']);
  });
});

describe('a yes or no', () => {
  const label = (answer: boolean, seen: string) => inColdRoom({ controlPointId: kitchen.points.label, entered: { answer, seen } });

  test('yes with what was seen is met; a bare yes is doubt; no is missed', async () => {
    expect(await done(send(label(true, 'Roll 12.')))).toMatchObject({
      flags: [],
      verdicts: [{ verdict: { kind: 'met' } }],
    });
    expect(await done(send(label(true, ' ')))).toMatchObject({ verdicts: [{ verdict: { kind: 'undetermined' } }] });
    expect((await done<Recorded>(send(label(false, 'Roll of the stew.')))).deviationId).toBeDefined();
    expect((await kitchen.showLot(lotId)).controlPoints[4]).toMatchObject({ stands: 'missed', settled: false });
  });
});

describe('when it was taken', () => {
  const at = (offset: number) => new Date(larder.clock.now().getTime() + offset).toISOString();
  const flags = async (fields: Partial<ReadingInput>) => (await done<Recorded>(send(inColdRoom(fields)))).flags;

  test.each([
    ['in the future', 3 * minute, 'in-the-future'],
    ['long ago', -20 * minute, 'recorded-late'],
    ['before the lot was started', -minute, 'before-the-lot'],
  ])('%s is kept and flagged', async (_case, offset, flag) => {
    expect(await flags({ takenAt: at(offset) })).toContain(flag);
  });

  test('still to come, it meets nothing until the time is corrected', async () => {
    const ahead = inColdRoom({ takenAt: at(60 * minute) });
    const { readingId, verdicts } = await done<Recorded>(send(ahead));
    expect(told(verdicts[0]?.verdict)).toMatchObject({ kind: 'undetermined', next: 'Correct its time, or void it and read again.' });
    const seen = { controlPointId: kitchen.points.label, entered: { answer: true, seen: 'Label 12.' }, takenAt: at(60 * minute) };
    expect((await done<Recorded>(send(inColdRoom(seen)))).verdicts[0]?.verdict.kind).toBe('undetermined');
    larder.clock.moveOn(2 * 60 * minute);
    const stands = async () =>
      (await kitchen.showLot(ahead.lotId)).controlPoints.find((one) => one.controlPoint.name === 'Cold room')?.stands;
    expect(await stands()).toBe('undetermined');
    await done(send(inColdRoom({ amends: readingId, reason: 'An hour ahead by mistake.', takenAt: at(-2 * 60 * minute) })));
    expect(await stands()).toBe('met');
  });

  test('out of order is kept and flagged, by probe', async () => {
    larder.clock.moveOn(10 * minute);
    const cook = { controlPointId: kitchen.points.cook, ...fahrenheit(150) };
    expect(await flags({ ...cook, probe: 'left', takenAt: at(-minute) })).not.toContain('out-of-order');
    expect(await flags({ ...cook, probe: 'right', takenAt: at(-2 * minute) })).not.toContain('out-of-order');
    expect(await flags({ ...cook, probe: 'left', takenAt: at(-3 * minute) })).toContain('out-of-order');
  });
});

describe('a lot that has been shipped', () => {
  test('still keeps the reading, flagged, and a miss is a possible recall', async () => {
    const shipped = await aSausageLot(kitchen, larder, 'shipped');
    const reply = await done<Recorded>(send(inColdRoom({ lotId: shipped.lotId, ...fahrenheit(51) })));
    expect(reply.flags).toContain('lot-shipped-already');
    const lot = await kitchen.showLot(shipped.lotId);
    expect(lot).toMatchObject({
      standing: 'on-hold',
      because: expect.arrayContaining([{ code: 'packages-left-already' }]),
    });
    expect(await done(ask(kitchen.operator, contract.showDeviation, { deviationId: reply.deviationId ?? '' }))).toMatchObject({
      shippedAlready: true,
    });
  });
});

describe('nothing is half-saved, and nothing is changed', () => {
  test('a reading whose ledger line fails leaves nothing behind, and can be sent again', async () => {
    const reading = inColdRoom(fahrenheit(46));
    const appendEntry = 'append_entry(uuid, timestamptz, uuid, text, text, uuid, text, text)';
    await run(larder.database.ownerUrl, `REVOKE EXECUTE ON FUNCTION ${appendEntry} FROM larderbook_api`);
    expect((await send(reading)).status).toBe(500);
    expect(await run(larder.database.ownerUrl, 'SELECT id FROM reading WHERE id = $1', [reading.readingId])).toEqual([]);
    expect(await deviations()).toEqual([]);

    await run(larder.database.ownerUrl, `GRANT EXECUTE ON FUNCTION ${appendEntry} TO larderbook_api`);
    expect((await done<Recorded>(send(reading))).deviationId).toBeDefined();
  });
});
