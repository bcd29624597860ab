import { randomBytes } from 'node:crypto';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { cloneDatabase, onServer, run, type TestDatabase } from '../support/database';
import { bindApiRole } from '../../apps/api/src/platform/api-role';

let database: TestDatabase;
let name: string;
beforeEach(async () => {
  database = await cloneDatabase();
  name = `login_${randomBytes(4).toString('hex')}`;
});
afterEach(async () => {
  await database.drop(); // and with it whatever the role was given there
  await onServer(`DROP ROLE ${name}`);
});

const asOwner = (sql: string) => run(database.ownerUrl, sql);

/** A login made the way an administrator would, with whatever else was given to it. */
async function login(rights = ''): Promise<string> {
  await onServer(`CREATE ROLE ${name} LOGIN PASSWORD 'secret' ${rights}`);
  return Object.assign(new URL(database.apiUrl), { username: name, password: 'secret' }).href;
}

describe('the role of the API', () => {
  test('a plain login is let in, and may then read and add records', async () => {
    const apiUrl = await login();
    await expect(run(apiUrl, 'SELECT * FROM lot')).rejects.toThrow('permission denied');

    await bindApiRole({ ...database, apiUrl });
    await bindApiRole({ ...database, apiUrl });

    expect(await run(apiUrl, 'SELECT * FROM lot')).toEqual([]);
  });

  test('several processes may let it in at once', async () => {
    const apiUrl = await login();

    await Promise.all([1, 2, 3, 4].map(() => bindApiRole({ ...database, apiUrl })));

    expect(await run(apiUrl, 'SELECT * FROM lot')).toEqual([]);
  });

  test('a login that may change a record is refused', async () => {
    const apiUrl = await login();
    await asOwner(`GRANT UPDATE ON reading TO ${name}`);

    await expect(bindApiRole({ ...database, apiUrl })).rejects.toThrow(
      `The role ${name} of DATABASE_URL may change records (it could alter reading): give the API a plain role`,
    );
  });

  test('a login that could make itself the owner is refused', async () => {
    const apiUrl = await login('CREATEROLE');

    await expect(bindApiRole({ ...database, apiUrl })).rejects.toThrow(`The role ${name} of DATABASE_URL may change records`);
  });

  test('the owner of the tables is refused', async () => {
    await login();

    await expect(bindApiRole({ ...database, apiUrl: database.ownerUrl })).rejects.toThrow(
      /larderbook_owner of DATABASE_URL may change records/,
    );
  });
});
