import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aShop, type Shop } from '../builders/a-shop';
import { saidOfReadings, type SaidOfReadings } from '../builders/said-of-readings';
import { startApp, type TestApp } from '../support/start-app';

let larder: TestApp;
let shop: Shop;
let kitchen: SausageKitchen;
let chilled: SaidOfReadings['chilled'];
let said: SaidOfReadings['said'];
let send: SaidOfReadings['send'];
let keep: SaidOfReadings['keep'];
let problem: SaidOfReadings['problem'];
let stands: SaidOfReadings['stands'];

beforeAll(async () => {
  larder = await startApp();
  shop = await aShop(larder);
  kitchen = await aSausageKitchen(shop, larder, { surroundings: { name: 'chill room' } });
  ({ chilled, said, send, keep, problem, stands } = saidOfReadings(kitchen, larder));
});
afterAll(() => larder.close());

const minute = 60_000;

describe('a time in doubt', () => {
  test('of readings that were of the future when they came never passes by itself; a person may say it is right', async () => {
    const { lotId, ids, end } = await chilled(
      [
        [0, 140, 0],
        [80, 79, 30],
        [300, 39, 30],
      ],
      { finish: false },
    );
    expect(await stands(lotId)).not.toBe('met');
    expect((await end(320)).verdicts[0]?.verdict.kind).toBe('undetermined');
    expect(await stands(lotId)).toBe('undetermined');
    const reason = 'The tablet stood on yesterday; the wall clock says the same as it.';
    await keep(said(lotId, [ids[1] ?? ''], { word: 'time is right', reason }));
    expect(await stands(lotId)).toBe('undetermined');
    const kept = await keep(said(lotId, [ids[2] ?? ''], { word: 'time is right', reason }));
    expect(kept.verdicts).toMatchObject([{ verdict: { kind: 'met' } }]);
    expect(await stands(lotId)).toBe('met');
  });

  test('that is still to come is right for nobody: a chill written down ahead is not met by a word', async () => {
    const { lotId, ids } = await chilled(
      [
        [0, 140, 0],
        [80, 79, 20],
        [300, 39, 30],
      ],
      { finish: false },
    );
    const ahead = said(lotId, ids, { word: 'time is right', reason: 'It will be so.' });
    expect(problem(await send(ahead))).toEqual([422, 'in-the-future']);
    expect(await stands(lotId)).not.toBe('met');
  });

  test('of a reading that was entered after a later one keeps the chill from being met until then', async () => {
    const { lotId, ids } = await chilled([
      [0, 140, 0],
      [300, 39, 300],
      [80, 79, 301],
    ]);
    expect(await stands(lotId)).toBe('undetermined');
    await keep(said(lotId, [ids[2] ?? ''], { word: 'time is right', reason: 'Read from the slip by the chiller.' }));
    expect(await stands(lotId)).toBe('met');
  });

  test('of a clock that was an hour off likewise', async () => {
    const { lotId, ids } = await chilled([
      [0, 140],
      [20, 100],
      [40, 78],
      [60, 68],
      [140, 55],
      [160, 39],
    ]);
    expect(await stands(lotId)).toBe('undetermined');
    await keep(said(lotId, [ids[4] ?? ''], { word: 'time is right', reason: 'Nobody read it for an hour more.' }));
    expect(await stands(lotId)).toBe('met');
  });

  test('of an hour more than even steps, all typed later, likewise; kept as they were read it is a pause', async () => {
    const later = await chilled([
      [0, 140, 400],
      [20, 100, 400],
      [40, 78, 400],
      [120, 60, 400],
      [160, 39, 400],
    ]);
    expect(await stands(later.lotId)).toBe('undetermined');
    await keep(said(later.lotId, [later.ids[3] ?? ''], { word: 'time is right', reason: 'Nobody read it while we loaded the van.' }));
    expect(await stands(later.lotId)).toBe('met');
    const atOnce = await chilled([
      [0, 140],
      [20, 100],
      [40, 78],
      [120, 60],
      [160, 39],
    ]);
    expect(await stands(atOnce.lotId)).toBe('met');
  });

  test('of two readings of one minute that were sent in the other order is none', async () => {
    const { lotId } = await chilled([
      [0, 140, 0],
      [80, 79, 80],
      [200, 60, 301],
      [199.2, 60.2, 301],
      [300, 39, 302],
    ]);
    expect(await stands(lotId)).toBe('met');
    const [chill] = (await kitchen.showLot(lotId)).controlPoints.filter(({ controlPoint }) => controlPoint.name === 'Chill');
    expect(chill?.readings.flatMap(({ flags }) => flags)).not.toContain('out-of-order');
  });

  test('of a clock set back by an hour, by when its readings were kept, likewise', async () => {
    const { lotId, ids } = await chilled([
      [0, 140],
      [60, 131],
      [140, 79, 200],
      [340, 39, 400],
    ]);
    expect(await stands(lotId)).toBe('undetermined');
    await keep(said(lotId, [ids[2] ?? ''], { word: 'time is right', reason: 'Written on the slip, and typed an hour later.' }));
    expect(await stands(lotId)).toBe('met');
  });

  test('does not come back with a correction that came late: it stands in the place of the first reading', async () => {
    const { lotId, ids, start } = await chilled([
      [0, 140],
      [80, 97],
      [300, 39],
    ]);
    const takenAt = new Date(start + 80 * minute).toISOString();
    const right = { entered: { value: 79, unit: '°F' as const }, takenAt, amends: ids[1], reason: 'Digits swapped.', sure: true };
    await kitchen.read(lotId, 'chill', right);
    expect(await stands(lotId)).toBe('met');
  });

  test('is not settled by saying that the reading was of something else', async () => {
    const { lotId, ids } = await chilled([
      [0, 140, 0],
      [80, 79, 30],
      [300, 39, 30],
    ]);
    await keep(said(lotId, [ids[2] ?? '']));
    expect(await stands(lotId)).not.toBe('met');
  });
});
