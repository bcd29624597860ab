import * as contract from '@larderbook/contracts';
import { RULES_VERSION } from '@larderbook/haccp';
import pg from 'pg';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aSausageLot } from '../builders/a-sausage-lot';
import { aReceipt } from '../builders/a-receipt';
import { aShop, done } from '../builders/a-shop';
import { ask } from '../support/ask';
import { startApp, type TestApp } from '../support/start-app';

let larder: TestApp;
let kitchen: SausageKitchen;
let owner: pg.Client;
beforeAll(async () => {
  larder = await startApp();
  kitchen = await aSausageKitchen(await aShop(larder), larder);
  owner = new pg.Client({ connectionString: larder.database.ownerUrl });
  await owner.connect();
});
afterAll(async () => {
  await owner.end();
  await larder.close();
});

const sizeOf = ({ judged }: { judged: object[] }): number => JSON.stringify(judged).length;

describe('what is kept of a verdict with an entry', () => {
  test('is codes and figures with the rules it was judged by: no limit, no sentence, and under a kilobyte', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'chilled');
    const kept: { judged: Record<string, unknown>[] }[] = [];
    for (const table of ['reading', 'weighing', 'stage_end']) {
      const { rows } = await owner.query<(typeof kept)[number]>(`SELECT judged FROM ${table} WHERE lot_id = $1`, [lotId]);
      kept.push(...rows);
    }
    const judged = kept.flatMap((row) => row.judged);
    expect(judged.length).toBeGreaterThan(5);
    for (const one of judged) {
      expect(one).toMatchObject({
        rulesVersion: RULES_VERSION,
        finding: expect.any(String) as string,
        figures: expect.any(Object) as object,
      });
      for (const words of ['limit', 'verdict', 'because', 'next', 'measured', 'margin', 'source']) expect(one).not.toHaveProperty(words);
    }
    const { rows: ofCook } = await owner.query<(typeof kept)[number]>(
      'SELECT judged FROM reading WHERE lot_id = $1 AND control_point_id = $2',
      [lotId, kitchen.points.cook],
    );
    expect(ofCook.length).toBeGreaterThan(2);
    expect(Math.max(...ofCook.map(sizeOf))).toBeLessThanOrEqual(1024);
    expect(Math.max(...kept.map(sizeOf))).toBeLessThanOrEqual(2048);
    const { rows: replies } = await owner.query<{ reply: string }>('SELECT reply FROM ledger_entry');
    for (const { reply } of replies) expect(reply).not.toContain('"citation"');
  });

  test('says so of a delivery, of the deviation it opened, and of a check of an instrument', async () => {
    const warm = { temperature: { value: 52, unit: '°F' }, sure: true, reason: 'The van stood in the sun.' } as const;
    const { receiptId, deviationId = '', verdict } = await aReceipt(kitchen.operator, warm);
    const [instrumentId, calibrationId] = [v7(), v7()];
    const scale = { name: 'Bench scale', kind: 'scale', unit: 'g', tolerance: 1, checkEveryDays: 30 } as const;
    await done(ask(kitchen.operator, contract.recordInstrument, { instrumentId, ...scale }));
    const check = {
      calibrationId,
      instrumentId,
      method: 'test weight',
      action: 'Taken out of use.',
      takenAt: kitchen.now(),
      expected: 500,
    } as const;
    await done(ask(kitchen.operator, contract.recordCalibration, { ...check, observed: 503 }));

    const ids = { receipt: receiptId, deviation: deviationId, calibration: calibrationId };
    for (const [table, id] of Object.entries(ids)) {
      const { rows } = await owner.query<{ verdict: object }>(`SELECT verdict FROM ${table} WHERE id = $1`, [id]);
      expect(rows, table).toMatchObject([{ verdict: { kind: 'missed', rulesVersion: RULES_VERSION } }]);
    }
    expect(verdict).toMatchObject({ kind: 'missed' });
    expect(verdict).not.toHaveProperty('rulesVersion');
    const shown = await done<contract.Deviation>(ask(kitchen.operator, contract.showDeviation, { deviationId }));
    expect(shown.verdict).toEqual(verdict);
  });

  test('is shown with the limit that stands in the plan', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'cured');
    const [cure] = (await kitchen.showLot(lotId)).weighings.filter(({ judged }) => judged.length > 0);
    expect(cure?.judged).toMatchObject([{ limit: { kind: 'concentration' }, verdict: { kind: 'met', finding: 'ppm-within' } }]);
  });
});

describe('a lot that was reviewed', () => {
  /** As a program of other rules would: a value on the record that those of now do not find met. */
  const judgeOtherwise = async (lotId: string) => {
    for (const change of ['DISABLE', 'ENABLE'] as const) {
      await owner.query(`ALTER TABLE reading ${change} TRIGGER USER`);
      if (change === 'DISABLE')
        await owner.query('UPDATE reading SET value = 60 WHERE lot_id = $1 AND control_point_id = $2', [lotId, kitchen.points.coldRoom]);
    }
  };
  const signedBy = async (lotId: string, rules: number | null) => {
    await owner.query('ALTER TABLE review DISABLE TRIGGER USER');
    await owner.query('UPDATE review SET rules_version = $2 WHERE lot_id = $1', [lotId, rules]);
    await owner.query('ALTER TABLE review ENABLE TRIGGER USER');
  };

  test('by earlier rules stays cleared, and says what those of now judge otherwise', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'reviewed');
    expect(await kitchen.showLot(lotId)).toMatchObject({ standing: 'cleared', judgedOtherwise: [] });
    await judgeOtherwise(lotId);
    await signedBy(lotId, null);
    expect(await kitchen.showLot(lotId)).toMatchObject({
      standing: 'cleared',
      judgedOtherwise: ['Cold room'],
      because: [{ code: 'so-many-may-ship' }, { code: 'not-met-by-now', figures: { points: ['Cold room'] } }],
    });
    await signedBy(lotId, RULES_VERSION);
    expect(await kitchen.showLot(lotId)).toMatchObject({ standing: 'in-work', judgedOtherwise: [] });
  });
});
