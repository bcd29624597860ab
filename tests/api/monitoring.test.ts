import * as contract from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aCurve, aSausageLot } from '../builders/a-sausage-lot';
import { anotherShop, aShop, done, type Shop } from '../builders/a-shop';
import { ask } from '../support/ask';
import { run } from '../support/database';
import { startApp, type TestApp } from '../support/start-app';

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

type Input = contract.InputOf<typeof contract.recordReading>;
type Recorded = contract.ReplyOf<typeof contract.recordReading>;

const inColdRoom = (fields: Partial<Input> = {}): Input => ({
  readingId: v7(),
  lotId,
  controlPointId: kitchen.points.coldRoom,
  entered: { value: 38, unit: '°F' },
  takenAt: kitchen.now(),
  ...fields,
});
const send = (reading: Input, by = kitchen.operator) => ask(by, contract.recordReading, reading);
const said = ({ status, body }: Awaited<ReturnType<typeof send>>) => [status, body.code, body.detail];
const code = (reply: Awaited<ReturnType<typeof send>>) => said(reply).slice(0, 2);
const fahrenheit = (value: number) => ({ entered: { value, unit: '°F' as const } });
const celsius = (value: number) => ({ entered: { value, unit: '°C' as const } });
const deviations = async () => (await kitchen.showLot(lotId)).deviations;

describe('one value', () => {
  test('is judged at once, in the unit it was read in', async () => {
    expect(await done(send(inColdRoom(fahrenheit(41))))).toMatchObject({
      verdicts: [{ verdict: { kind: 'met', measured: '41 °F', margin: '0 °F to spare' } }],
    });
    expect(await done(send(inColdRoom(celsius(5))))).toMatchObject({
      verdicts: [{ verdict: { kind: 'met', measured: '5 °C' } }],
    });
    expect(await done(send(inColdRoom(celsius(5.01))))).toMatchObject({
      verdicts: [{ verdict: { kind: 'missed', margin: '0.01 °C over' } }],
    });
  });

  test('that misses opens a deviation with it, and the lot is on hold', async () => {
    const { deviationId } = await done<Recorded>(send(inColdRoom(fahrenheit(46))));
    const lot = await kitchen.showLot(lotId);
    expect(lot.standing).toBe('on-hold');
    expect(lot.deviations).toMatchObject([
      { deviationId, description: 'Cold room: 46 °F is 5 °F above 41 °F.', open: true },
    ]);
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
    expect(code(await send(inColdRoom({ controlPointId: kitchen.points[point], entered })))).toEqual([
      422,
      'wrong-kind-of-value',
    ]);
  });

  test('°F typed where °C is set is asked about, and kept with a flag when the person is sure', async () => {
    const reading = inColdRoom(celsius(38));
    expect(said(await send(reading))).toEqual([
      422,
      'implausible-value',
      '38 °C was entered; here -10 to 37 °C would be expected. Did you mean 38 °F?',
    ]);
    expect(await deviations()).toEqual([]);
    expect(await done(send({ ...reading, sure: true }))).toMatchObject({
      flags: expect.arrayContaining(['unusual-value']),
      verdicts: [{ verdict: { kind: 'missed' } }],
    });
  });

  test('what no food can be is asked about where the plan expects nothing in particular', async () => {
    expect(code(await send(inColdRoom({ controlPointId: kitchen.points.cook, ...fahrenheit(1000) })))).toEqual([
      422,
      'implausible-value',
    ]);
    expect(
      await done(send(inColdRoom({ controlPointId: kitchen.points.cook, ...fahrenheit(1000), sure: true }))),
    ).toMatchObject({ verdicts: [{ verdict: { kind: 'undetermined' } }] });
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
    expect(code(await kitchen.operator.put(`/readings/${readingId}`, { ...body, ...fields }))).toEqual([
      400,
      'invalid-input',
    ]);
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
  const label = (answer: boolean, seen: string) =>
    inColdRoom({ controlPointId: kitchen.points.label, entered: { answer, seen } });

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
  const flags = async (fields: Partial<Input>) => (await done<Recorded>(send(inColdRoom(fields)))).flags;

  test.each([
    ['in the future', 3 * minute, 'in-the-future'],
    ['long ago', -20 * minute, 'recorded-late'],
    ['before the lot was started', -minute, 'before-the-lot'],
  ])('%s is kept and flagged', async (_case, offset, flag) => {
    expect(await flags({ takenAt: at(offset) })).toContain(flag);
  });

  test('out of order is kept and flagged, by probe', async () => {
    larder.clock.moveOn(10 * minute);
    const cook = { controlPointId: kitchen.points.cook, ...fahrenheit(150) };
    expect(await flags({ ...cook, probe: 'left', takenAt: at(-minute) })).not.toContain('out-of-order');
    expect(await flags({ ...cook, probe: 'right', takenAt: at(-2 * minute) })).not.toContain('out-of-order');
    expect(await flags({ ...cook, probe: 'left', takenAt: at(-3 * minute) })).toContain('out-of-order');
  });
});

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
    expect(checked).toMatchObject({
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
    expect(await check(instrumentId, 29.999)).toMatchObject({
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
    expect(code(await ask((await anotherShop(larder)).owner, contract.recordCalibration, calibration))).toEqual([
      404,
      'not-found',
    ]);
    expect(code(await ask(await shop.hire('inspector'), contract.recordCalibration, calibration))).toEqual([
      403,
      'not-allowed',
    ]);
  });
});

describe('a correction', () => {
  test('needs a reason, judges anew, and leaves both to be seen', async () => {
    const first = await done<Recorded>(send(inColdRoom(fahrenheit(36))));
    const correct = (fields: Partial<Input>) =>
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
    const second = await done<Recorded>(
      send(inColdRoom({ ...fahrenheit(46), amends: first.readingId, reason: 'Digits swapped.' })),
    );
    const third = await done<Recorded>(
      send(inColdRoom({ ...fahrenheit(47), amends: second.readingId, reason: 'Seven, not six.' })),
    );
    expect([second.deviationId, third.deviationId]).toEqual([first.deviationId, first.deviationId]);
    expect(await deviations()).toHaveLength(1);
  });

  test('of a lot of another shop is not found', async () => {
    const { readingId } = await done<Recorded>(send(inColdRoom()));
    const other = await anotherShop(larder);
    expect(code(await send(inColdRoom({ amends: readingId, reason: 'Mine now.' }), other.owner))).toEqual([
      404,
      'not-found',
    ]);
  });
});

describe('a cook and its chill', () => {
  const end = (point: 'cook' | 'chill' | 'coldRoom', fields = {}) =>
    ask(kitchen.operator, contract.endStage, {
      stageEndId: v7(),
      lotId,
      controlPointId: kitchen.points[point],
      takenAt: kitchen.now(),
      ...fields,
    });
  const read = async (point: 'cook' | 'chill', value: number, fields: Partial<Input> = {}) =>
    done<Recorded>(send(inColdRoom({ controlPointId: kitchen.points[point], ...fahrenheit(value), ...fields })));
  const standOf = async (point: 0 | 1 | 2) => (await kitchen.showLot(lotId)).controlPoints[point];

  test('a cook runs until a row of its table is satisfied', async () => {
    expect(await read('cook', 120)).toMatchObject({
      verdicts: [{ verdict: { kind: 'undetermined', running: { stage: 'come-up' } } }],
    });
    expect(await standOf(1)).toMatchObject({ stands: 'running' });
    larder.clock.moveOn(20 * minute);
    await read('cook', 145);
    larder.clock.moveOn(3 * minute);
    expect(await read('cook', 145)).toMatchObject({
      verdicts: [{ verdict: { kind: 'undetermined', next: expect.stringContaining('1 min') } }],
    });
    larder.clock.moveOn(minute);
    expect(await read('cook', 145)).toMatchObject({
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
    expect(ended).toMatchObject({
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
      bands: [{ label: '130 → 80 °F', kind: 'missed' }, { label: '80 → 40 °F' }],
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
    expect(await done(end('cook'))).toMatchObject({
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

describe('a lot that has been shipped', () => {
  test('still keeps the reading, flagged, and a miss is a possible recall', async () => {
    const shipped = await aSausageLot(kitchen, larder, 'shipped');
    const reply = await done<Recorded>(send(inColdRoom({ lotId: shipped.lotId, ...fahrenheit(51) })));
    expect(reply.flags).toContain('lot-shipped-already');
    const lot = await kitchen.showLot(shipped.lotId);
    expect(lot).toMatchObject({
      standing: 'on-hold',
      because: expect.stringContaining('Packages have already left: consider a recall.'),
    });
    expect(
      await done(ask(kitchen.operator, contract.showDeviation, { deviationId: reply.deviationId ?? '' })),
    ).toMatchObject({ shippedAlready: true });
  });
});

describe('nothing is half-saved, and nothing is changed', () => {
  test('a reading whose ledger line fails leaves nothing behind, and can be sent again', async () => {
    const reading = inColdRoom(fahrenheit(46));
    const appendEntry = 'append_entry(uuid, timestamptz, uuid, text, text, uuid, text, jsonb)';
    await run(larder.database.ownerUrl, `REVOKE EXECUTE ON FUNCTION ${appendEntry} FROM larderbook_api`);
    expect((await send(reading)).status).toBe(500);
    expect(await run(larder.database.ownerUrl, 'SELECT id FROM reading WHERE id = $1', [reading.readingId])).toEqual(
      [],
    );
    expect(await deviations()).toEqual([]);

    await run(larder.database.ownerUrl, `GRANT EXECUTE ON FUNCTION ${appendEntry} TO larderbook_api`);
    expect((await done<Recorded>(send(reading))).deviationId).toBeDefined();
  });
});
