import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { v7 } from 'uuid';
import type { MovedColumns } from '../../apps/api/src/ledger/moved-columns';
import { RecordOnce } from '../../apps/api/src/ledger/record-once';
import { verifyBook, type Verification } from '../../apps/api/src/ledger/verify-book';
import { Database } from '../../apps/api/src/platform/database';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aShop, type Shop } from '../builders/a-shop';
import { run } from '../support/database';
import { startApp, type TestApp } from '../support/start-app';

let larder: TestApp;
let shop: Shop;
let kitchen: SausageKitchen;
let owner: Database;
beforeAll(async () => {
  larder = await startApp();
  shop = await aShop(larder);
  kitchen = await aSausageKitchen(shop, larder);
  owner = new Database({ url: larder.database.ownerUrl });
});
afterAll(async () => {
  await owner.onModuleDestroy();
  await larder.close();
});

const verified = (moved?: MovedColumns): Promise<Verification> =>
  verifyBook((look) => owner.transaction(shop, look), shop.establishmentId, moved);

test('a write of thousands of records is one line of the ledger, in as many texts as it took statements', async () => {
  const { lotId } = await kitchen.startLot();
  const { establishmentId } = shop;
  const by = { personId: kitchen.operator.personId, establishmentId, station: 'logger of the smoker' };
  const sent = { id: v7(), kind: 'reading', subject: lotId, request: {} };
  await larder.app.get(RecordOnce, { strict: false }).run(by, sent, async (tx) => {
    for (const from of [1, 1001, 2001]) {
      await tx.$queryRaw`
        INSERT INTO reading (establishment_id, id, lot_id, control_point_id, plan_id, probe, value, unit, seen, judged, reason, flags,
          station, taken_at, recorded_at, recorded_by)
        SELECT ${establishmentId}::uuid, gen_random_uuid(), ${lotId}::uuid, ${kitchen.points.cook}::uuid, ${kitchen.planId}::uuid, 'core',
          41, '°F', '', '[]', '', '{}', ${by.station}, now(), now(), ${by.personId}::uuid
        FROM generate_series(${from}::integer, ${from + 999}::integer)`;
    }
    return {};
  });

  const texts = await run<{ records: number; bytes: number }>(
    larder.database.ownerUrl,
    `SELECT jsonb_array_length(t.records::jsonb) AS records, length(t.records) AS bytes FROM ledger_text t
     JOIN ledger_entry e USING (establishment_id, seq) WHERE e.id = '${sent.id}' ORDER BY t.place`,
  );
  expect(texts.map(({ records }) => records)).toEqual([1000, 1000, 1000]);
  expect(Math.max(...texts.map(({ bytes }) => bytes))).toBeLessThan(1_000_000);
  expect(await verified()).toMatchObject({ sound: true, broken: 0 });
});

describe('after a later version renamed a column, widened another and split a table', () => {
  const moved: MovedColumns = {
    'person.user_name': { table: 'person', column: 'signs_in_as' },
    'product.storage': { table: 'product_storage', column: 'storage' },
  };
  beforeAll(() =>
    run(
      larder.database.ownerUrl,
      `ALTER TABLE person RENAME user_name TO signs_in_as;
       ALTER TABLE formula_line ALTER percent TYPE numeric(20, 12);
       CREATE TABLE product_storage (establishment_id uuid, id uuid, seq bigint, storage text);
       INSERT INTO product_storage SELECT establishment_id, id, seq, storage FROM product;
       ALTER TABLE product DROP storage`,
    ),
  );

  test('every line written before still verifies', async () => {
    expect(await verified(moved)).toMatchObject({ sound: true, broken: 0 });
  });

  test('by nothing but what says where the columns went', async () => {
    expect((await verified({})).broken).toBeGreaterThan(0);
    expect(await verified({ 'person.user_name': moved['person.user_name'] as never })).toMatchObject({ sound: false });
  });

  test.each([
    ['renamed', `UPDATE person SET signs_in_as = 'somebody' WHERE name = 'Odile Farrow'`, 'record-altered'],
    ['widened', 'UPDATE formula_line SET percent = percent + 0.000000000001', 'record-altered'],
    ['moved', `UPDATE product_storage SET storage = 'Keep warm'`, 'record-altered'],
    ['moved and made null', 'UPDATE product_storage SET storage = NULL', 'record-altered'],
    ['moved away', 'DELETE FROM product_storage', 'record-gone'],
  ])('what was %s and then altered is found', async (_how, sql, code) => {
    const putBack = new Error('put back');
    let found: Verification | undefined;
    const work = owner.transaction(shop, async (tx) => {
      await tx.$executeRawUnsafe(sql);
      found = await verifyBook((look) => look(tx), shop.establishmentId, moved);
      throw putBack;
    });
    await expect(work).rejects.toBe(putBack);
    expect(found?.breaks.map(({ because }) => because.code)).toEqual(found?.breaks.map(() => code));
    expect(found?.broken).toBeGreaterThan(0);
  });
});
