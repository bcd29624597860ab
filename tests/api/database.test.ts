import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { Prisma } from '../../apps/api/src/generated/prisma/client';
import { Database, type Tx } from '../../apps/api/src/platform/database';
import { cloneDatabase, run, type TestDatabase } from '../support/database';

let database: TestDatabase;
let db: Database;

beforeAll(async () => {
  database = await cloneDatabase();
  const [{ name } = { name: '' }] = await run<{ name: string }>(database.ownerUrl, 'SELECT current_database() AS name');
  await run(database.ownerUrl, `ALTER DATABASE ${name} SET timezone = 'Asia/Tokyo'`); // a PostgreSQL of one's own
  db = new Database({ url: database.ownerUrl });
});
afterAll(async () => {
  await db.onModuleDestroy();
  await database.drop();
});

const at = new Date('2026-11-20T06:30:00.125Z');
const attempt = { id: '0192f0c1-0000-7000-8000-000000000001', userName: 'mara', at };
const attempts = (tx: Tx) => tx.$queryRaw<{ at: Date }[]>`SELECT at FROM sign_in_attempt WHERE user_name = 'mara'`;

describe('a statement written in SQL', () => {
  it('gives every kind of value as Prisma would', async () => {
    const [row] = await db.open(
      (tx) => tx.$queryRaw<object[]>`
      SELECT 7::int AS whole, 9007199254740993::bigint AS long, 0.10::numeric AS exact, 1.5::float8 AS rough, true AS yes,
        NULL::text AS nothing, ${at}::timestamptz AS at, '2026-11-20'::date AS day, '{"a":[1]}'::jsonb AS said,
        ${['a', 'b "c"']}::text[] AS words,
        ${"it's here"} || '' AS text, ${new Prisma.Decimal('12.340')}::numeric AS given`,
    );
    expect(row).toEqual({
      whole: 7,
      long: 9007199254740993n,
      exact: new Prisma.Decimal('0.1'),
      rough: 1.5,
      yes: true,
      nothing: null,
      at,
      day: new Date('2026-11-20'),
      said: { a: [1] },
      words: ['a', 'b "c"'],
      text: "it's here",
      given: new Prisma.Decimal('12.34'),
    });
  });

  it('is in one transaction with what Prisma writes: each sees the other, and both are undone', async () => {
    const failure = new Error('undone');
    const work = db.open(async (tx) => {
      await tx.signInAttempt.create({ data: attempt });
      expect(await attempts(tx)).toEqual([{ at: attempt.at }]);
      await tx.$queryRaw`DELETE FROM sign_in_attempt WHERE user_name = 'mara'`;
      expect(await tx.signInAttempt.count()).toBe(0);
      await tx.signInAttempt.create({ data: attempt });
      throw failure;
    });
    await expect(work).rejects.toBe(failure);
    expect(await db.open(attempts)).toEqual([]);
  });

  it('of several in one breath answers each its own, and one that fails undoes all', async () => {
    const both = (tx: Tx) => Promise.all([1, 2, 3].map((n) => tx.$queryRaw`SELECT ${n}::int AS n`));
    expect(await db.open(both)).toEqual([[{ n: 1 }], [{ n: 2 }], [{ n: 3 }]]);

    const work = db.open(async (tx) => {
      await tx.signInAttempt.create({ data: attempt });
      await Promise.all([tx.$queryRaw`SELECT 1`, tx.$queryRaw`SELECT 1 / 0`, tx.$queryRaw`SELECT 2`]);
    });
    await expect(work).rejects.toThrow(/division by zero/);
    expect(await db.open(attempts)).toEqual([]);
  });

  it('is planned once for a connection, whatever its values', async () => {
    const plans = await db.open(async (tx) => {
      for (const n of [1, 2, 3]) await tx.$queryRaw`SELECT ${n}::int AS planned_once`;
      return tx.$queryRaw<object[]>`
        SELECT name FROM pg_prepared_statements WHERE statement LIKE 'SELECT $1::int AS planned%'`;
    });
    expect(plans).toHaveLength(1);
  });
});
