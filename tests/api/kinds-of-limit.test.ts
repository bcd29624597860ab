import * as contract from '@larderbook/contracts';
import {
  atMostOneLogGrown,
  coolingUncured,
  degreeHoursFahrenheit,
  frozenByCentre,
  salmonellaKilled,
  type CriticalLimit,
} from '@larderbook/haccp';
import { v7 } from 'uuid';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { aPlan, anAdoptedPlan } from '../builders/a-plan';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { anotherShop, aShop, done, type Shop } from '../builders/a-shop';
import { withSupport } from '../builders/with-support';
import { ask } from '../support/ask';
import { startApp, type TestApp } from '../support/start-app';
import { told } from '../support/told';

let larder: TestApp;
let shop: Shop;
let kitchen: SausageKitchen;
let plan: contract.Plan;

const source = { citation: 'Own validation, folder 2', edition: '', confirmed: true };
const supported: CriticalLimit = { ...salmonellaKilled, authority: 'A process authority, letter in folder 3' };
const minute = 60_000;
type Point = Partial<contract.ControlPoint> & { name: string; limits: contract.ControlPoint['limits'] };
const judging = (...limits: CriticalLimit[]) => limits.map((limit) => ({ limitId: v7(), limit: withSupport(limit) }));

const further: Point[] = [
  { name: 'Frozen', takenAs: 'curve', limits: judging(frozenByCentre) },
  {
    name: 'Hung',
    takenAs: 'attestation',
    limits: judging({ kind: 'attestation', statement: 'It hangs in the chamber.', asks: 'moment', source }),
  },
  { name: 'Fermenting', takenAs: 'curve', limits: judging({ kind: 'degreeHours', ...degreeHoursFahrenheit }) },
  { name: 'Drying', takenAs: 'curve', limits: judging({ kind: 'weightLoss', percent: 35, source }), probes: ['A', 'B'] },
  { name: 'Killed', takenAs: 'curve', limits: judging(supported) },
  { name: 'Grown', takenAs: 'curve', limits: judging(coolingUncured, atMostOneLogGrown) },
  {
    name: 'Analysed',
    takenAs: 'value',
    limits: judging({ kind: 'figure', of: 'moisture to protein', unit: 'ratio', max: 1900, source }),
  },
  {
    name: 'Hot',
    takenAs: 'value',
    errors: { temperature: { hundredths: 100, unit: '°F' } },
    limits: judging({ kind: 'range', measured: 'temperature', min: { '°F': 16_500 }, source }),
  },
  {
    name: 'Hot for long',
    takenAs: 'curve',
    errors: { temperature: { hundredths: 100, unit: '°F' } },
    limits: judging({ kind: 'dwell', rows: [{ at: { '°F': 15_000 }, seconds: 600 }], longestGapSeconds: 900, source }),
  },
];

/** The plan of the kitchen with these control points at its last step, beside its own. */
const withPoints = (before: contract.Plan, points: Point[]): contract.PlanContent => {
  const [model] = before.content.controlPoints;
  const cook = before.content.controlPoints.find(({ takenAs }) => takenAs === 'curve');
  const hung = v7();
  const ids: Record<string, string> = { Hung: hung };
  const starts: Record<string, string | undefined> = { Grown: cook?.controlPointId, Fermenting: hung };
  return {
    ...before.content,
    controlPoints: [
      ...before.content.controlPoints,
      ...points.map(
        (point): contract.ControlPoint => ({
          ...(model as contract.ControlPoint),
          kind: 'prerequisite',
          probes: [],
          plausible: undefined,
          follows: starts[point.name],
          controlPointId: ids[point.name] ?? v7(),
          ...point,
        }),
      ),
    ],
  };
};

beforeAll(async () => {
  larder = await startApp();
  shop = await aShop(larder);
  kitchen = await aSausageKitchen(shop, larder);
  const before = await done<contract.Plan>(ask(shop.owner, contract.showPlan, { planId: kitchen.planId }));
  plan = await anAdoptedPlan(shop.owner, kitchen.productId, withPoints(before, further));
});
afterAll(() => larder.close());

type Entered = contract.InputOf<typeof contract.recordReading>['entered'];
const pointId = (name: string) => plan.content.controlPoints.find((point) => point.name === name)?.controlPointId ?? '';
const startAt = () => larder.clock.now().getTime() - 90 * 24 * 60 * minute;

function recorder(lotId: string, name: string) {
  const begun = startAt();
  const at = (minutes: number) => new Date(begun + minutes * minute).toISOString();
  const read = (minutes: number, value: number, unit: string, probe?: string) =>
    ask(kitchen.operator, contract.recordReading, {
      readingId: v7(),
      lotId,
      controlPointId: pointId(name),
      entered: { value, unit } as Entered,
      probe,
      takenAt: at(minutes),
    });
  const end = (minutes: number) =>
    done<contract.ReplyOf<typeof contract.endStage>>(
      ask(kitchen.operator, contract.endStage, { stageEndId: v7(), lotId, controlPointId: pointId(name), takenAt: at(minutes) }),
    );
  return { read, end };
}
const newLot = async () => (await kitchen.startLot()).lotId;
const verdictsOf = async (lotId: string, name: string) =>
  (await kitchen.showLot(lotId)).controlPoints.find(({ controlPoint }) => controlPoint.name === name)?.judged.map(({ verdict }) => verdict);

test('pork frozen long enough at its centre is met, a shorter time is missed and opens a deviation', async () => {
  const lotId = await newLot();
  const { read, end } = recorder(lotId, 'Frozen');
  for (let hour = 0; hour <= 36; hour += 2) await done(read(hour * 60, -20, '°F'));
  expect((await end(36 * 60)).verdicts).toMatchObject([{ verdict: { kind: 'met', finding: 'freezing-held' } }]);

  const short = await newLot();
  const again = recorder(short, 'Frozen');
  for (let hour = 0; hour <= 34; hour += 2) await done(again.read(hour * 60, -20, '°F'));
  expect(await again.end(34 * 60)).toMatchObject({
    verdicts: [{ verdict: { kind: 'missed' } }],
    deviationId: expect.any(String),
  });
});

test('a fermentation takes the chamber in degrees and the acid in pH, and nothing else', async () => {
  const lotId = await newLot();
  const { read } = recorder(lotId, 'Fermenting');
  await done(read(0, 5.8, 'pH'));
  for (let hour = 0; hour <= 20; hour += 2) await done(read(hour * 60 + 1, 80, '°F'));
  await hang(lotId, 0);
  expect(await verdictsOf(lotId, 'Fermenting')).toMatchObject([{ kind: 'undetermined', running: { code: 'fermentation' } }]);
  expect(await done(read(20 * 60 + 2, 5.2, 'pH'))).toMatchObject({ verdicts: [{ verdict: { kind: 'met' } }] });
  expect(await read(30, 4, 'kg')).toMatchObject({
    status: 422,
    body: { code: 'wrong-kind-of-value', detail: 'Fermenting asks for °F, °C, or pH, not for kg.' },
  });
});

const hang = (lotId: string, minutes: number, more: object = {}) =>
  ask(kitchen.operator, contract.recordReading, {
    readingId: v7(),
    lotId,
    controlPointId: pointId('Hung'),
    entered: { answer: true, seen: '' },
    takenAt: new Date(startAt() + minutes * minute).toISOString(),
    ...more,
  });

test('a fermentation whose start nobody recorded is not covered, however much of it was left out', async () => {
  const lotId = await newLot();
  const { read } = recorder(lotId, 'Fermenting');
  for (let hour = 10; hour <= 41; hour += 1) await done(read(hour * 60, 89.9, '°F'));
  expect(await done(read(40.5 * 60, 5.3, 'pH'))).toMatchObject({ verdicts: [{ verdict: { kind: 'undetermined' } }] });
  const [unrecorded] = (await verdictsOf(lotId, 'Fermenting')) ?? [];
  expect(unrecorded?.finding).toBe('fermentation-no-start');

  const hung = await done<contract.ReplyOf<typeof contract.recordReading>>(hang(lotId, 0));
  const [late] = (await verdictsOf(lotId, 'Fermenting')) ?? [];
  expect(late).toMatchObject({ kind: 'undetermined', finding: 'fermentation-not-covered' });

  const readingId = v7();
  await done(hang(lotId, 9.5 * 60, { readingId, amends: hung.readingId, reason: 'It hung half an hour before ten.' }));
  expect(await verdictsOf(lotId, 'Fermenting')).toMatchObject([{ kind: 'met' }]);
  await done(hang(lotId, 9 * 60, { amends: readingId, reason: 'No: at nine.' }));
  expect(await verdictsOf(lotId, 'Fermenting')).toMatchObject([{ kind: 'met' }]);
});

test('a recorded start that makes it too many opens the deviation at once', async () => {
  const lotId = await newLot();
  const { read } = recorder(lotId, 'Fermenting');
  for (let hour = 1; hour <= 41; hour += 1) await done(read(hour * 60, 89.9, '°F'));
  await done(read(40.6 * 60, 5.3, 'pH'));
  expect(await verdictsOf(lotId, 'Fermenting')).toMatchObject([{ kind: 'undetermined' }]);
  expect(await done(hang(lotId, 0))).toMatchObject({ deviationId: expect.any(String) });
  expect(await verdictsOf(lotId, 'Fermenting')).toMatchObject([{ kind: 'missed' }]);
});

test('a plan of degree-hours whose start is recorded nowhere cannot be adopted', async () => {
  const before = await done<contract.Plan>(ask(shop.owner, contract.showPlan, { planId: kitchen.planId }));
  const content = withPoints(
    before,
    further.filter(({ name }) => name === 'Fermenting'),
  );
  const planId = v7();
  const draft = await done<contract.Plan>(ask(shop.owner, contract.recordPlan, { planId, productId: kitchen.productId, content }));
  expect(draft.incomplete).toEqual([
    'Fermenting: name the control point that records when fermentation begins; without it nothing is met.',
  ]);
});

test('of two marked pieces the one that has lost least decides', async () => {
  const lotId = await newLot();
  const { read, end } = recorder(lotId, 'Drying');
  for (const [piece, later] of [
    ['A', 0.64],
    ['B', 0.651],
  ] as const) {
    await done(read(0, 1, 'kg', piece));
    await done(read(30 * 24 * 60, later, 'kg', piece));
  }
  expect(await verdictsOf(lotId, 'Drying')).toMatchObject([{ kind: 'undetermined', probe: 'B' }]);
  await done(read(31 * 24 * 60, 650, 'g', 'B'));
  expect(told(await end(31 * 24 * 60 + 1))).toMatchObject({ verdicts: [{ verdict: { kind: 'met', measured: '35 % lost' } }] });
  expect(await read(31 * 24 * 60 + 1, 0, 'kg', 'B')).toMatchObject({ status: 422, body: { code: 'implausible-value' } });
});

test('logs killed are added up, and shown with their set', async () => {
  const lotId = await newLot();
  const { read } = recorder(lotId, 'Killed');
  await done(read(0, 140, '°F'));
  expect(told(await done<contract.ReplyOf<typeof contract.recordReading>>(read(12, 140, '°F')))).toMatchObject({
    verdicts: [{ verdict: { kind: 'met', measured: expect.stringContaining('Salmonella, by the meat table') } }],
  });
});

test('predicted growth stands beside the cooling limit and clears nothing alone', async () => {
  const lotId = await newLot();
  const { read, end } = recorder(lotId, 'Grown');
  await recorder(lotId, 'Cook').end(-5);
  const everyTen = [140, 122, 108, 97, 88, 79, 71, 64, 58, 53, 48, 45, 42, 41, 40];
  for (const [index, value] of everyTen.entries()) await done(read(index * 10, value, '°F'));
  expect((await end(141)).verdicts).toMatchObject([
    { verdict: { kind: 'met' } },
    { verdict: { kind: 'met', notes: expect.arrayContaining([{ code: 'growth-screening' }]) } },
  ]);
});

test('an analysed figure is judged in its own unit, and read with no instrument of the shop', async () => {
  const lotId = await newLot();
  const { read } = recorder(lotId, 'Analysed');
  expect(await done(read(0, 1.9, 'ratio'))).toMatchObject({
    verdicts: [{ verdict: { kind: 'met' } }],
    flags: expect.not.arrayContaining(['instrument-unknown']),
  });
  expect(await done(read(1, 1.901, 'ratio'))).toMatchObject({
    verdicts: [{ verdict: { kind: 'missed' } }],
    deviationId: expect.any(String),
  });
  expect(await read(2, 1.9, '%')).toMatchObject({ status: 422 });
});

test('the thermometer’s error is allowed for: 165 °F and ± 1 °F ask for 166 °F', async () => {
  const lotId = await newLot();
  const hot = recorder(lotId, 'Hot');
  expect(await done(hot.read(0, 165.9, '°F'))).toMatchObject({ verdicts: [{ verdict: { kind: 'missed' } }] });
  expect(await done(hot.read(1, 166, '°F'))).toMatchObject({
    verdicts: [{ verdict: { kind: 'met', notes: [{ code: 'allowed-for-temperature', figures: { error: { value: '1', unit: '°F' } } }] } }],
  });
  const long = recorder(lotId, 'Hot for long');
  await done(long.read(0, 150.9, '°F'));
  await done(long.read(10, 150.9, '°F'));
  expect(await verdictsOf(lotId, 'Hot for long')).toMatchObject([{ kind: 'undetermined' }]);
  await done(long.read(11, 151, '°F'));
  await done(long.read(21, 151, '°F'));
  expect(await verdictsOf(lotId, 'Hot for long')).toMatchObject([{ kind: 'met' }]);
});

test('a plan that lets predicted growth or an unsupported process clear a lot cannot be adopted', async () => {
  const draft = async (...points: Point[]) => {
    const { planId } = await aPlan(shop.owner, kitchen.productId, withPoints(plan, points));
    return ask(shop.owner, contract.adoptPlan, { adoptionId: v7(), planId, statement: 'Adopted.' });
  };
  const alone = await draft({ name: 'Alone', takenAs: 'curve', limits: judging(atMostOneLogGrown) });
  expect(alone.status).toBe(422);
  expect(JSON.stringify(alone.body)).toContain('Put it beside a cooling limit.');
  const mixed = await draft({
    name: 'Mixed',
    takenAs: 'curve',
    limits: judging({ kind: 'weightLoss', percent: 35, source }, supported),
  });
  expect(JSON.stringify(mixed.body)).toContain('give the loss of weight a control point of its own');
  const unsigned = await ask(shop.owner, contract.recordPlan, {
    planId: v7(),
    productId: kitchen.productId,
    content: withPoints(plan, [{ name: 'Unsupported', takenAs: 'curve', limits: judging(salmonellaKilled) }]),
  });
  expect(unsigned.status).toBe(400);
  expect(JSON.stringify(unsigned.body)).toContain('Name the process authority');
});

test('a reading at such a control point from another establishment finds no lot', async () => {
  const lotId = await newLot();
  const other = await anotherShop(larder);
  const reply = await ask(other.owner, contract.recordReading, {
    readingId: v7(),
    lotId,
    controlPointId: pointId('Drying'),
    entered: { value: 1, unit: 'kg' },
    takenAt: kitchen.now(),
  });
  expect(reply.status).toBe(404);
});
