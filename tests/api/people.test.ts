import request from 'supertest';
import { v7 } from 'uuid';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { anEstablishment, anotherShop, anOwner, aShop, done, password, type Shop } from '../builders/a-shop';
import { run } from '../support/database';
import { aDevice, type Device } from '../support/device';
import { appOn, startApp, type TestApp } from '../support/start-app';

const minute = 60_000;
const code = ({ status, body }: { status: number; body: { code?: string } }) => [status, body.code];

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
      personId: owner.personId, name: 'Odile Farrow', userName: 'odile', roles: ['owner'], establishmentId, demonstration: false,
      establishment: anEstablishment(),
    });
    expect((await device.get('/session')).body).toEqual(reply.body);
    expect(await rowsIn('ledger_entry')).toMatchObject([{ seq: '1', kind: 'establishment', person: owner.personId, station: 'tablet by the smoker' }]);
  });

  test('keeps no password that could be read or tried out, in the ledger or beside it', async () => {
    await setUp(aDevice(larder.app), v7());
    const [account] = await rowsIn('sign_in_account');
    expect(account?.password).toMatch(/^\$argon2id\$v=19\$m=19456,t=2,p=1\$/);
    const everything = JSON.stringify(await Promise.all(['ledger_entry', 'acknowledgement', 'person', 'sign_in', 'sign_in_account'].map(rowsIn)));
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
    expect(replies.map(code).sort()).toEqual([[200, undefined], [409, 'already-set-up']]);
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
    const reply = await aDevice(larder.app).put(`/establishments/${v7()}`, { owner: anOwner(), establishment: anEstablishment(), ...changed });
    expect(code(reply)).toEqual([400, 'invalid-input']);
    expect(reply.body.errors).toEqual([{ pointer, detail: expect.any(String) }]);
    expect((await aDevice(larder.app).get('/first-run')).body.hasShop).toBe(false);
  });
});

describe('signing in', () => {
  let larder: TestApp;
  beforeAll(async () => {
    larder = await startApp();
    await aShop(larder);
  });
  beforeEach(() => larder.clock.moveOn(16 * minute)); // what was tried in the test before no longer counts
  afterAll(() => larder.close());

  const signedIn = async () => {
    const device = aDevice(larder.app);
    await done(device.post('/session', { userName: 'odile', password }));
    return device;
  };
  const enter = (given: object, device = aDevice(larder.app)) => device.post('/session', { userName: 'odile', password, ...given });

  test('takes user name and password, in whatever case the name is typed', async () => {
    expect((await enter({ userName: ' Odile ' })).body).toMatchObject({ name: 'Odile Farrow', roles: ['owner'] });
  });

  test('gives a cookie that scripts cannot read and other sites cannot send', async () => {
    const [cookie] = (await enter({})).headers['set-cookie'] ?? [];
    expect(cookie).toMatch(/^larderbook\.session_token=[^;]+;.*HttpOnly/i);
    expect(cookie).toMatch(/SameSite=Lax/i);
    expect(cookie).toMatch(/Path=\//);
    expect(cookie).not.toMatch(/Secure/i);
  });

  test('over https the cookie never travels without it', async () => {
    const reply = await request(larder.app.getHttpServer()).post('/api/v1/session')
      .set({ 'x-larderbook': '1', 'x-forwarded-proto': 'https', host: 'larder.example' }).send({ userName: 'odile', password });
    expect(reply.headers['set-cookie']?.[0]).toMatch(/; Secure$/);
  });

  test.each([
    ['a wrong password', { password: 'quite wrong indeed' }],
    ['an unknown user name', { userName: 'nobody' }],
    ['an empty user name', { userName: '' }],
    ['an empty password', { password: '' }],
    ['somebody’s mail address', { userName: 'odile@larderbook.invalid' }],
  ])('with %s is refused in the same words', async (_case, given) => {
    const reply = await enter(given);
    expect(reply.status).toBe(401);
    expect(reply.body).toEqual({
      type: 'https://larderbook.invalid/problems/wrong-user-name-or-password', code: 'wrong-user-name-or-password', status: 401,
      title: 'The user name or the password is not right.', instance: '/api/v1/session',
    });
    expect(reply.headers['set-cookie']).toBeUndefined();
  });

  test('has to wait after five wrong tries, even with the right password, and may again a quarter of an hour later', async () => {
    for (let tries = 0; tries < 5; tries += 1) expect((await enter({ password: 'guess guess' })).status).toBe(401);
    expect(code(await enter({}))).toEqual([429, 'too-many-attempts']);
    larder.clock.moveOn(15 * minute);
    expect((await enter({})).status).toBe(200);
  });

  test('lets no more than five of many guesses at once be looked at', async () => {
    const replies = await Promise.all(Array.from({ length: 12 }, (_, index) => enter({ password: `guess number ${index}` })));
    expect(replies.filter(({ status }) => status === 401).length).toBeLessThanOrEqual(5);
    expect(replies.filter(({ status }) => status === 429).length).toBeGreaterThanOrEqual(7);
  });

  test('counts tries for a user name that does not exist as well', async () => {
    for (let tries = 0; tries < 5; tries += 1) await enter({ userName: 'nobody' });
    expect(code(await enter({ userName: 'nobody' }))).toEqual([429, 'too-many-attempts']);
  });

  test('forgets earlier mistakes once the password was right', async () => {
    for (let tries = 0; tries < 4; tries += 1) await enter({ password: 'guess guess' });
    expect((await enter({})).status).toBe(200);
    for (let tries = 0; tries < 4; tries += 1) await enter({ password: 'guess guess' });
    expect((await enter({})).status).toBe(200);
  });

  test('somebody else’s wrong tries do not keep a person out', async () => {
    for (let tries = 0; tries < 6; tries += 1) await enter({ userName: 'nobody' });
    expect((await enter({})).status).toBe(200);
  });

  test('guessing at many user names from one address is slowed too', async () => {
    for (let tries = 0; tries < 30; tries += 1) await enter({ userName: `name-${tries}` });
    expect(code(await enter({ userName: 'name-31' }))).toEqual([429, 'too-many-attempts']);
  });

  test('ends by itself after a week', async () => {
    const device = await signedIn();
    larder.clock.moveOn(7 * 24 * 60 * minute - 1);
    expect((await device.get('/session')).status).toBe(200);
    larder.clock.moveOn(1);
    expect(code(await device.get('/session'))).toEqual([401, 'not-signed-in']);
  });

  test('counts in every process on the database', async () => {
    const other = await appOn(larder.database, larder.clock);
    await other.init();
    await other.getHttpAdapter().getInstance().ready();
    const reply = await request(other.getHttpServer()).get('/api/v1/session').set('cookie', (await signedIn()).cookie());
    expect(reply.body).toMatchObject({ name: 'Odile Farrow' });
    await other.close();
  });

  test('out ends the session for good, and wipes the cookie', async () => {
    const device = await signedIn();
    const cookie = device.cookie();
    const reply = await device.delete('/session');
    expect(reply.headers['set-cookie']?.[0]).toMatch(/^larderbook\.session_token=;.*Max-Age=0/i);
    const replayed = await request(larder.app.getHttpServer()).get('/api/v1/session').set('cookie', cookie);
    expect(code(replayed)).toEqual([401, 'not-signed-in']);
  });

  test.each([
    ['no cookie', ''],
    ['an empty one', 'larderbook.session_token='],
    ['one without a signature', 'larderbook.session_token=abcdefgh'],
    ['one with a wrong signature', 'larderbook.session_token=abcdefgh.c2lnbmVk'],
    ['one that is not even text', 'larderbook.session_token=%E0%A4%A.%00'],
  ])('with %s nobody is signed in', async (_case, cookie) => {
    expect(code(await request(larder.app.getHttpServer()).get('/api/v1/session').set('cookie', cookie))).toEqual([401, 'not-signed-in']);
  });

  test('a token taken from the database is worth nothing without the signature', async () => {
    const [session] = await run<{ token: string }>(larder.database.ownerUrl, 'SELECT token FROM sign_in_session');
    const cookie = `larderbook.session_token=${session?.token}.${Buffer.alloc(32).toString('base64')}`;
    expect((await request(larder.app.getHttpServer()).get('/api/v1/session').set('cookie', cookie)).status).toBe(401);
  });
});

describe('a page of somebody else', () => {
  let larder: TestApp;
  let shop: Shop;
  beforeAll(async () => {
    larder = await startApp();
    shop = await aShop(larder);
  });
  afterAll(() => larder.close());

  const send = (headers: Record<string, string>) =>
    request(larder.app.getHttpServer()).post('/api/v1/session/password').set({ cookie: shop.owner.cookie(), ...headers })
      .send({ current: 'not it at all', next: 'a new long password' });

  test.each([
    ['cannot write without the header that only scripts of ours send', {}],
    ['cannot write from its own origin', { 'x-larderbook': '1', origin: 'https://elsewhere.example' }],
    ['cannot write from a frame without an origin', { 'x-larderbook': '1', origin: 'null' }],
    ['cannot write from another port of this machine', { 'x-larderbook': '1', origin: 'http://127.0.0.1:1' }],
  ])('%s', async (_case, headers) => {
    expect(code(await send(headers))).toEqual([403, 'foreign-page']);
  });

  test('cannot sign a browser in as somebody else', async () => {
    const reply = await request(larder.app.getHttpServer()).post('/api/v1/session').send({ userName: 'odile', password });
    expect(code(reply)).toEqual([403, 'foreign-page']);
  });

  test('is told from our own by the address it was opened under', async () => {
    const reply = await send({ 'x-larderbook': '1', host: 'larder.example:4180', origin: 'https://larder.example:4180' });
    expect(code(reply)).toEqual([401, 'wrong-user-name-or-password']);
  });
});

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

  const aNewPerson = (fields: object = {}) => ({ name: 'Bram Yarrow', userName: `bram-${v7().slice(-8)}`, password, roles: ['operator'], ...fields });
  const grant = (personId: string, roles: string[], by = shop.owner) => by.put(`/role-grants/${v7()}`, { personId, roles });

  test('the owner makes an account, and the person signs in with it', async () => {
    const personId = v7();
    const made = await shop.owner.put(`/people/${personId}`, aNewPerson({ userName: 'bram' }));
    expect(made.body).toEqual({ personId, name: 'Bram Yarrow', userName: 'bram', roles: ['operator'], since: '2026-03-02T08:00:00.000Z' });
    const device = aDevice(larder.app);
    expect((await device.post('/session', { userName: 'bram', password })).body).toMatchObject({ personId, establishmentId: shop.establishmentId });
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
      { personId: other.owner.personId, name: 'Tamsin Reed', userName: other.owner.userName, roles: ['owner'], since: '2026-03-02T08:00:00.000Z' },
      { personId: stranger.personId, name: 'The inspector', userName: stranger.userName, roles: ['inspector'], since: '2026-03-02T08:00:00.000Z' },
    ]);
  });

  test.each(['operator', 'reviewer', 'inspector'] as const)('%s may make no account, grant no role, reset no password, change no establishment', async (role) => {
    const worker = await shop.hire(role);
    const replies = await Promise.all([
      worker.put(`/people/${v7()}`, aNewPerson()),
      grant(worker.personId, ['owner'], worker),
      worker.post(`/people/${shop.owner.personId}/password`, { password: 'a new long password' }),
      worker.put(`/establishment-details/${v7()}`, anEstablishment()),
    ]);
    expect(replies.map(code)).toEqual(Array(4).fill([403, 'not-allowed']));
  });

  test('a role granted counts from the next request on', async () => {
    const worker = await shop.hire('operator');
    expect((await grant(worker.personId, ['reviewer', 'operator'])).body.roles).toEqual(['reviewer', 'operator']);
    expect((await worker.get('/session')).body.roles).toEqual(['reviewer', 'operator']);
  });

  test('whoever has no role has left: their sessions end and they cannot sign in, but their name stays', async () => {
    const worker = await shop.hire('operator');
    await done(grant(worker.personId, []));
    expect(code(await worker.get('/session'))).toEqual([401, 'not-signed-in']);
    expect(code(await aDevice(larder.app).post('/session', { userName: worker.userName, password }))).toEqual([401, 'wrong-user-name-or-password']);
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
    expect(replies.map(code).sort()).toEqual([[200, undefined], [409, 'last-owner']]);
  });

  test('roles of a person of another shop are none of this one’s business', async () => {
    expect(code(await grant(other.owner.personId, ['operator']))).toEqual([404, 'not-found']);
    expect(code(await shop.owner.post(`/people/${other.owner.personId}/password`, { password: 'a new long password' }))).toEqual([404, 'not-found']);
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
    expect(await run(larder.database.ownerUrl, 'SELECT FROM establishment_details WHERE establishment_id = $1', [establishmentId])).toHaveLength(2);
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
      const reply = await request(larder.app.getHttpServer()).put(`/api/v1/role-grants/${v7()}`)
        .set({ cookie: owner.cookie(), 'x-larderbook': '1', 'x-station': station }).send({ personId: owner.personId, roles: ['owner'] });
      expect(reply.status).toBe(200);
    }
    const entries = await run(larder.database.ownerUrl, `SELECT station FROM ledger_entry WHERE establishment_id = $1 AND seq > 1 ORDER BY seq`, [establishmentId]);
    expect(entries.map(({ station }) => station)).toEqual(['', 'Wurstküche 2', '', '', '']);
  });

  test.each<[string, string | object]>([
    ['nothing', {}],
    ['a list', [anOwner()]],
    ['lists nested without end', '['.repeat(50_000) + ']'.repeat(50_000)],
    ['objects nested without end', '{"name":'.repeat(50_000) + '1' + '}'.repeat(50_000)],
    ['numbers where text belongs', { owner: 1, establishment: 2, userName: 3, password: 4, current: 5, next: 6, personId: 7, roles: 8, name: 9 }],
    ['NUL characters', { owner: '\u0000', userName: '\u0000', password: 'quite long \u0000', current: '\u0000', next: 'quite long \u0000', roles: ['\u0000'] }],
    ['half characters', { owner: '\ud83d', userName: '\ud83d', password: 'quite long \ud83d', current: '\ud83d', next: 'quite long \ud83d', roles: ['\ud83d'] }],
    ['far too much text', { name: 'x'.repeat(1e5), userName: 'x'.repeat(1e5), password: 'x'.repeat(1e5), current: 'x'.repeat(1e5), next: 'x'.repeat(1e5) }],
    ['prototypes', '{"__proto__":{"roles":["owner"]},"constructor":{"prototype":{"roles":["owner"]}}}'],
    ['half of itself', '{"userName":'],
  ])('a body of %s is refused politely everywhere', async (_case, body) => {
    const { personId, cookie } = shop.owner;
    const ask = (method: 'put' | 'post', path: string) =>
      request(larder.app.getHttpServer())[method](`/api/v1${path}`)
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
    const reply = await request(larder.app.getHttpServer()).post('/api/v1/session').set({ 'x-larderbook': '1', 'content-type': type }).send(body);
    expect(code(reply)).toEqual([415, 'unsupported-media-type']);
  });

  test.each(['/people/odile', '/people/%00', '/people/..%2f..%2fetc', '/people/%e0%a4%a'])('%s is the address of nobody', async (path) => {
    const reply = await shop.owner.put(path, aNewPerson());
    expect([400, 404]).toContain(reply.status);
  });
});
