import * as contract from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aSausageLot } from '../builders/a-sausage-lot';
import { anotherShop, aShop, done, type Shop, type Worker } from '../builders/a-shop';
import { ask } from '../support/ask';
import { run } from '../support/database';
import { startApp, type TestApp } from '../support/start-app';
import { told } from '../support/told';

const minute = 60_000;
let larder: TestApp;
let shop: Shop;
let kitchen: SausageKitchen;

beforeAll(async () => {
  larder = await startApp();
  shop = await aShop(larder);
  const surroundings = { name: 'chill room' };
  kitchen = await aSausageKitchen(shop, larder, { surroundings });
});
afterAll(() => larder.close());

type Input = contract.InputOf<typeof contract.clarifyReadings>;
type Kept = contract.ReplyOf<typeof contract.clarifyReadings>;
type Read = [minutes: number, fahrenheit: number, arrives?: number];

/** A cooked lot whose chill is read at these minutes; each reading is entered when it is taken, unless said otherwise. */
async function chilled(reads: Read[], { finish = true } = {}) {
  const { lotId } = await aSausageLot(kitchen, larder, 'cooked');
  const start = larder.clock.now().getTime();
  const ids: string[] = [];
  for (const [minutes, value, arrives = minutes] of reads) {
    larder.clock.moveTo(new Date(start + arrives * minute));
    const takenAt = new Date(start + minutes * minute).toISOString();
    ids.push((await kitchen.read(lotId, 'chill', { entered: { value, unit: '°F' }, takenAt, sure: true })).readingId);
  }
  const end = async (minutes: number) => {
    larder.clock.moveTo(new Date(start + minutes * minute));
    const stage = { stageEndId: v7(), lotId, controlPointId: kitchen.points.chill, takenAt: kitchen.now() };
    return done<contract.ReplyOf<typeof contract.endStage>>(ask(kitchen.operator, contract.endStage, stage));
  };
  if (finish) await end(Math.max(...reads.map(([minutes, , arrives = 0]) => Math.max(minutes, arrives))) + 1);
  return { lotId, ids, start, end };
}

/** A fall of 41 °F within a minute, which no piece makes: the probe lay in the air of the room. */
const fallen: Read[] = [
  [0, 140],
  [30, 100],
  [60, 78],
  [61, 37],
  [62, 77.5],
  [120, 50],
  [200, 39],
];

const said = (lotId: string, readingIds: string[], fields: Partial<Input> = {}): Input => ({
  clarificationId: v7(),
  lotId,
  controlPointId: kitchen.points.chill,
  readingIds,
  word: 'not of the core',
  reason: 'The probe lay on the table.',
  takenAt: kitchen.now(),
  ...fields,
});
const send = (input: Input, by: Worker = kitchen.operator) => ask(by, contract.clarifyReadings, input);
const keep = (input: Input, by?: Worker) => done<Kept>(send(input, by));
const problem = ({ status, body }: Awaited<ReturnType<typeof send>>) => [status, body.code];
const chillOf = async (lotId: string) => {
  const chill = (await kitchen.showLot(lotId)).controlPoints[2];
  if (!chill) throw new Error('The plan has no chill.');
  return chill;
};
const stands = async (lotId: string) => (await chillOf(lotId)).stands;
const linesOf = async (lotId: string) => run(larder.database.ownerUrl, `SELECT seq FROM ledger_entry WHERE subject = '${lotId}'`);

describe('readings that were not of the core', () => {
  test('keep a chill from being met until a person says so, with a reason; then it is judged without them', async () => {
    const { lotId, ids } = await chilled(fallen);
    expect(await stands(lotId)).toBe('undetermined');
    const word = said(lotId, [ids[3] ?? '']);
    expect(told(await keep(word))).toMatchObject({
      clarificationId: word.clarificationId,
      controlPointId: kitchen.points.chill,
      verdicts: [{ verdict: { kind: 'met', measured: '130 → 80 °F in 1 h, 80 → 40 °F in 2 h 50 min' } }],
    });
    const chill = await chillOf(lotId);
    expect(chill.stands).toBe('met');
    expect(chill.readings.map(({ entered }) => 'value' in entered && entered.value)).toEqual(fallen.map(([, f]) => f));
    expect(chill.readings[3]?.clarifications).toMatchObject([
      { word: 'not of the core', reason: 'The probe lay on the table.', made: { name: kitchen.operator.name } },
    ]);
    expect(chill.readings.filter(({ clarifications }) => clarifications)).toHaveLength(1);
  });

  test('that alone had met a limit leave it missed, and its deviation opens with what was said', async () => {
    const { lotId, ids } = await chilled([
      [0, 140],
      [60, 100],
      [300, 90],
      [301, 38],
      [420, 39],
    ]);
    const before = (await kitchen.showLot(lotId)).deviations.length;
    expect(before).toBe(1); // 90 °F after five hours is missed whatever comes after it
    const { lotId: cook, ids: read } = await aCookOf([100, 110.5, 121, 168, 168.1], [0, 30, 60, 61, 62]);
    expect(await standsAt(cook, 'cook')).toBe('undetermined');
    const kept = await keep(said(cook, read.slice(3), { controlPointId: kitchen.points.cook }));
    expect(told(kept.verdicts[0]?.verdict)).toMatchObject({ kind: 'missed', measured: expect.stringContaining('121') as string });
    expect(await kitchen.showLot(cook)).toMatchObject({
      standing: 'on-hold',
      deviations: [{ deviationId: kept.deviationId, open: true }],
    });
    expect(await keep(said(lotId, [ids[3] ?? '']))).toMatchObject({ verdicts: [{ verdict: { kind: 'missed' } }] });
    expect((await kitchen.showLot(lotId)).deviations).toHaveLength(before);
  });

  test('count again once that is taken back, and the newest word counts though no clock has moved', async () => {
    const { lotId, ids } = await chilled(fallen);
    const [id] = ids.slice(3);
    await keep(said(lotId, [id ?? '']));
    const back = { word: 'as recorded', reason: 'It was in the thickest link.' } as const;
    expect(await keep(said(lotId, [id ?? ''], back))).toMatchObject({ verdicts: [{ verdict: { kind: 'undetermined' } }] });
    expect(await stands(lotId)).toBe('undetermined');
    const { readings } = await chillOf(lotId);
    expect(readings[3]?.clarifications?.map(({ word }) => word)).toEqual(['not of the core', 'as recorded']);
    await keep(said(lotId, [id ?? '']));
    expect(await stands(lotId)).toBe('met');
  });

  test('are settled one by one: a correction of one counts by itself again', async () => {
    const { lotId, ids } = await chilled(fallen);
    await keep(said(lotId, [ids[3] ?? '']));
    const takenAt = (await chillOf(lotId)).readings[3]?.made.at;
    const again = { takenAt, amends: ids[3], reason: 'Misread by one.', sure: true };
    await kitchen.read(lotId, 'chill', { entered: { value: 36, unit: '°F' }, ...again });
    expect(await stands(lotId)).toBe('undetermined');
  });
});

async function aCookOf(values: number[], minutes: number[]) {
  const { lotId } = await aSausageLot(kitchen, larder, 'cured');
  const start = larder.clock.now().getTime();
  const ids: string[] = [];
  for (const [index, value] of values.entries()) {
    larder.clock.moveTo(new Date(start + (minutes[index] ?? 0) * minute));
    ids.push((await kitchen.read(lotId, 'cook', { entered: { value, unit: '°F' }, sure: true })).readingId);
  }
  const end = { stageEndId: v7(), lotId, controlPointId: kitchen.points.cook, takenAt: kitchen.now() };
  await done(ask(kitchen.operator, contract.endStage, end));
  return { lotId, ids };
}
const standsAt = async (lotId: string, point: 'cook') =>
  (await kitchen.showLot(lotId)).controlPoints.find((one) => one.controlPoint.controlPointId === kitchen.points[point])?.stands;

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

test('what is sent twice at the same moment is kept once, and with other content refused', async () => {
  const { lotId, ids } = await chilled(fallen);
  const input = said(lotId, [ids[3] ?? '']);
  const [first, second] = await Promise.all([keep(input), keep(input)]);
  expect(second).toEqual(first);
  expect((await chillOf(lotId)).readings[3]?.clarifications).toHaveLength(1);
  expect(problem(await send({ ...input, word: 'time is right' }))).toEqual([409, 'sent-differently']);
  expect(problem(await send({ ...input, reason: 'Another.' }))).toEqual([409, 'sent-differently']);
});

describe('the pre-shipment review', () => {
  const review = (lotId: string) =>
    done<contract.ReplyOf<typeof contract.showReview>>(ask(kitchen.reviewer, contract.showReview, { lotId }));
  const sign = (lotId: string, by: Worker) => ask(by, contract.signReview, { reviewId: v7(), lotId, statement: 'Complete and met.' });

  test('sees who said what of which readings, when and why', async () => {
    const { lotId, ids } = await chilled(fallen);
    await keep(said(lotId, [ids[3] ?? '']));
    expect((await review(lotId)).findings).toContainEqual({
      about: 'entry',
      kind: 'flagged',
      what: `A reading at Chill: not of the core. The probe lay on the table. (${kitchen.operator.name})`,
      blocks: false,
      controlPointId: kitchen.points.chill,
    });
  });

  test('no longer counts once something is said after it, and whoever said it may not sign the next', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'reviewed');
    expect(await kitchen.showLot(lotId)).toMatchObject({ standing: 'cleared' });
    const [first] = (await chillOf(lotId)).readings;
    const back = { word: 'time is right', reason: 'Asked about by the reviewer.' } as const;
    await keep(said(lotId, [first?.readingId ?? ''], back), kitchen.reviewer);
    expect(await kitchen.showLot(lotId)).toMatchObject({ standing: 'to-review', review: { counts: false } });
    expect(problem(await sign(lotId, kitchen.reviewer))).toEqual([409, 'own-records']);
    expect((await sign(lotId, await shop.hire('reviewer'))).status).toBe(200);
    expect(await kitchen.showLot(lotId)).toMatchObject({ standing: 'cleared' });
  });
});
