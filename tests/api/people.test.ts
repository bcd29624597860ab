import request from 'supertest';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { anEstablishment, anotherShop, anOwner, aShop, done, password, type Shop } from '../builders/a-shop';
import { code } from '../support/ask';
import { run } from '../support/database';
import { aDevice } from '../support/device';
import { startApp, type TestApp } from '../support/start-app';

describe('people', () => {
  let larder: TestApp;
  let shop: Shop;
  let other: Shop;
  beforeAll(async () => {
    larder = await startApp();
    shop = await aShop(larder);
    other = await anotherShop(larder);
  });
  afterAll(() => larder.close());

  const aNewPerson = (fields: object = {}) => ({
    name: 'Bram Yarrow',
    userName: `bram-${v7().slice(-8)}`,
    password,
    roles: ['operator'],
    ...fields,
  });
  const grant = (personId: string, roles: string[], by = shop.owner) => by.put(`/role-grants/${v7()}`, { personId, roles });

  test('the owner makes an account, and the person signs in with it', async () => {
    const personId = v7();
    const made = await shop.owner.put(`/people/${personId}`, aNewPerson({ userName: 'bram' }));
    expect(made.body).toEqual({ personId, name: 'Bram Yarrow', userName: 'bram', roles: ['operator'], since: '2026-03-02T08:00:00.000Z' });
    const device = aDevice(larder.app);
    expect((await device.post('/session', { userName: 'bram', password })).body).toMatchObject({
      personId,
      establishmentId: shop.establishmentId,
    });
  });

  test('an account sent twice is made once; with another name it is refused', async () => {
    const personId = v7();
    const person = aNewPerson();
    const [one, two] = await Promise.all([0, 1].map(() => shop.owner.put(`/people/${personId}`, person)));
    expect(one?.body).toEqual(two?.body);
    expect(code(await shop.owner.put(`/people/${personId}`, { ...person, name: 'Bram Tallow' }))).toEqual([409, 'sent-differently']);
    const { people } = (await shop.owner.get('/people')).body;
    expect(people.filter(({ userName }: { userName: string }) => userName === person.userName)).toHaveLength(1);
  });

  test('a user name is one person’s alone, in this shop and in every other', async () => {
    expect(code(await shop.owner.put(`/people/${v7()}`, aNewPerson({ userName: 'ODILE' })))).toEqual([409, 'user-name-taken']);
    expect(code(await shop.owner.put(`/people/${v7()}`, aNewPerson({ userName: other.owner.userName })))).toEqual([409, 'user-name-taken']);
  });

  test('an id that is somebody’s already makes no second account', async () => {
    expect(code(await shop.owner.put(`/people/${shop.owner.personId}`, aNewPerson()))).toEqual([409, 'sent-differently']);
  });

  test('everyone sees who works in the shop, and nobody of another one', async () => {
    const stranger = await other.hire('inspector');
    const { people } = (await stranger.get('/people')).body;
    expect(people).toEqual([
      {
        personId: other.owner.personId,
        name: 'Tamsin Reed',
        userName: other.owner.userName,
        roles: ['owner'],
        since: '2026-03-02T08:00:00.000Z',
      },
      {
        personId: stranger.personId,
        name: 'The inspector',
        userName: stranger.userName,
        roles: ['inspector'],
        since: '2026-03-02T08:00:00.000Z',
      },
    ]);
  });

  test.each(['operator', 'reviewer', 'inspector'] as const)(
    '%s may make no account, grant no role, reset no password, change no establishment',
    async (role) => {
      const worker = await shop.hire(role);
      const replies = await Promise.all([
        worker.put(`/people/${v7()}`, aNewPerson()),
        grant(worker.personId, ['owner'], worker),
        worker.post(`/people/${shop.owner.personId}/password`, { password: 'a new long password' }),
        worker.put(`/establishment-details/${v7()}`, anEstablishment()),
      ]);
      expect(replies.map(code)).toEqual(Array(4).fill([403, 'not-allowed']));
    },
  );

  test('a role granted counts from the next request on', async () => {
    const worker = await shop.hire('operator');
    expect((await grant(worker.personId, ['reviewer', 'operator'])).body.roles).toEqual(['reviewer', 'operator']);
    expect((await worker.get('/session')).body.roles).toEqual(['reviewer', 'operator']);
  });

  test('whoever has no role has left: their sessions end and they cannot sign in, but their name stays', async () => {
    const worker = await shop.hire('operator');
    await done(grant(worker.personId, []));
    expect(code(await worker.get('/session'))).toEqual([401, 'not-signed-in']);
    expect(code(await aDevice(larder.app).post('/session', { userName: worker.userName, password }))).toEqual([
      401,
      'wrong-user-name-or-password',
    ]);
    expect((await shop.owner.get('/people')).body.people).toContainEqual(expect.objectContaining({ personId: worker.personId, roles: [] }));

    await done(grant(worker.personId, ['operator']));
    expect((await worker.get('/session')).status).toBe(401);
    expect((await aDevice(larder.app).post('/session', { userName: worker.userName, password })).status).toBe(200);
  });

  test('the last owner stays owner, also when two owners step down at once', async () => {
    const { owner, hire } = await anotherShop(larder);
    expect(code(await grant(owner.personId, ['operator'], owner))).toEqual([409, 'last-owner']);
    const second = await hire('owner');
    const replies = await Promise.all([grant(owner.personId, ['operator'], owner), grant(second.personId, ['reviewer'], second)]);
    expect(replies.map(code).sort()).toEqual([
      [200, undefined],
      [409, 'last-owner'],
    ]);
  });

  test('roles of a person of another shop are none of this one’s business', async () => {
    expect(code(await grant(other.owner.personId, ['operator']))).toEqual([404, 'not-found']);
    expect(code(await shop.owner.post(`/people/${other.owner.personId}/password`, { password: 'a new long password' }))).toEqual([
      404,
      'not-found',
    ]);
    expect((await other.owner.get('/session')).body.roles).toEqual(['owner']);
  });

  test('a person changes their own password; their other sessions end', async () => {
    const worker = await shop.hire('operator');
    const elsewhere = aDevice(larder.app);
    const enter = (given: string) => elsewhere.post('/session', { userName: worker.userName, password: given });
    await done(enter(password));
    await done(worker.post('/session/password', { current: password, next: 'a new long password' }));

    expect((await worker.get('/session')).status).toBe(200);
    expect((await elsewhere.get('/session')).status).toBe(401);
    expect((await enter(password)).status).toBe(401);
    expect((await enter('a new long password')).status).toBe(200);
  });

  test('not without the present one, and not by trying it out', async () => {
    const worker = await shop.hire('operator');
    const change = () => worker.post('/session/password', { current: 'guess guess', next: 'a new long password' });
    for (let tries = 0; tries < 5; tries += 1) expect(code(await change())).toEqual([401, 'wrong-user-name-or-password']);
    expect(code(await change())).toEqual([429, 'too-many-attempts']);
    expect((await worker.get('/session')).status).toBe(200);
  });

  test('the owner gives a person a new password; their sessions end, and the ledger says who did it', async () => {
    const worker = await shop.hire('operator');
    await done(shop.owner.post(`/people/${worker.personId}/password`, { password: 'a new long password' }));
    expect((await worker.get('/session')).status).toBe(401);
    expect((await aDevice(larder.app).post('/session', { userName: worker.userName, password: 'a new long password' })).status).toBe(200);
    const [entry] = await run(larder.database.ownerUrl, `SELECT person, subject FROM ledger_entry WHERE kind = 'password reset'`);
    expect(entry).toEqual({ person: shop.owner.personId, subject: worker.personId });
  });

  test('the establishment’s details change for everyone, and the earlier ones stay', async () => {
    const { establishmentId, owner, hire } = await anotherShop(larder);
    const details = anEstablishment({ units: 'metric', paper: 'A4', lotCodePattern: '{product}-{YY}{DDD}-{n}' });
    const detailsId = v7();
    expect((await owner.put(`/establishment-details/${detailsId}`, details)).body).toEqual(details);
    expect((await (await hire('operator')).get('/session')).body.establishment).toEqual(details);
    expect(code(await owner.put(`/establishment-details/${detailsId}`, anEstablishment()))).toEqual([409, 'sent-differently']);
    expect(
      await run(larder.database.ownerUrl, 'SELECT FROM establishment_details WHERE establishment_id = $1', [establishmentId]),
    ).toHaveLength(2);
    expect((await shop.owner.get('/session')).body.establishment.units).toBe('US');
  });

  test('a lot code pattern that would give two lots one code is refused', async () => {
    const reply = await shop.owner.put(`/establishment-details/${v7()}`, anEstablishment({ lotCodePattern: '{YY}{DDD}' }));
    expect(reply.body).toMatchObject({ code: 'invalid-input', detail: 'The pattern needs {n}, so that two lots of a day differ.' });
  });

  test('a device is kept as it names itself, or as nothing', async () => {
    const { establishmentId, owner } = await anotherShop(larder);
    const said = ['x'.repeat(41), encodeURIComponent('Wurstküche 2'), 'half%', '%07bell', ''];
    for (const station of said) {
      const reply = await request(larder.app.getHttpServer())
        .put(`/api/v1/role-grants/${v7()}`)
        .set({ cookie: owner.cookie(), 'x-larderbook': '1', 'x-station': station })
        .send({ personId: owner.personId, roles: ['owner'] });
      expect(reply.status).toBe(200);
    }
    const entries = await run(
      larder.database.ownerUrl,
      `SELECT station FROM ledger_entry WHERE establishment_id = $1 AND seq > 1 ORDER BY seq`,
      [establishmentId],
    );
    expect(entries.map(({ station }) => station)).toEqual(['', 'Wurstküche 2', '', '', '']);
  });

  test.each<[string, string | object]>([
    ['nothing', {}],
    ['a list', [anOwner()]],
    ['lists nested without end', '['.repeat(50_000) + ']'.repeat(50_000)],
    ['objects nested without end', '{"name":'.repeat(50_000) + '1' + '}'.repeat(50_000)],
    [
      'numbers where text belongs',
      { owner: 1, establishment: 2, userName: 3, password: 4, current: 5, next: 6, personId: 7, roles: 8, name: 9 },
    ],
    [
      'NUL characters',
      {
        owner: '\u0000',
        userName: '\u0000',
        password: 'quite long \u0000',
        current: '\u0000',
        next: 'quite long \u0000',
        roles: ['\u0000'],
      },
    ],
    [
      'half characters',
      {
        owner: '\ud83d',
        userName: '\ud83d',
        password: 'quite long \ud83d',
        current: '\ud83d',
        next: 'quite long \ud83d',
        roles: ['\ud83d'],
      },
    ],
    [
      'far too much text',
      { name: 'x'.repeat(1e5), userName: 'x'.repeat(1e5), password: 'x'.repeat(1e5), current: 'x'.repeat(1e5), next: 'x'.repeat(1e5) },
    ],
    ['prototypes', '{"__proto__":{"roles":["owner"]},"constructor":{"prototype":{"roles":["owner"]}}}'],
    ['half of itself', '{"userName":'],
  ])('a body of %s is refused politely everywhere', async (_case, body) => {
    const { personId, cookie } = shop.owner;
    const ask = (method: 'put' | 'post', path: string) =>
      request(larder.app.getHttpServer())
        [method](`/api/v1${path}`)
        .set({ cookie: cookie(), 'x-larderbook': '1', 'content-type': 'application/json' })
        .send(typeof body === 'string' ? body : JSON.stringify(body));
    const replies = await Promise.all([
      ask('put', `/establishments/${v7()}`),
      ask('post', '/session'),
      ask('post', '/session/password'),
      ask('put', `/people/${v7()}`),
      ask('put', `/role-grants/${v7()}`),
      ask('post', `/people/${personId}/password`),
      ask('put', `/establishment-details/${v7()}`),
    ]);
    expect(replies.map(code)).toEqual(Array(7).fill([400, 'invalid-input']));
  });

  test.each([
    ['plain text', 'odile', 'text/plain'],
    ['a form', 'userName=odile', 'application/x-www-form-urlencoded'],
  ])('%s is refused politely', async (_case, body, type) => {
    const reply = await request(larder.app.getHttpServer())
      .post('/api/v1/session')
      .set({ 'x-larderbook': '1', 'content-type': type })
      .send(body);
    expect(code(reply)).toEqual([415, 'unsupported-media-type']);
  });

  test.each(['/people/odile', '/people/%00', '/people/..%2f..%2fetc', '/people/%e0%a4%a'])('%s is the address of nobody', async (path) => {
    const reply = await shop.owner.put(path, aNewPerson());
    expect([400, 404]).toContain(reply.status);
  });
});
