import { v7 } from 'uuid';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { anEstablishment, anotherShop, anOwner, done, password } from '../builders/a-shop';
import { code } from '../support/ask';
import { run } from '../support/database';
import { aDevice, type Device } from '../support/device';
import { startApp, type TestApp } from '../support/start-app';

describe('the first run', () => {
  let larder: TestApp;
  beforeEach(async () => void (larder = await startApp()));
  afterEach(() => larder.close());

  const setUp = (device: Device, establishmentId: string, changed: { owner?: object; establishment?: object } = {}) =>
    device.put(`/establishments/${establishmentId}`, { owner: anOwner(), establishment: anEstablishment(), ...changed });
  const rowsIn = (table: string) => run(larder.database.ownerUrl, `SELECT * FROM ${table}`);

  test('finds no shop, and a shop once it is set up', async () => {
    const device = aDevice(larder.app);
    expect((await device.get('/first-run')).body).toEqual({ hasShop: false, hasDemonstration: false });
    await done(setUp(device, v7()));
    expect((await device.get('/first-run')).body).toEqual({ hasShop: true, hasDemonstration: false });
  });

  test('makes the establishment and its owner together, signed in, in one line of the ledger', async () => {
    const device = aDevice(larder.app);
    const owner = anOwner();
    const establishmentId = v7();
    const reply = await setUp(device, establishmentId, { owner });

    expect(reply.body).toEqual({
      personId: owner.personId,
      name: 'Odile Farrow',
      userName: 'odile',
      roles: ['owner'],
      establishmentId,
      demonstration: false,
      establishment: anEstablishment(),
    });
    expect((await device.get('/session')).body).toEqual(reply.body);
    expect(await rowsIn('ledger_entry')).toMatchObject([
      { seq: '1', kind: 'establishment', person: owner.personId, station: 'tablet by the smoker' },
    ]);
  });

  test('keeps no password that could be read or tried out, in the ledger or beside it', async () => {
    await setUp(aDevice(larder.app), v7());
    const [account] = await rowsIn('sign_in_account');
    expect(account?.password).toMatch(/^\$argon2id\$v=19\$m=19456,t=2,p=1\$/);
    const everything = JSON.stringify(
      await Promise.all(['ledger_entry', 'ledger_text', 'person', 'sign_in', 'sign_in_account'].map(rowsIn)),
    );
    expect(everything).not.toContain(password);
  });

  test('sent again lands once and signs in again; sent with another password it is refused', async () => {
    const establishmentId = v7();
    const owner = anOwner();
    const first = await setUp(aDevice(larder.app), establishmentId, { owner });
    const device = aDevice(larder.app);
    const again = await setUp(device, establishmentId, { owner });
    expect(again.body).toEqual(first.body);
    expect((await device.get('/session')).status).toBe(200);

    const other = await setUp(aDevice(larder.app), establishmentId, { owner: { ...owner, password: 'another password' } });
    expect(code(other)).toEqual([409, 'sent-differently']);
    expect(await rowsIn('establishment')).toHaveLength(1);
  });

  test('happens once, even when two tablets set up at the same moment', async () => {
    const replies = await Promise.all([
      setUp(aDevice(larder.app), v7()),
      setUp(aDevice(larder.app), v7(), { owner: anOwner({ userName: 'second' }) }),
    ]);
    expect(replies.map(code).sort()).toEqual([
      [200, undefined],
      [409, 'already-set-up'],
    ]);
    expect(await rowsIn('establishment')).toHaveLength(1);
    expect(await rowsIn('sign_in')).toHaveLength(1);
  });

  test('leaves nothing behind when it cannot be finished', async () => {
    const other = await anotherShop(larder);
    const reply = await setUp(aDevice(larder.app), v7(), { owner: anOwner({ userName: other.owner.userName }) });
    expect(code(reply)).toEqual([409, 'user-name-taken']);
    expect(await rowsIn('establishment')).toHaveLength(1);
    expect((await aDevice(larder.app).get('/first-run')).body).toMatchObject({ hasShop: false });
  });

  test('cannot write into the demonstration by naming its establishment', async () => {
    const other = await anotherShop(larder);
    expect(code(await setUp(aDevice(larder.app), other.establishmentId))).toEqual([409, 'sent-differently']);
    expect(await rowsIn('person')).toHaveLength(1);
  });
});

describe('a first run that is not filled in right', () => {
  let larder: TestApp;
  beforeAll(async () => void (larder = await startApp()));
  afterAll(() => larder.close());

  test.each([
    ['a short password', { owner: { ...anOwner(), password: 'short' } }, '#/owner/password'],
    ['a user name with a space', { owner: { ...anOwner(), userName: 'o dile' } }, '#/owner/userName'],
    ['an offset for a time zone', { establishment: anEstablishment({ timeZone: '+05:30' }) }, '#/establishment/timeZone'],
    ['a time zone that is none', { establishment: anEstablishment({ timeZone: 'Wrenfold/Quarry' }) }, '#/establishment/timeZone'],
    ['a lot code that comes twice', { establishment: anEstablishment({ lotCodePattern: '{YY}{DDD}' }) }, '#/establishment/lotCodePattern'],
  ])('refuses %s and says where', async (_case, changed, pointer) => {
    const reply = await aDevice(larder.app).put(`/establishments/${v7()}`, {
      owner: anOwner(),
      establishment: anEstablishment(),
      ...changed,
    });
    expect(code(reply)).toEqual([400, 'invalid-input']);
    expect(reply.body.errors).toMatchObject([{ pointer, detail: expect.any(String) }]);
    expect((await aDevice(larder.app).get('/first-run')).body.hasShop).toBe(false);
  });
});
