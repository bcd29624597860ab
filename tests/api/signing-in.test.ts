import request from 'supertest';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { aShop, done, password, type Shop } from '../builders/a-shop';
import { code } from '../support/ask';
import { run } from '../support/database';
import { aDevice } from '../support/device';
import { appOn, startApp, type TestApp } from '../support/start-app';

const minute = 60_000;

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
    const reply = await request(larder.app.getHttpServer())
      .post('/api/v1/session')
      .set({ 'x-larderbook': '1', 'x-forwarded-proto': 'https', host: 'larder.example' })
      .send({ userName: 'odile', password });
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
      type: 'https://larderbook.invalid/problems/wrong-user-name-or-password',
      code: 'wrong-user-name-or-password',
      status: 401,
      title: 'The user name or the password is not right.',
      instance: '/api/v1/session',
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
    const reply = await request(other.getHttpServer())
      .get('/api/v1/session')
      .set('cookie', (await signedIn()).cookie());
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
    request(larder.app.getHttpServer())
      .post('/api/v1/session/password')
      .set({ cookie: shop.owner.cookie(), ...headers })
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
