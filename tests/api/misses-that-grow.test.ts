import * as contract from '@larderbook/contracts';
import type { ReplyOf } from '@larderbook/contracts';
import { coolingFoodCode } from '@larderbook/haccp';
import { v7 } from 'uuid';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aSausageLot } from '../builders/a-sausage-lot';
import { settle as settleIt } from '../builders/a-settlement';
import { anotherShop, aShop, done, type Shop } from '../builders/a-shop';
import { ask } from '../support/ask';
import { printed } from '../support/printed';
import { startApp, type TestApp } from '../support/start-app';
import { told } from '../support/told';

const minute = 60_000;

let larder: TestApp;
let shop: Shop;
let kitchen: SausageKitchen;
let lotId: string;
let minutes: number;
beforeAll(async () => {
  larder = await startApp();
  shop = await aShop(larder);
  kitchen = await aSausageKitchen(shop, larder);
});
afterAll(() => larder.close());
beforeEach(async () => {
  ({ lotId } = await aSausageLot(kitchen, larder, 'cooked'));
  minutes = 0;
});

/** The clock goes on to so many minutes after the first reading of the chill. */
async function read(at: number, value: number): Promise<string | undefined> {
  larder.clock.moveOn((at - minutes) * minute);
  minutes = at;
  const { deviationId } = await kitchen.read(lotId, 'chill', { entered: { value, unit: '°F' } });
  return deviationId;
}
const finish = () =>
  done<ReplyOf<typeof contract.endStage>>(
    ask(kitchen.operator, contract.endStage, {
      stageEndId: v7(),
      lotId,
      controlPointId: kitchen.points.chill,
      takenAt: kitchen.now(),
    }),
  );
const show = async (deviationId = '') =>
  told(await done<contract.Deviation>(ask(kitchen.operator, contract.showDeviation, { deviationId })));
const settle = (deviationId = '') => settleIt(kitchen.reviewer, deviationId, kitchen.now());
const today = () => done<ReplyOf<typeof contract.showToday>>(ask(shop.owner, contract.showToday, {}));
const chilling = async () => {
  const lot = await kitchen.showLot(lotId);
  const point = lot.controlPoints.find(({ controlPoint }) => controlPoint.controlPointId === kitchen.points.chill);
  return { lot, point };
};
const print = async (path: string): Promise<string> => (await printed(shop.owner, path)).text;

describe('a miss that grows', () => {
  test('is the same figure wherever it is said, and what it was opened with stands beside it', async () => {
    await read(0, 130);
    const deviationId = await read(105, 85);
    expect(await show(deviationId)).toMatchObject({ verdict: { margin: '15 min too long' } });
    expect(await show(deviationId)).not.toHaveProperty('openedWith');
    await read(270, 84);

    const because = '130 → 80 °F is not done: 84 °F after 4 h 30 min; 1 h 30 min are allowed.';
    const said = { tells: 'because', point: 'Chill', verdict: expect.objectContaining({ because }) as object };
    const opened = { verdict: { margin: '15 min too long', because: expect.stringContaining('after 1 h 45 min') as string } };
    const grown = { description: [said], verdict: { margin: '3 h too long' }, openedWith: opened };
    expect(await show(deviationId)).toMatchObject(grown);
    const { deviations } = await done<ReplyOf<typeof contract.listDeviations>>(
      ask(kitchen.operator, contract.listDeviations, { open: 'only', lotId }),
    );
    expect(told(deviations)).toMatchObject([grown]);
    const { openDeviations, onHold } = told(await today());
    expect(openDeviations.find((one) => one.deviationId === deviationId)).toMatchObject(grown);
    expect(onHold.find((one) => one.lotId === lotId)?.because).toContainEqual(said);
    const { lot, point } = await chilling();
    expect(told(lot.because)).toContainEqual(said);
    expect(told(lot.deviations)).toMatchObject([{ description: [said] }]);
    expect(told(point?.judged)).toMatchObject([{ verdict: { margin: '3 h too long' } }]);
    const review = await done<ReplyOf<typeof contract.showReview>>(ask(kitchen.reviewer, contract.showReview, { lotId }));
    expect(told(review.findings.find(({ about }) => about === 'deviation')?.what)).toContainEqual(said);

    const report = await print(`/deviations/${deviationId}/report.pdf`);
    expect(report).toContain('3 h too long');
    expect(report).toMatch(/When opened.*15 min too long/);
  });

  test('names the second stage too, with the largest overrun, on lot, log and paper', async () => {
    await read(0, 130);
    const deviationId = await read(105, 80);
    await read(300, 60);
    await read(585, 40);
    const { verdicts } = await finish();
    const both = '130 → 80 °F took 1 h 45 min; 1 h 30 min are allowed. 80 → 40 °F took 8 h; 5 h are allowed.';
    expect(told(verdicts)).toMatchObject([{ verdict: { margin: '3 h too long', because: both } }]);
    expect(await show(deviationId)).toMatchObject({
      description: [{ tells: 'because', point: 'Chill', verdict: { because: both } }],
      verdict: { margin: '3 h too long', because: both },
      openedWith: { verdict: { margin: '15 min too long' } },
    });
    expect((await kitchen.showLot(lotId)).deviations).toHaveLength(1);
    const day = (at: number) => new Date(at).toISOString().slice(0, 10);
    const [from, to] = [day(larder.clock.now().getTime() - 24 * 60 * minute), day(larder.clock.now().getTime())];
    const papers = [
      `/lots/${lotId}/lot-record.pdf`,
      `/deviations/${deviationId}/report.pdf`,
      `/monitoring-log.pdf?controlPointId=${kitchen.points.chill}&from=${from}&to=${to}`,
    ];
    for (const paper of papers) {
      const said = await print(paper);
      expect(said).toContain('130 → 80 °F in 1 h 45 min, 80 → 40 °F in 8 h against');
      expect(said).toContain('3 h too long');
      expect(said).toContain(both);
    }
  });

  test('of stages that both count from 135 °F says the same names and figures on deviation, lot, log and papers', async () => {
    const retail = await aSausageKitchen(await anotherShop(larder), larder, { chilledBy: coolingFoodCode });
    const lot = await aSausageLot(retail, larder, 'cooked');
    let deviationId: string | undefined;
    for (const [wait, value] of [
      [0, 135],
      [150, 71],
      [300, 60],
      [210, 41],
    ] as const) {
      larder.clock.moveOn(wait * minute);
      deviationId = (await retail.read(lot.lotId, 'chill', { entered: { value, unit: '°F' } })).deviationId ?? deviationId;
    }
    await done(
      ask(retail.operator, contract.endStage, {
        stageEndId: v7(),
        lotId: lot.lotId,
        controlPointId: retail.points.chill,
        takenAt: retail.now(),
      }),
    );
    const { verdict } = told(
      await done<contract.Deviation>(ask(retail.operator, contract.showDeviation, { deviationId: deviationId ?? '' })),
    );
    const point = (await retail.showLot(lot.lotId)).controlPoints.find(({ controlPoint }) => controlPoint.name === 'Chill');
    expect(told(point?.judged)).toMatchObject([{ verdict }]);
    expect(verdict?.margin).toBe('5 h 30 min too long');
    expect(verdict?.because).toContain('135 → 70 °F');
    expect(verdict?.because).toContain('135 → 41 °F');
    expect(JSON.stringify(told(point))).not.toContain('70 → 41 °F');
    const [from, to] = [-1, 1].map((days) => new Date(larder.clock.now().getTime() + days * 24 * 60 * minute).toISOString().slice(0, 10));
    for (const path of [
      `/lots/${lot.lotId}/lot-record.pdf`,
      `/deviations/${deviationId}/report.pdf`,
      `/monitoring-log.pdf?controlPointId=${retail.points.chill}&from=${from}&to=${to}`,
    ]) {
      const { text } = await printed(retail.operator, path);
      expect(text).toContain('5 h 30 min too long');
      expect(text).toContain(verdict?.measured);
      expect(text).toContain(verdict?.because);
      expect(text).not.toContain('70 → 41 °F');
    }
  });
});

describe('a miss that was decided', () => {
  test('stays decided while nothing more is missed, though the chill goes on and is then finished', async () => {
    await read(0, 130);
    const deviationId = await read(105, 85);
    await read(150, 80);
    await settle(deviationId);
    await read(200, 60);
    await read(300, 39);
    await finish();
    const { lot, point } = await chilling();
    expect(lot.deviations).toHaveLength(1);
    expect(point).toMatchObject({ stands: 'missed', settled: true });
    expect(await show(deviationId)).toMatchObject({
      open: false,
      verdict: { margin: '1 h too long' },
      openedWith: { verdict: { margin: '15 min too long' } },
    });
  });

  test('is to be decided anew once it has grown; the first keeps what was decided', async () => {
    await read(0, 130);
    const first = await read(105, 85);
    await settle(first);
    const second = await read(270, 84);
    expect([second === undefined, second === first]).toEqual([false, false]);
    expect(await chilling()).toMatchObject({ lot: { standing: 'on-hold' }, point: { settled: false } });
    expect(await show(first)).toMatchObject({ open: false, verdict: { margin: '15 min too long' } });
    expect(await show(second)).toMatchObject({ open: true, verdict: { margin: '3 h too long' } });
  });

  test('is to be decided anew when the second stage is missed too', async () => {
    await read(0, 130);
    const first = await read(105, 80);
    await settle(first);
    expect(await read(300, 60)).toBe(first);
    // Nothing more to decide so far, and nothing settled while it goes on.
    expect(await chilling()).toMatchObject({ lot: { standing: 'in-work', openDeviations: 0 }, point: { settled: false } });
    const second = await read(420, 45);
    expect(second).not.toBe(first);
    const { verdict } = await show(second);
    expect(verdict?.because).toContain('80 → 40 °F is not done: 45 °F after 5 h 15 min');
    expect(verdict?.because).toContain('130 → 80 °F took 1 h 45 min');
  });
});

test('a single reading that was corrected is said as corrected, and a shop of another knows nothing of it', async () => {
  const readingId = v7();
  const { deviationId } = await kitchen.read(lotId, 'coldRoom', { readingId, entered: { value: 46, unit: '°F' } });
  await kitchen.read(lotId, 'coldRoom', { entered: { value: 64, unit: '°F' } });
  await kitchen.read(lotId, 'coldRoom', { entered: { value: 36, unit: '°F' }, amends: readingId, reason: 'Misread.' });
  expect(told(await show(deviationId))).toMatchObject({
    description: [{ tells: 'because', point: 'Cold room', verdict: { because: '46 °F is 5 °F above 41 °F.' } }],
    verdict: { kind: 'met' },
    openedWith: { verdict: { margin: '5 °F over' } },
  });
});
