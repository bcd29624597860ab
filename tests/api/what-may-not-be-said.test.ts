import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { anotherShop, aShop, type Shop } from '../builders/a-shop';
import { saidOfReadings, type Input, type SaidOfReadings } from '../builders/said-of-readings';
import { run } from '../support/database';
import { startApp, type TestApp } from '../support/start-app';

let larder: TestApp;
let shop: Shop;
let kitchen: SausageKitchen;
let chilled: SaidOfReadings['chilled'];
let said: SaidOfReadings['said'];
let send: SaidOfReadings['send'];
let problem: SaidOfReadings['problem'];
let chillOf: SaidOfReadings['chillOf'];

beforeAll(async () => {
  larder = await startApp();
  shop = await aShop(larder);
  kitchen = await aSausageKitchen(shop, larder, { surroundings: { name: 'chill room' } });
  ({ chilled, said, send, problem, chillOf } = saidOfReadings(kitchen, larder));
});
afterAll(() => larder.close());

const linesOf = async (lotId: string) => run(larder.database.ownerUrl, `SELECT seq FROM ledger_entry WHERE subject = '${lotId}'`);

describe('what may not be said', () => {
  test.each<[string, (lot: { lotId: string; ids: string[] }) => Partial<Input> | Promise<Partial<Input>>, unknown[]]>([
    ['without a reason', () => ({ reason: undefined }), [422, 'reason-missing']],
    ['with blanks for a reason', () => ({ reason: '  ' }), [422, 'reason-missing']],
    ['of no reading', () => ({ readingIds: [] }), [400, 'invalid-input']],
    ['of one reading twice', ({ ids: [id = ''] }) => ({ readingIds: [id, id] }), [400, 'invalid-input']],
    ['in a word of one’s own', () => ({ word: 'fine' as never }), [400, 'invalid-input']],
    ['of a reading nobody made', ({ ids: [id = ''] }) => ({ readingIds: [id, v7()] }), [404, 'not-found']],
    ['of a lot that is not there', () => ({ lotId: v7() }), [404, 'not-found']],
    ['at a control point the plan has not', () => ({ controlPointId: v7() }), [422, 'no-such-control-point']],
    ['at another control point', () => ({ controlPointId: kitchen.points.cook }), [404, 'not-found']],
    ['of a reading of another lot', async () => ({ readingIds: [(await chilled([[0, 140]])).ids[0] ?? ''] }), [404, 'not-found']],
    [
      'of a value that stands alone, which is corrected instead',
      async ({ lotId }) => ({
        controlPointId: kitchen.points.coldRoom,
        readingIds: [(await kitchen.read(lotId, 'coldRoom', {})).readingId],
      }),
      [422, 'wrong-kind-of-value'],
    ],
    [
      'of what was read around the product',
      async ({ lotId }) => ({ readingIds: [(await kitchen.read(lotId, 'chill', { probe: 'chill room' })).readingId] }),
      [422, 'wrong-kind-of-value'],
    ],
    [
      'of a reading that was corrected',
      async ({ lotId, ids: [id = ''] }) => {
        await kitchen.read(lotId, 'chill', { entered: { value: 139, unit: '°F' }, amends: id, reason: 'Misread.', sure: true });
        return { readingIds: [id] };
      },
      [409, 'already-amended'],
    ],
  ])('%s', async (_case, fields, refused) => {
    const lot = await chilled(
      [
        [0, 140],
        [30, 100],
      ],
      { finish: false },
    );
    const input = said(lot.lotId, lot.ids.slice(0, 1), await fields(lot));
    const before = await linesOf(lot.lotId);
    expect(problem(await send(input))).toEqual(refused);
    expect(await linesOf(lot.lotId)).toEqual(before);
    expect((await chillOf(lot.lotId)).readings.filter(({ clarifications }) => clarifications)).toEqual([]);
  });

  test('by an inspector, or by another shop', async () => {
    const { lotId, ids } = await chilled([[0, 140]], { finish: false });
    expect(problem(await send(said(lotId, ids), await shop.hire('inspector')))).toEqual([403, 'not-allowed']);
    const other = await anotherShop(larder);
    expect(problem(await send(said(lotId, ids), other.owner))).toEqual([404, 'not-found']);
  });
});
