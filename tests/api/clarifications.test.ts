import * as contract from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aSausageLot } from '../builders/a-sausage-lot';
import { aShop, done, type Shop, type Worker } from '../builders/a-shop';
import { fallen, saidOfReadings, type SaidOfReadings } from '../builders/said-of-readings';
import { ask } from '../support/ask';
import { startApp, type TestApp } from '../support/start-app';
import { told } from '../support/told';

let larder: TestApp;
let shop: Shop;
let kitchen: SausageKitchen;
let chilled: SaidOfReadings['chilled'];
let aCookOf: SaidOfReadings['aCookOf'];
let said: SaidOfReadings['said'];
let send: SaidOfReadings['send'];
let keep: SaidOfReadings['keep'];
let problem: SaidOfReadings['problem'];
let chillOf: SaidOfReadings['chillOf'];
let stands: SaidOfReadings['stands'];

beforeAll(async () => {
  larder = await startApp();
  shop = await aShop(larder);
  kitchen = await aSausageKitchen(shop, larder, { surroundings: { name: 'chill room' } });
  ({ chilled, aCookOf, said, send, keep, problem, chillOf, stands } = saidOfReadings(kitchen, larder));
});
afterAll(() => larder.close());

const standsAt = async (lotId: string, point: 'cook') =>
  (await kitchen.showLot(lotId)).controlPoints.find((one) => one.controlPoint.controlPointId === kitchen.points[point])?.stands;

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
      what: [
        {
          code: 'entry-clarified',
          figures: {
            entry: { code: 'entry-readings', figures: { count: 1, point: 'Chill' } },
            word: { code: 'word-not-of-the-core' },
            reason: 'The probe lay on the table.',
            who: kitchen.operator.name,
          },
        },
      ],
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
