import { cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import * as contract from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test, vi } from 'vitest';
import { backUp } from '../../apps/api/src/backup/back-up';
import { bookTables } from '../../apps/api/src/backup/book-tables';
import { readBackup } from '../../apps/api/src/backup/read-backup';
import { restoreBook } from '../../apps/api/src/backup/restore-book';
import { connected } from '../../apps/api/src/platform/connected';
import { projectRoot } from '../../apps/api/src/project-root';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aSausageLot } from '../builders/a-sausage-lot';
import { anotherShop, aShop, done, password, type Shop } from '../builders/a-shop';
import { aSupplier } from '../builders/a-supplier';
import { correctReceipt } from '../builders/correcting';
import { ask } from '../support/ask';
import { emptyDatabase, run, type TestDatabase } from '../support/database';
import { aDevice } from '../support/device';
import { appOn, startApp, type TestApp } from '../support/start-app';

vi.setConfig({ testTimeout: 60_000 }); // each restores a whole book

const passphrase = 'three geese over the smokehouse';
const folder = mkdtempSync(join(tmpdir(), 'larderbook-backup-'));
const plain = join(folder, 'plain.backup');
const whileWriting = join(folder, 'while-writing.backup');
const sealed = join(folder, 'sealed.backup');

let larder: TestApp;
let shop: Shop;
let other: Shop;
let kitchen: SausageKitchen;
let written = 0;

/** Two establishments: a lot through to its signed review, a corrected delivery, and backups taken while and after. */
beforeAll(async () => {
  larder = await startApp();
  shop = await aShop(larder);
  kitchen = await aSausageKitchen(shop, larder);
  other = await anotherShop(larder);
  const { lotId } = await aSausageLot(kitchen, larder, 'packed');
  await done(
    ask(kitchen.reviewer, contract.signReview, { reviewId: v7(), lotId, statement: 'All is complete and met: a\ttab, a \\. and\na line.' }),
  );
  await done(correctReceipt(kitchen.operator, await kitchen.receive('pork'), { supplierLot: 'ML-89' }));

  let isMade = false;
  const backup = backUp(larder.database.ownerUrl, whileWriting).finally(() => (isMade = true));
  while (!isMade) {
    await aSupplier(kitchen.operator);
    written += 1;
  }
  await backup;
  await backUp(larder.database.ownerUrl, plain);
  await backUp(larder.database.ownerUrl, sealed, passphrase);
}, 120_000);
afterAll(async () => {
  await larder.close();
  rmSync(folder, { recursive: true });
});

const heads = ({ ownerUrl }: TestDatabase) =>
  run<{ establishment_id: string; seq: string; hash: string }>(
    ownerUrl,
    `SELECT DISTINCT ON (1) establishment_id, seq, encode(hash, 'hex') AS hash FROM ledger_entry ORDER BY 1, seq DESC`,
  );

/** Every table of a book with how many rows it has and a digest of them all. */
const contents = ({ ownerUrl }: TestDatabase) =>
  connected(ownerUrl, async (owner) => {
    await owner.query(`SET timezone = 'UTC'`);
    const found: Record<string, unknown> = {};
    for (const { name } of await bookTables(owner)) {
      const { rows } = await owner.query(`SELECT count(*), md5(coalesce(string_agg(r::text, '|' ORDER BY r::text), '')) FROM "${name}" r`);
      found[name] = rows[0];
    }
    return found;
  });

const textOf = (file: string) => gunzipSync(readFileSync(file)).toString();

describe('a backup', () => {
  test('is one moment of the book, also while it is written in', async () => {
    const { first } = await readBackup(whileWriting, undefined);
    const [now] = (await heads(larder.database)).filter(({ establishment_id }) => establishment_id === shop.establishmentId);
    expect(written).toBeGreaterThan(1);
    expect(first.establishments[0]?.seq).toBeLessThan(Number(now?.seq));
    expect(first.establishments.map(({ name }) => name)).toEqual(['Wrenfold Smokehouse', 'Lower Wrenfold Kitchen']);
  });

  test('is text that says what it is, with every table that is a record and no session', async () => {
    const text = textOf(plain);
    const tables = [...text.matchAll(/^\{"section":"table","table":"([a-z_]+)"/gm)].map(([, name]) => name);
    expect(text.slice(0, 60)).toMatch(/^\{"format":"larderbook-backup","version":1,"madeAt":"/);
    expect(tables.toSorted()).toEqual(Object.keys(await contents(larder.database)).toSorted());
    expect(tables).toEqual(
      expect.arrayContaining(['establishment', 'ledger_entry', 'ledger_text', 'sign_in', 'sign_in_account', 'review']),
    );
    expect(tables).not.toContain('sign_in_session');
    expect(await run(larder.database.ownerUrl, `SELECT FROM pg_sequences`)).toEqual([]); // what a sequence has reached would be lost
  });

  test('belongs to whoever made it, and leaves no part beside it', () => {
    expect(statSync(plain).mode & 0o777).toBe(0o600);
    expect(readdirSync(folder).filter((name) => name.endsWith('.part'))).toEqual([]);
  });

  test('shows nothing of the book when it is sealed', () => {
    expect(readFileSync(sealed, 'latin1')).not.toContain('Wrenfold');
    expect(() => gunzipSync(readFileSync(sealed))).toThrow();
  });

  test.each([
    ['over another file', () => plain, 'is there already, and no backup is written over another'],
    ['into no folder', () => join(folder, 'nowhere', 'a.backup'), /^There is no folder .*nowhere: make it/],
  ])('is never written %s', async (_where, file, said) => {
    const before = readdirSync(folder);
    await expect(backUp(larder.database.ownerUrl, file())).rejects.toThrow(said);
    expect(readdirSync(folder)).toEqual(before);
  });

  test('of a database in which nothing was set up is none', async () => {
    const empty = await emptyDatabase();
    await expect(backUp(empty.ownerUrl, join(folder, 'empty.backup'))).rejects.toThrow('there is nothing to back up');
    expect(existsSync(join(folder, 'empty.backup'))).toBe(false);
    await empty.drop();
  });
});

describe('what is wrong with a file is said', () => {
  const broken = join(folder, 'broken.backup');
  const reading = (bytes: Buffer, phrase?: string) => {
    writeFileSync(broken, bytes);
    return readBackup(broken, phrase).then(
      () => 'sound',
      (failure: Error) => (failure.name === 'CannotStart' ? failure.message : failure),
    );
  };
  const flipped = (bytes: Buffer, at: number) => {
    const changed = Buffer.from(bytes);
    changed[at] = (changed[at] ?? 0) ^ 0x10;
    return changed;
  };

  test('wherever it was cut', async () => {
    const [whole, closed] = [readFileSync(plain), readFileSync(sealed)];
    for (const kept of [11, 200, 5_000, whole.length - 9, whole.length - 1]) {
      expect(await reading(whole.subarray(0, kept))).toMatch(/ is cut short, its end is missing/);
    }
    for (const kept of [60, 3_000, closed.length - 1]) {
      expect(await reading(closed.subarray(0, kept), passphrase)).toMatch(/ is cut short, its end is missing/);
    }
  });

  test('wherever a byte is another', async () => {
    const [whole, closed] = [readFileSync(plain), readFileSync(sealed)];
    for (let at = 10; at < whole.length; at += Math.floor(whole.length / 40)) {
      expect(await reading(flipped(whole, at)), `byte ${at}`).toMatch(/ is (not as it was written|cut short)/);
    }
    const costlier = Buffer.from(closed);
    costlier.write('131073', closed.indexOf('131072'));
    expect(await reading(costlier, passphrase)).toMatch(/ is not as it was written/);
    for (const at of [400, Math.floor(closed.length / 2), closed.length - 1]) {
      expect(await reading(flipped(closed, at), passphrase), `byte ${at}`).toMatch(/ is not as it was written/);
    }
  });

  test('when it is another file, or has no passphrase or a wrong one', async () => {
    expect(await reading(Buffer.from('a letter to the farm'))).toMatch(/ is not a backup of Larderbook/);
    expect(await reading(Buffer.alloc(0))).toMatch(/ is not a backup of Larderbook/);
    expect(await reading(readFileSync(sealed))).toMatch(/ is sealed: set LARDERBOOK_PASSPHRASE/);
    expect(await reading(readFileSync(sealed), 'three geese over the smokehous')).toMatch(/^LARDERBOOK_PASSPHRASE is not the passphrase/);
    await expect(readBackup(join(folder, 'none'), undefined)).rejects.toThrow('There is no file');
  });
});

describe('restoring into a database', () => {
  let empty: TestDatabase;
  beforeEach(async () => void (empty = await emptyDatabase()));
  afterEach(() => empty.drop());
  const restore = (file: string, more: { evenIfBroken?: boolean; prisma?: string } = {}) =>
    restoreBook({ database: empty, dataDir: '', passphrase }, { file, ...more });
  const records = () => run(empty.ownerUrl, `SELECT FROM establishment`).catch(() => []);

  test('brings back every row and the same heads; people sign in with their password and the book goes on', async () => {
    const { books } = await restore(sealed);

    expect(books).toMatchObject([
      { establishment: 'Wrenfold Smokehouse', sound: true },
      { establishment: 'Lower Wrenfold Kitchen', sound: true },
    ]);
    expect(await contents(empty)).toEqual(await contents(larder.database));
    expect(await heads(empty)).toEqual(await heads(larder.database));

    const app = await appOn(empty, larder.clock);
    await app.listen(0, '127.0.0.1');
    const device = aDevice(app);
    await done(device.post('/session', { userName: kitchen.operator.userName, password }));
    await aSupplier(device);
    await app.close();
    const before = Number((await heads(larder.database)).find(({ establishment_id }) => establishment_id === shop.establishmentId)?.seq);
    expect((await heads(empty)).map(({ seq }) => Number(seq))).toContain(before + 1);
    expect((await heads(empty)).map(({ establishment_id }) => establishment_id)).toContain(other.establishmentId);
  });

  test('of a backup that was made while others wrote gives a sound book up to its heads', async () => {
    const { first, books } = await restore(whileWriting);
    expect(books.map(({ sound }) => sound)).toEqual([true, true]);
    expect((await heads(empty)).map(({ hash }) => hash).toSorted()).toEqual(first.establishments.map(({ hash }) => hash).toSorted());
  });

  test('where records are, or somebody is connected, changes nothing', async () => {
    await restore(plain);
    const before = await contents(empty);
    await expect(restore(plain)).rejects.toThrow('holds records already');
    expect(await contents(empty)).toEqual(before);

    await connected(empty.apiUrl, () => expect(restore(plain)).rejects.toThrow('Somebody is connected'));
  });

  test('of a book with a break restores nothing, unless asked to', async () => {
    const damaged = await emptyDatabase();
    await restoreBook({ database: damaged, dataDir: '' }, { file: plain });
    await run(damaged.ownerUrl, `UPDATE review SET statement = 'All is well.'`);
    const file = join(folder, 'with-a-break.backup');
    await backUp(damaged.ownerUrl, file);
    await damaged.drop();

    await expect(restore(file)).rejects.toThrow(/^Wrenfold Smokehouse: broken at entry \d+\. .* Nothing was restored/);
    expect(await records()).toEqual([]);

    expect((await restore(file, { evenIfBroken: true })).books.map(({ sound }) => sound)).toEqual([false, true]);
  });

  test('of text that is no row of its table restores nothing, and says what PostgreSQL says', async () => {
    const file = join(folder, 'made-up.backup');
    const source = await emptyDatabase();
    await restoreBook({ database: source, dataDir: '' }, { file: plain });
    await run(source.ownerUrl, 'ALTER TABLE supplier ALTER contact DROP NOT NULL');
    await run(source.ownerUrl, 'UPDATE supplier SET contact = NULL');
    await backUp(source.ownerUrl, file);
    await source.drop();

    await expect(restore(file)).rejects.toThrow(/could not be put into the database \(null value in column "contact"/);
    expect(await records()).toEqual([]);
  });

  describe('with one migration more', () => {
    const prisma = join(folder, 'prisma');
    beforeAll(() => {
      cpSync(join(projectRoot, 'prisma'), prisma, { recursive: true });
      mkdirSync(join(prisma, 'migrations/9000_remarks'));
      writeFileSync(join(prisma, 'migrations/9000_remarks/migration.sql'), 'ALTER TABLE "supplier" ADD COLUMN "remark" TEXT;');
    });

    test('a backup of the version before is loaded as it was and brought up to date', async () => {
      const { books } = await restore(plain, { prisma });
      expect(books.map(({ sound }) => sound)).toEqual([true, true]);
      expect(await run(empty.ownerUrl, 'SELECT remark FROM supplier WHERE remark IS NOT NULL')).toEqual([]);
    });

    test('a backup of the later version is left to that version', async () => {
      await restore(plain, { prisma });
      const later = join(folder, 'later.backup');
      await backUp(empty.ownerUrl, later);
      const place = await emptyDatabase();

      await expect(restoreBook({ database: place, dataDir: '' }, { file: later })).rejects.toThrow(
        /was made by a later Larderbook \(it has 9000_remarks/,
      );
      expect(await run(place.ownerUrl, `SELECT to_regclass('establishment') AS made`)).toEqual([{ made: null }]);
      await place.drop();
    });
  });
});
