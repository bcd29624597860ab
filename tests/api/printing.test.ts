import { Readable } from 'node:stream';
import * as contract from '@larderbook/contracts';
import type { MonitoringRowData } from '@larderbook/documents';
import { receivedChilled } from '@larderbook/haccp';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { Database } from '../../apps/api/src/platform/database';
import { logRows } from '../../apps/api/src/printing/log-rows';
import { sayTimeFor } from '../../apps/api/src/printing/say-time';
import { readBack } from '../../packages/documents/src/read-back.test-data';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aCurve, aSausageLot } from '../builders/a-sausage-lot';
import { anEstablishment, anotherShop, aShop, done, type Shop, type Worker } from '../builders/a-shop';
import { anAction, decide, showDeviation } from '../builders/a-settlement';
import { ask } from '../support/ask';
import { aDevice, type Device } from '../support/device';
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

const print = async (path: string, by: Device = inspector) => {
  const { status, headers, body } = await by.get(path);
  if (status !== 200) throw new Error(`Answered ${status}: ${JSON.stringify(body)}`);
  expect(headers['content-type']).toBe('application/pdf');
  return { name: headers['content-disposition'], ...(await readBack(Readable.from([body as Buffer]))) };
};
const refused = async (path: string, by: Device = inspector) => {
  const { status, body } = await by.get(path);
  return [status, body.code];
};
const logOf = (point: keyof SausageKitchen['points'], from: string, to: string) =>
  `/monitoring-log.pdf?controlPointId=${kitchen.points[point]}&from=${from}&to=${to}`;
const head = async () =>
  (await done<{ head: { seq: number; hash: string } }>(ask(inspector, contract.ledgerHead, {}))).head;

describe('the lot record', () => {
  test('tells everything about a lot, from its delivery to its customer', async () => {
    const { lotId, code } = await aSausageLot(kitchen, larder, 'shipped');
    const { text, title, name, pages } = await print(`/lots/${lotId}/lot-record.pdf`);
    expect(name).toBe(`inline; filename="Smoked-sausage-${code}-lot-record.pdf"`);
    expect(title).toBe(`Lot record: Lot ${code}, Smoked sausage`);
    for (const said of [
      'Wrenfold Smokehouse',
      'Est. 00512-W',
      'Pork shoulder',
      'Marlow Packing',
      'ML-88',
      'Curing salt 6.25 %',
      '25 g',
      '156.25 ppm',
      '9 CFR 424.21(c)',
      'Support on file: Letter of our process authority, binder 3',
      'Cook: temperature',
      'Lethality so far',
      'A bracket on a limit spans the two readings',
      'Gap without a reading, 20 min: 120 °F, then 140 °F. Used as it is.',
      '160 °F',
      'Chill: temperature',
      'Label 12 on the roll.',
      `${code}-P1`,
      '800 g',
      '8 kg',
      'Fenwick Deli',
      '10 packages of',
      'Complete and met.',
      'The reviewer',
      'Cleared',
      'Mass balance',
      'Not accounted for',
      'Mar 23, 2026',
      `Page 1 of ${pages.length}`,
    ])
      expect(text).toContain(said);
  });

  test('carries the head of the ledger as it was when it was printed', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'cured');
    const { seq, hash } = await head();
    const { text } = await print(`/lots/${lotId}/lot-record.pdf`);
    expect(text).toContain(`Ledger head ${seq}`);
    expect(text.replace(/ /g, '')).toContain(hash);
  });

  test('of a lot on hold says what was missed, by how much, and what still stands in the way', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'packed');
    await kitchen.read(lotId, 'coldRoom', { entered: { value: 52, unit: '°F' } });
    const { text } = await print(`/lots/${lotId}/lot-record.pdf`);
    for (const said of [
      'On hold',
      '52 °F against ≤ 41 °F',
      'Cause identified and eliminated',
      'Not recorded.',
      'Not reviewed.',
      'Record the corrective action.',
    ]) {
      expect(text).toContain(said);
    }
  });

  test('keeps a corrected value readable beside the one that counts', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'cured');
    const { readingId } = await kitchen.read(lotId, 'coldRoom', { entered: { value: 63, unit: '°F' } });
    const right = await kitchen.read(lotId, 'coldRoom', {
      entered: { value: 63.5, unit: '°F' },
      amends: readingId,
      reason: 'Half a degree was left out.',
    });
    await kitchen.read(lotId, 'coldRoom', {
      entered: { value: 36, unit: '°F' },
      amends: right.readingId,
      reason: 'Digits turned round.',
    });
    const { text } = await print(`/lots/${lotId}/lot-record.pdf`);
    expect(text).toMatch(/Corrected value: 63 °F \(The operator, .*?\) → 63\.5 °F\. Half a degree was left out\./);
    expect(text).toMatch(/Corrected value: 63\.5 °F \(The operator, .*?\) → 36 °F\. Digits turned round\./);
  });

  test('is printed on A4 in °C and kg where the shop works so', async () => {
    const metric = await startApp();
    const theirs = await aShop(metric, anEstablishment({ units: 'metric', paper: 'A4', timeZone: 'Europe/Vienna' }));
    const { lotId } = await aSausageLot(await aSausageKitchen(theirs, metric), metric, 'chilled');
    const { text, pages } = await print(`/lots/${lotId}/lot-record.pdf`, theirs.owner);
    expect([pages[0]?.width, pages[0]?.height].map((side) => Math.round(side ?? 0))).toEqual([595, 842]);
    for (const said of ['10 kg', '54.4 → 26.7 °C', '2 Mar 2026']) expect(text).toContain(said);
    await metric.close();
  });

  test('is for everybody of the shop, for nobody else', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'cured');
    const path = `/lots/${lotId}/lot-record.pdf`;
    expect(await refused(path, (await anotherShop(larder)).owner)).toEqual([404, 'not-found']);
    expect(await refused(path, aDevice(larder.app))).toEqual([401, 'not-signed-in']);
    expect(await refused(`/lots/${v7()}/lot-record.pdf`)).toEqual([404, 'not-found']);
  });
});

describe('the monitoring log', () => {
  test('takes the days of the shop, not of Greenwich', async () => {
    const { lotId, code } = await kitchen.startLot();
    const read = (seen: string, takenAt: string) =>
      kitchen.read(lotId, 'label', { entered: { answer: true, seen }, takenAt });
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
    await kitchen.read(lotId, 'coldRoom', {
      entered: { value: 38, unit: '°F' },
      instrumentId,
      takenAt: '2026-03-10T15:00:00Z',
    });
    await kitchen.read(lotId, 'coldRoom', {
      entered: { value: 47, unit: '°F' },
      instrumentId,
      takenAt: '2026-03-10T16:00:00Z',
    });
    const { text } = await print(logOf('coldRoom', '2026-03-10', '2026-03-10'));
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
    expect(text).toContain('1 curve met, of 5 readings of curves');
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
    for (const minute of [1, 1, 2, 3, 3])
      await kitchen.read(lotId, 'coldRoom', { takenAt: `2026-03-16T15:0${minute}:00Z` });
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
        { ...sayTimeFor(anEstablishment()), mass: 'lb' },
        new Date('2026-03-16T20:00:00Z'),
        batch,
      ))
        found.push(row);
      return found;
    };
    const whole = await rows(400);
    expect(whole.map(({ kind }) => kind)).toEqual([
      'reading',
      'not done',
      ...Array.from({ length: 7 }, () => 'reading'),
    ]);
    expect(await rows(1)).toEqual(whole);
    expect(await rows(2)).toEqual(whole);
    await database.onModuleDestroy();
  });

  test('asks for a period that can be, of a control point that is', async () => {
    expect(await refused(logOf('label', '2026-03-02', '2026-03-01'))).toEqual([400, 'invalid-input']);
    expect(await refused(logOf('label', '2026-02-30', '2026-03-01'))).toEqual([400, 'invalid-input']);
    expect(await refused(logOf('label', '2025-01-01', '2026-02-05'))).toEqual([422, 'period-too-long']);
    expect((await print(logOf('label', '2025-01-01', '2026-02-04'))).text).toContain(
      'No reading was taken in this period.',
    );
    expect(await refused(`/monitoring-log.pdf?controlPointId=${v7()}&from=2026-03-01&to=2026-03-02`)).toEqual([
      404,
      'not-found',
    ]);
    expect(await refused(logOf('label', '2026-03-01', '2026-03-02'), (await anotherShop(larder)).owner)).toEqual([
      404,
      'not-found',
    ]);
  });
});

describe('the deviation report', () => {
  const reportOn = async (deviationId: string) => (await print(`/deviations/${deviationId}/report.pdf`)).text;
  const acted = (deviationId: string, action: contract.CorrectiveAction) =>
    done(
      ask(kitchen.operator, contract.recordCorrectiveAction, { actionId: v7(), deviationId, action, takenAt: kitchen.now() }),
    );

  test('of a critical control point holds the four parts of 9 CFR 417.3(a)', async () => {
    const { lotId, code } = await aSausageLot(kitchen, larder, 'cured');
    const { deviationId = '' } = (await aCurve(kitchen, larder, lotId, 'cook', [120, 129])) ?? {};
    await acted(deviationId, anAction.critical);
    await done(decide(shop.owner, deviationId, { decision: 'condemn', weight: { value: 2.8, unit: 'lb' }, reason: 'Burst open.' }));
    const dispositionId = (await showDeviation(shop.owner, deviationId)).dispositions[0]?.dispositionId ?? '';
    const before = await reportOn(deviationId);
    expect(before).toContain('condemn: 2.8 lb');
    expect(before).toContain('Not yet destroyed: held apart.');
    expect(before).toMatch(/Not decided: [\d.]+ kg of 10.025 kg\./);

    const burnt = { destructionId: v7(), dispositionId, method: 'Dyed, then burnt.', takenAt: kitchen.now() };
    await done(ask(kitchen.operator, contract.recordDestruction, burnt));
    await done(decide(shop.owner, deviationId, { reason: 'The rest reached 160 °F.', basis: 'worked on and measured again' }));
    await done(ask(shop.owner, contract.closeDeviation, { closingId: v7(), deviationId, note: 'Answered in full.' }));
    const { form: _, ...parts } = anAction.critical;
    const text = await reportOn(deviationId);
    for (const said of [
      `Lot ${code}, Smoked sausage`, 'Critical limit missed', '9 CFR 417.3(a)', '417.3(a)(1)', '417.3(a)(4)',
      ...Object.values(parts), 'condemn: 2.8 lb', 'Burst open.', 'Destroyed: Dyed, then burnt.', 'release: ',
      'On: worked on and measured again. The rest reached 160 °F.', 'Answered in full.', 'Hold the lot and call the owner.',
      'The operator', 'Odile Farrow',
    ])
      expect(text).toContain(said);
    expect(text).not.toContain('417.3(b)');
  });

  test('of a prerequisite says that a limit was missed, and names no paragraph', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'cured');
    const { deviationId = '' } = await kitchen.read(lotId, 'label', { entered: { answer: false, seen: 'Blurred.' } });
    await acted(deviationId, anAction.prerequisite);
    const text = await reportOn(deviationId);
    for (const said of ['Limit missed', 'Blurred.', 'What was done', anAction.prerequisite.done, 'A chime sounds.'])
      expect(text).toContain(said);
    expect(text).not.toMatch(/ritical limit|417\.3\(/);
  });

  test('of something unforeseen holds the four parts of 9 CFR 417.3(b)', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'cured');
    const deviationId = v7();
    const seen = { deviationId, lotId, description: 'A glove tip is missing.', takenAt: kitchen.now() };
    await done(ask(kitchen.operator, contract.openDeviation, seen));
    await acted(deviationId, anAction.unforeseen);
    const { form: _, ...parts } = anAction.unforeseen;
    const text = await reportOn(deviationId);
    for (const said of ['Unforeseen', '417.3(b)(1)', '417.3(b)(2)', '417.3(b)(3)', '417.3(b)(4)', ...Object.values(parts)])
      expect(text).toContain(said);
    expect(text).not.toContain('417.3(a)');
  });

  test('is of a delivery too', async () => {
    const itemId = v7();
    await done(
      ask(shop.owner, contract.recordItem, {
        itemId,
        name: 'Chicken thighs',
        kind: 'meat',
        allergens: [],
        receivingLimit: receivedChilled,
      }),
    );
    const supplierId = v7();
    await done(ask(shop.owner, contract.recordSupplier, { supplierId, name: 'Hollow Farm', address: '', contact: '' }));
    const delivery = {
      itemId,
      supplierId,
      supplierLot: 'HF-9',
      weight: { value: 20, unit: 'lb' as const },
      temperature: { value: 58, unit: '°F' as const },
    };
    const receipt = await done<contract.Receipt>(
      ask(kitchen.operator, contract.recordReceipt, {
        receiptId: v7(),
        ...delivery,
        decision: 'accepted',
        reason: 'Cooked at once.',
        takenAt: kitchen.now(),
      }),
    );
    const { text } = await print(`/deviations/${receipt.deviationId}/report.pdf`);
    for (const said of [
      `Delivery ${receipt.code}, Chicken thighs`,
      'The delivery is on hold.',
      '58 °F',
      'at receipt, lot HF-9',
    ])
      expect(text).toContain(said);
  });

  test('is for everybody of the shop, for nobody else', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'cured');
    const { deviationId } = await kitchen.read(lotId, 'coldRoom', { entered: { value: 55, unit: '°F' } });
    expect(await refused(`/deviations/${deviationId}/report.pdf`, (await anotherShop(larder)).owner)).toEqual([
      404,
      'not-found',
    ]);
    expect(await refused(`/deviations/${v7()}/report.pdf`)).toEqual([404, 'not-found']);
  });
});

describe('the plan', () => {
  const planOf = (planId: string) => `/plans/${planId}/paper`;

  test('holds the product, its hazards, control points with limits and sources, and who adopted it', async () => {
    const { text, title, name } = await print(planOf(kitchen.planId));
    expect(name).toBe('inline; filename="Smoked-sausage-plan-1.pdf"');
    expect(title).toBe('HACCP plan: Smoked sausage, version 1');
    for (const said of [
      'In force',
      'Pork shoulder 100 %, Salt 1.6 %, Curing salt 6.25 % 0.25 %',
      '21 days after packing',
      'Flow diagram',
      'Hazard analysis',
      'CCP 1',
      '9 CFR 424.21(c)',
      'Support on file: Letter of our process authority, binder 3',
      'If it is missed Hold the lot and call the owner.',
      'Adopted Adopted.',
      'Odile Farrow',
      'No earlier version was adopted.',
      `Ledger head ${(await head()).seq}`,
    ])
      expect(text).toContain(said);
  });

  test('names the version it took the place of, and says of that one that it is superseded', async () => {
    const next = { planId: v7(), productId: kitchen.productId };
    const { content } = await done<contract.Plan>(ask(shop.owner, contract.showPlan, { planId: kitchen.planId }));
    await done(ask(shop.owner, contract.recordPlan, { ...next, content }));
    const draft = await print(planOf(next.planId));
    expect(draft.text).toContain('Not adopted. This version is signed by nobody');
    expect(draft.text).toContain('Draft');

    const signed = { adoptionId: v7(), planId: next.planId, statement: 'Read against our process.' };
    await done(ask(shop.owner, contract.adoptPlan, signed));
    expect((await print(planOf(next.planId))).text).toContain('Supersedes Version 1, adopted by Odile Farrow');
    expect((await print(planOf(kitchen.planId))).text).toContain('Superseded');
  });

  test('is for everybody of the shop, for nobody else', async () => {
    const other = (await anotherShop(larder)).owner;
    expect(await refused(planOf(kitchen.planId), other)).toEqual([404, 'not-found']);
    expect(await refused(planOf(kitchen.planId), aDevice(larder.app))).toEqual([401, 'not-signed-in']);
    expect(await refused(planOf(v7()))).toEqual([404, 'not-found']);
  });
});
