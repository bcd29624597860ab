import { createHash } from 'node:crypto';
import type { ReplyOf, ledgerHead, verifyLedger } from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { verifyBook } from '../../apps/api/src/ledger/verify-book';
import { sayVerified, verifyEveryBook } from '../../apps/api/src/ledger/verify-every-book';
import { Database } from '../../apps/api/src/platform/database';
import { aShop, anEstablishment, anotherShop, done, type Shop } from '../builders/a-shop';
import { run } from '../support/database';
import { aDevice } from '../support/device';
import { startApp, type TestApp } from '../support/start-app';

type Verification = ReplyOf<typeof verifyLedger>;
type Head = ReplyOf<typeof ledgerHead>;

let larderbook: TestApp;
let shop: Shop;
let owner: Database;
beforeAll(async () => {
  larderbook = await startApp();
  owner = new Database({ url: larderbook.database.ownerUrl });
  shop = await aShop(larderbook); // entry 1
  await shop.hire('operator'); // entry 2
  await shop.hire('reviewer'); // entry 3
  await rename('Wrenfold “Smoke” & \\ Sons\u0001\t\u2028🐖'); // entry 4: text that is awkward in JSON
});
afterAll(async () => {
  await owner.onModuleDestroy();
  await larderbook.close();
});

const rename = (name: string) => done(shop.owner.put(`/establishment-details/${v7()}`, anEstablishment({ name })));
const verified = () => done<Verification>(shop.owner.post('/ledger/verification'));

/** What verification says after SQL that only the tables' owner can do; then everything is put back. */
async function afterTampering(sql: string): Promise<Verification> {
  const putBack = new Error('put back');
  let said: Verification | undefined;
  const work = owner.open(async (tx) => {
    for (const statement of sql.split(';')) await tx.$executeRawUnsafe(statement);
    said = await verifyBook((look) => look(tx), shop.establishmentId);
    throw putBack;
  });
  await expect(work).rejects.toBe(putBack);
  if (!said) throw new Error('Nothing was verified');
  return said;
}

const alike = `
  UPDATE person SET name = 'Somebody else' WHERE name = 'The operator';
  UPDATE ledger_text SET records = replace(records, 'The operator', 'Somebody else') WHERE seq = 2`;

describe('the head of the chain', () => {
  test('is its newest line, shown with those before it and who wrote them', async () => {
    const { head, latest } = await done<Head>(shop.owner.get('/ledger'));

    expect(head).toEqual({ seq: 4, hash: latest[0]?.hash });
    expect(latest.map(({ seq, kind, person }) => [seq, kind, person])).toEqual([
      [4, 'establishment details', 'Odile Farrow'],
      [3, 'person', 'Odile Farrow'],
      [2, 'person', 'Odile Farrow'],
      [1, 'establishment', 'Odile Farrow'],
    ]);
  });

  test('may not be seen by anybody who is not signed in', async () => {
    expect((await aDevice(larderbook.app).get('/ledger')).status).toBe(401);
    expect((await aDevice(larderbook.app).get('/ledger/export.ndjson')).status).toBe(401);
  });

  test('is each establishment’s own', async () => {
    const other = await anotherShop(larderbook);
    expect((await done<Head>(other.owner.get('/ledger'))).head?.seq).toBe(1);
    expect((await other.owner.get('/ledger/export.ndjson')).text).not.toContain(shop.establishmentId);
  });
});

describe('verification', () => {
  test('of a book nobody touched finds every line and row as written', async () => {
    // the shop, its details, its owner, a grant and a credential; a person with both each; new details
    expect(await verified()).toEqual({ entries: 4, records: 5 + 3 + 3 + 1, sound: true, breaks: [], broken: 0, ranBack: [] });
  });

  test.each<[string, string, number, string]>([
    ['a record altered', `UPDATE person SET name = 'Somebody else' WHERE name = 'The operator'`, 2, 'record-altered'],
    [
      'a record altered by one digit of its time',
      `UPDATE establishment_details SET recorded_at = recorded_at + interval '1 ms' WHERE name LIKE '%Sons%'`,
      4,
      'record-altered',
    ],
    ['a record removed', `DELETE FROM role_grant WHERE roles = '{reviewer}'`, 3, 'record-gone'],
    ['two records altered: the earlier is told', `UPDATE person SET name = name || '!'`, 1, 'record-altered'],
    ['a line altered', `UPDATE ledger_entry SET kind = 'receipt' WHERE seq = 3`, 3, 'content-altered'],
    ['a line altered in its time', `UPDATE ledger_entry SET at = at - interval '1 day' WHERE seq = 2`, 2, 'content-altered'],
    ['a hash altered', `UPDATE ledger_entry SET hash = decode(repeat('a', 64), 'hex') WHERE seq = 3`, 3, 'hash-altered'],
    ['an answer altered', `UPDATE ledger_entry SET reply = '{"sound":true}' WHERE seq = 2`, 2, 'content-altered'],
    ['what was asked altered', `UPDATE ledger_entry SET request_digest = digest WHERE seq = 2`, 2, 'content-altered'],
    ['a text altered', `UPDATE ledger_text SET records = '[]' WHERE seq = 2 AND place = 0`, 2, 'records-list-altered'],
    ['a text and its record altered alike', alike, 2, 'records-list-altered'],
    ['a text made unreadable', `UPDATE ledger_text SET records = 'no list' WHERE seq = 2 AND place = 0`, 2, 'records-list-altered'],
    ['a text removed', `DELETE FROM ledger_text WHERE seq = 2 AND place = 1`, 2, 'records-list-altered'],
    ['two texts exchanged', `UPDATE ledger_text SET place = 9 - place WHERE seq = 2`, 2, 'records-list-altered'],
    ['a record moved to another line', `UPDATE role_grant SET seq = 3 WHERE seq = 2`, 2, 'record-altered'],
    ['the establishment altered', `UPDATE establishment SET demonstration = NOT demonstration`, 1, 'record-altered'],
    ['a password changed', `UPDATE sign_in_account SET password = 'of another'`, 1, 'sign-in-altered'],
    ['a user name changed', `UPDATE sign_in SET username = 'somebody' WHERE name = 'The operator'`, 2, 'sign-in-altered'],
    ['a person who signs in, removed', `DELETE FROM sign_in WHERE name = 'The reviewer'`, 3, 'sign-in-altered'],
    ['a credential removed with its sign-in', `DELETE FROM credential WHERE seq = 3`, 3, 'record-gone'],
    [
      'a sign-in put in beside the book',
      `INSERT INTO sign_in (id, establishment_id, name, email, username)
       SELECT gen_random_uuid(), establishment_id, 'Somebody', 'somebody', 'somebody' FROM sign_in WHERE name = 'The reviewer'`,
      4,
      'sign-in-beside',
    ],
    [
      'a line put in before the first',
      `ALTER TABLE ledger_entry DROP CONSTRAINT ledger_entry_seq_check;
       INSERT INTO ledger_entry SELECT establishment_id, 0, gen_random_uuid(), at, person, station, kind, subject, request_digest, reply,
         digest, previous_hash, hash FROM ledger_entry WHERE seq = 1`,
      0,
      'entry-out-of-place',
    ],
    [
      'a time that is none',
      `ALTER TABLE ledger_entry DROP CONSTRAINT ledger_entry_at_check; UPDATE ledger_entry SET at = 'infinity' WHERE seq = 2`,
      2,
      'content-altered',
    ],
    ['a line removed', `DELETE FROM ledger_entry WHERE seq = 2`, 2, 'entry-missing'],
    ['the first line removed', `DELETE FROM ledger_entry WHERE seq = 1`, 1, 'entry-missing'],
    ['the last line removed', `DELETE FROM ledger_entry WHERE seq = 4`, 4, 'ends-before-acknowledged'],
    [
      'two lines exchanged',
      `UPDATE ledger_entry SET seq = seq + 100 WHERE seq IN (2, 3); UPDATE ledger_entry SET seq = 105 - seq WHERE seq > 100`,
      2,
      'entry-exchanged',
    ],
    [
      'a record put in beside the book',
      `ALTER TABLE role_grant DISABLE TRIGGER USER;
       INSERT INTO role_grant SELECT establishment_id, gen_random_uuid(), 4, person_id, '{owner}', recorded_at, recorded_by
       FROM role_grant WHERE roles = '{operator}'`,
      4,
      'record-beside',
    ],
  ])('finds %s', async (_case, sql, seq, because) => {
    expect(await afterTampering(sql)).toMatchObject({
      sound: false,
      breaks: expect.arrayContaining([expect.objectContaining({ seq, because: expect.objectContaining({ code: because }) })]),
    });
  });
});

test('a column added to a table in a later version leaves the digests of what was there before', async () => {
  const sound = await afterTampering('ALTER TABLE person ADD COLUMN nickname text');
  expect(sound).toMatchObject({ sound: true });
  expect(
    await afterTampering(`ALTER TABLE person ADD COLUMN nickname text; UPDATE person SET nickname = 'Odie' WHERE name = 'Odile Farrow'`),
  ).toMatchObject({ breaks: [{ seq: 1 }] });
});

describe('the export', () => {
  type Line = {
    entry: Record<string, string | number>;
    reply: string;
    texts: string[];
  };
  const sha256 = (text: string | Buffer) => createHash('sha256').update(text).digest('hex');
  const sorted = (object: object) => JSON.stringify(Object.fromEntries(Object.entries(object).sort(([a], [b]) => (a < b ? -1 : 1))));

  /** As the export's own description says it and with nothing else: the first line that does not hold. */
  function firstBreak(lines: Line[]): number | undefined {
    let previous = '0'.repeat(64);
    for (const [index, { entry, reply, texts }] of lines.entries()) {
      const { hash, previousHash, ...sealed } = entry;
      const digests = Buffer.concat(texts.map((text) => createHash('sha256').update(text).digest()));
      const holds =
        entry.seq === index + 1 &&
        previousHash === previous &&
        sha256(digests) === entry.digest &&
        sha256(reply) === entry.answer &&
        sha256(previous + sorted(sealed)) === hash;
      if (!holds) return index + 1;
      previous = String(hash);
    }
    return undefined;
  }
  const exported = async (): Promise<Line[]> => {
    const { text, headers } = await shop.owner.get('/ledger/export.ndjson');
    expect(headers['content-type']).toContain('application/x-ndjson');
    return text
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line) as Line);
  };

  test('can be verified by anyone, with nothing but SHA-256 and its own description', async () => {
    const lines = await exported();
    expect(lines.map(({ entry }) => entry.kind)).toEqual(['establishment', 'person', 'person', 'establishment details']);
    const added = lines.flatMap(({ texts }) => texts.flatMap((text) => JSON.parse(text) as { table: string; row: object }[]));
    expect(added.map(({ table }) => table)).toContain('role_grant');
    for (const { row } of added) expect(JSON.stringify(row)).toBe(sorted(row));
    expect(firstBreak(lines)).toBeUndefined();
  });

  test('shows a record that was altered', async () => {
    const [line] = (await exported()).slice(2);
    if (!line) throw new Error('Entry 3 covers a person');
    const texts = line.texts.map((text) => text.replace('The reviewer', 'Somebody else'));
    expect(texts).not.toEqual(line.texts);
    expect(firstBreak([...(await exported()).slice(0, 2), { ...line, texts }])).toBe(3);
  });
});

describe('with others about', () => {
  test('verification is open to an inspector, who only looks', async () => {
    const inspector = await shop.hire('inspector');
    expect((await inspector.post('/ledger/verification')).body).toMatchObject({ sound: true, entries: 5 });
  });

  test('it holds while people go on writing', async () => {
    const writing = Array.from({ length: 12 }, (_, n) => rename(`Wrenfold ${n}`));
    expect(await verified()).toMatchObject({ sound: true });
    await Promise.all(writing);
    expect(await verified()).toMatchObject({ sound: true, entries: 17 });
  });

  test('what was done to one establishment does not disturb another, and shows in its own book', async () => {
    const other = await anotherShop(larderbook);
    await run(larderbook.database.ownerUrl, `UPDATE person SET name = 'Somebody else' WHERE establishment_id = '${other.establishmentId}'`);
    expect(await verified()).toMatchObject({ sound: true });
    expect((await other.owner.post('/ledger/verification')).body).toMatchObject({
      sound: false,
      breaks: [{ seq: 1 }],
    });
  });

  test('all books are verified in one go, one line each', async () => {
    const said: string[] = [];
    for await (const book of verifyEveryBook(larderbook.database)) said.push(...sayVerified(book));
    expect(said).toEqual([
      expect.stringMatching(/^Wrenfold \d+: 17 entries and 27 records, all as they were written\.$/),
      'Lower Wrenfold Kitchen: 1 entry and 5 records, all as they were written.',
      expect.stringMatching(/^Lower Wrenfold Kitchen: broken at entry 1\. The person [0-9a-f-]{36} was altered after entry 1 /),
    ]);
  });
});
