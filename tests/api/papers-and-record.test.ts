import { Readable } from 'node:stream';
import * as contract from '@larderbook/contracts';
import type { Lot } from '@larderbook/contracts';
import { formatRead } from '@larderbook/haccp';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { readBack } from '../../packages/documents/src/read-back.test-data';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aSausageLot } from '../builders/a-sausage-lot';
import { aShop, done, type Shop } from '../builders/a-shop';
import { ask } from '../support/ask';
import { startApp, type TestApp } from '../support/start-app';
import { tellAccount, told } from '../support/told';

let larder: TestApp;
let shop: Shop;
let kitchen: SausageKitchen;
beforeAll(async () => {
  larder = await startApp(new Date('2026-03-02T14:00:00Z')); // eight in the morning in the shop
  shop = await aShop(larder);
  kitchen = await aSausageKitchen(shop, larder);
});
afterAll(() => larder.close());

const day = 24 * 60 * 60_000;
const print = async (path: string) => {
  const { status, headers, body } = await shop.owner.get(path);
  expect(status).toBe(200);
  return { name: headers['content-disposition'] as string, ...(await readBack(Readable.from([body as Buffer]))) };
};
const record = (lotId: string) => print(`/lots/${lotId}/lot-record.pdf`);
const log = (point: keyof SausageKitchen['points'], from = '2026-03-01', to = '2026-12-31') =>
  print(`/monitoring-log.pdf?controlPointId=${kitchen.points[point]}&from=${from}&to=${to}`);
const counts = ({ amendedBy }: { amendedBy?: string }) => amendedBy === undefined;

describe('papers say what the record says', () => {
  const said = ({ value, unit }: { value: number; unit: string }) => `${value} ${unit}`;

  /** Every figure of a lot as the page of the lot has it. */
  const figuresOf = (lot: Lot): string[] => [
    ...[lot.code, lot.productName],
    ...lot.inputs.filter(counts).flatMap(({ from, weight }) => [from.what, said(weight)]),
    ...lot.weighings.filter(counts).flatMap(({ item, weight }) => [item.name, said(weight)]),
    ...lot.controlPoints.flatMap(({ controlPoint, judged, readings }) => [
      controlPoint.name,
      ...told(judged).flatMap(({ verdict }) => [verdict.measured ?? '', verdict.kind, verdict.margin ?? '']),
      ...readings.filter(counts).map(({ entered }) => ('answer' in entered ? entered.seen : formatRead(entered))),
    ]),
    ...lot.removals.flatMap(({ kind, weight }) => [kind.charAt(0).toUpperCase() + kind.slice(1), said(weight)]),
    ...lot.packings.flatMap(({ code, count, net }) => [code, String(count), said(net)]),
    ...lot.deviations.flatMap(({ number }) => [`No. ${number}`]),
  ];

  test('after corrections, a voiding, a clarification, a loss and a decision', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'packed');
    const wrong = await kitchen.weighCure(lotId, { itemId: kitchen.items.salt, weight: { value: 106, unit: 'g' } });
    const amends = { amends: wrong.weighingId, reason: 'Digits turned round.' };
    await kitchen.weighCure(lotId, { itemId: kitchen.items.salt, weight: { value: 160.5, unit: 'g' }, ...amends });
    const { readingId } = await kitchen.read(lotId, 'coldRoom', { entered: { value: 47.3, unit: '°F' } });
    const voided = { voidId: v7(), what: 'reading' as const, amends: readingId, reason: 'Of another lot.' };
    await done(ask(kitchen.operator, contract.voidRecord, voided));
    const [first] = (await kitchen.showLot(lotId)).controlPoints.find(({ controlPoint }) => controlPoint.name === 'Cook')?.readings ?? [];
    await done(
      ask(kitchen.operator, contract.clarifyReadings, {
        ...{ clarificationId: v7(), lotId, controlPointId: kitchen.points.cook, readingIds: [first?.readingId ?? ''] },
        ...{ word: 'not of the core' as const, reason: 'The probe lay on the table.', takenAt: kitchen.now() },
      }),
    );
    const removal = { removalId: v7(), lotId, kind: 'loss in cooking' as const, weight: { value: 0.85, unit: 'kg' as const } };
    await done(ask(kitchen.operator, contract.recordRemoval, { ...removal, note: '', takenAt: kitchen.now() }));
    await kitchen.read(lotId, 'coldRoom', { entered: { value: 52, unit: '°F' } });

    const lot = await kitchen.showLot(lotId);
    const { text } = await record(lotId);
    const words = text.replace(/\s+/g, ' ');
    for (const figure of figuresOf(lot)) expect(words).toContain(figure);
    expect(words).toContain('The probe lay on the table.');
    expect(words).toMatch(/Voided reading at Cold room: 47\.3 °F\. Of another lot\./);

    const [deviation] = lot.deviations;
    const report = await print(`/deviations/${deviation?.deviationId}/report.pdf`);
    expect(report.text).toContain('52 °F against ≤ 41 °F');
    expect((await log('coldRoom')).text).toContain('52 °F against ≤ 41 °F');
    expect((await log('cook')).text).toContain('The probe lay on the table.');
  });

  test('what keeps a lot from leaving is the same on paper as in the review, allergens beside the formula too', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'labelled');
    const { findings } = await done<contract.ReplyOf<typeof contract.showReview>>(ask(kitchen.reviewer, contract.showReview, { lotId }));
    const { text } = await record(lotId);
    const blocking = findings.filter(({ blocks }) => blocks);
    expect(blocking.length).toBeGreaterThan(0);
    for (const { what } of blocking) expect(text.replace(/\s+/g, ' ')).toContain(tellAccount(what));
  });

  test('a weighing that was judged before meat was added stands in the log as it stands in the lot', async () => {
    const { lotId, code } = await aSausageLot(kitchen, larder, 'cured');
    const cureOf = async () =>
      told((await kitchen.showLot(lotId)).controlPoints.find(({ controlPoint }) => controlPoint.name === 'Cure')?.judged[0]?.verdict);
    const row = async () => (await log('cure')).text.replace(/\s+/g, ' ').split(code).at(1) ?? '';
    expect(await row()).toContain('sodium nitrite 156.25 ppm on 22.046 lb of meat');
    await kitchen.putIn(lotId, { weight: { value: 2, unit: 'kg' } });
    const now = await cureOf();
    expect(now?.measured).not.toBe('156.25 ppm');
    expect(await row()).toContain(`sodium nitrite ${now?.measured} on 26.455 lb of meat`);
    expect((await record(lotId)).text).toContain(now?.measured);
  });

  test('a loss that the formula expects is no black mark; one that it does not is named', async () => {
    const usual = { meat: { value: 10, unit: 'kg' as const }, cure: { value: 25, unit: 'g' as const } };
    const packed = (count: number) => ({ ...usual, packages: { count, net: { value: 800, unit: 'g' as const } } });
    const expected = await aSausageLot(kitchen, larder, 'packed', packed(11));
    const { text } = await record(expected.lotId);
    expect(text).toContain('Lost in the process, as the formula expects');
    expect(text).not.toContain('Not accounted for');
    const beyond = await aSausageLot(kitchen, larder, 'packed', packed(8));
    expect((await record(beyond.lotId)).text).toContain('Not accounted for');
  });
});

describe('one word for one figure', () => {
  test('what was cut away is trimmings, what went in is the meat block', async () => {
    const { lotId } = await kitchen.startLot();
    await kitchen.putIn(lotId, { weight: { value: 10, unit: 'kg' }, trimmed: { value: 9, unit: 'kg' } });
    const { text } = await record(lotId);
    expect(text).toContain('Trimmings');
    expect(text).toContain('22.046 lb taken less 2.205 lb of trimmings');
    expect(text).not.toMatch(/[Tt]rimmed/);
  });
});

describe('the check of an instrument', () => {
  const anInstrument = async () => {
    const instrumentId = v7();
    const about = { name: `T-${instrumentId.slice(-4)}`, kind: 'thermometer' as const, unit: '°F' as const };
    await done(ask(kitchen.operator, contract.recordInstrument, { instrumentId, ...about, tolerance: 1, checkEveryDays: 7 }));
    return { instrumentId, name: about.name };
  };
  const check = (instrumentId: string, observed: number, takenAt = kitchen.now()) =>
    done(
      ask(shop.owner, contract.recordCalibration, {
        ...{ calibrationId: v7(), instrumentId, method: 'ice point' as const, expected: 32, observed, action: '', takenAt },
      }),
    );
  const read = async (instrumentId: string) => {
    const { lotId } = await kitchen.startLot();
    await kitchen.read(lotId, 'coldRoom', { entered: { value: 38, unit: '°F' }, instrumentId });
    return lotId;
  };

  test('printed is the one in force when it was used, not the newest', async () => {
    const { instrumentId } = await anInstrument();
    await check(instrumentId, 32.4);
    larder.clock.moveOn(day);
    const lotId = await read(instrumentId);
    larder.clock.moveOn(day);
    await check(instrumentId, 32.1);
    for (const { text } of [await record(lotId), await log('coldRoom')]) {
      expect(text).toContain('reads 32.4 °F where 32 °F is right, within ± 1 °F');
      expect(text).not.toContain('reads 32.1 °F');
    }
  });

  test('of a scale stands on the log of the cure and on the record as it was that day', async () => {
    const instrumentId = v7();
    const scale = { name: `S-${instrumentId.slice(-4)}`, kind: 'scale' as const, unit: 'g' as const };
    await done(ask(kitchen.operator, contract.recordInstrument, { instrumentId, ...scale, tolerance: 0.2, checkEveryDays: 7 }));
    const weigh = (observed: number) =>
      done(
        ask(shop.owner, contract.recordCalibration, {
          ...{ calibrationId: v7(), instrumentId, method: 'test weight' as const, expected: 200, observed, action: '' },
          takenAt: kitchen.now(),
        }),
      );
    await weigh(199.9);
    const { lotId } = await kitchen.startLot();
    await kitchen.putIn(lotId);
    await kitchen.weighCure(lotId, { instrumentId });
    larder.clock.moveOn(60_000);
    await weigh(200.1);
    for (const { text } of [await record(lotId), await log('cure')]) {
      expect(text).toContain('reads 199.9 g where 200 g is right, within ± 0.2 g');
      expect(text).not.toContain('reads 200.1 g');
    }
  });

  test('the next one stands beside it where it failed', async () => {
    const { instrumentId } = await anInstrument();
    await check(instrumentId, 32.2);
    const lotId = await read(instrumentId);
    larder.clock.moveOn(day);
    await check(instrumentId, 34.5);
    larder.clock.moveOn(day);
    await check(instrumentId, 32);
    const { text } = await record(lotId);
    expect(text).toContain('reads 32.2 °F where 32 °F is right, within ± 1 °F');
    expect(text).toMatch(/next check after its use, Mar \d+, 2026, .* reads 34\.5 °F where 32 °F is right, not within ± 1 °F, failed/);
    expect(text).not.toContain('reads 32 °F');
  });

  test('one that was entered only after the use speaks for nothing before', async () => {
    const { instrumentId } = await anInstrument();
    const before = kitchen.now();
    larder.clock.moveOn(60_000);
    const lotId = await read(instrumentId);
    larder.clock.moveOn(day);
    await check(instrumentId, 32.3, before);
    const { text } = await record(lotId);
    expect(text).toContain('no check of it was known when it was used');
    expect(text).not.toContain('reads 32.3 °F');
  });

  test('a voided one is in force no more', async () => {
    const { instrumentId } = await anInstrument();
    const calibrationId = v7();
    const at = { instrumentId, method: 'ice point' as const, expected: 32, observed: 32.6, action: '', takenAt: kitchen.now() };
    await done(ask(shop.owner, contract.recordCalibration, { calibrationId, ...at }));
    const lotId = await read(instrumentId);
    expect((await record(lotId)).text).toContain('reads 32.6 °F');
    await done(ask(shop.owner, contract.voidRecord, { voidId: v7(), what: 'calibration', amends: calibrationId, reason: 'Wrong probe.' }));
    expect((await record(lotId)).text).toContain('no check of it was known when it was used');
  });
});

describe('the review on paper', () => {
  test('stands under the headings of its page, alike entries counted', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'labelled');
    const takenAt = new Date(Date.parse(kitchen.now()) - 60 * 60_000).toISOString();
    for (const value of [36, 36.5]) await kitchen.read(lotId, 'coldRoom', { entered: { value, unit: '°F' }, takenAt });
    const pack = { packingId: v7(), lotId, count: 8, net: { value: 800, unit: 'g' as const }, takenAt: kitchen.now() };
    await done(ask(kitchen.operator, contract.packLot, pack));
    await done(ask(kitchen.reviewer, contract.signReview, { reviewId: v7(), lotId, statement: 'Looked at all.' }));
    const { text } = await record(lotId);
    expect(text).toMatch(/To consider Salt stands in the formula and was not weighed in\. .* more is gone than it explains\./);
    expect(text).toMatch(/Entries .*2 readings at Cold room by The operator: .*recorded more than 15 minutes after it was taken/);
  });
});

test('files and titles name the product, and a file name is what every system takes', async () => {
  const { lotId, code } = await aSausageLot(kitchen, larder, 'packed');
  await kitchen.read(lotId, 'coldRoom', { entered: { value: 52, unit: '°F' } });
  const [deviation] = (await kitchen.showLot(lotId)).deviations;
  const papers = {
    lot: await record(lotId),
    log: await log('coldRoom', '2026-03-02', '2026-03-02'),
    deviation: await print(`/deviations/${deviation?.deviationId}/report.pdf`),
    plan: await print(`/plans/${kitchen.planId}/paper`),
  };
  expect(Object.values(papers).map(({ name }) => name)).toEqual([
    `inline; filename="Smoked-sausage-${code}-lot-record.pdf"`,
    'inline; filename="Smoked-sausage-Cold-room-log-2026-03-02-to-2026-03-02.pdf"',
    `inline; filename="Smoked-sausage-${code}-deviation-${deviation?.number}.pdf"`,
    'inline; filename="Smoked-sausage-plan-1.pdf"',
  ]);
  for (const { title } of Object.values(papers)) expect(title).toContain('Smoked sausage');
});
