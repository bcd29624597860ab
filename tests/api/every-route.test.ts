import * as contracts from '@larderbook/contracts';
import { isStream, pathNames, ProblemBody, problemCodes, requestOf, type RouteShape } from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { Problem } from '../../apps/api/src/platform/problem';
import { readInput } from '../../apps/api/src/platform/read-input';
import { anotherShop, aShop, type Shop, type Worker } from '../builders/a-shop';
import { aStockedShop, everyRequest, type Stock } from '../builders/every-request';
import { ask } from '../support/ask';
import { run } from '../support/database';
import { aDevice, type Device } from '../support/device';
import { junk, withJunk } from '../support/junk';
import { routes, type RouteName } from '../support/routes';
import { startApp, type TestApp } from '../support/start-app';

let larder: TestApp;
let shop: Shop;
let other: Shop;
let stock: Stock;
let staff: Record<contracts.Role, Worker>;

beforeAll(async () => {
  larder = await startApp();
  shop = await aShop(larder);
  other = await anotherShop(larder);
  stock = await aStockedShop(shop, larder);
  const { operator, reviewer } = stock.kitchen;
  staff = { owner: shop.owner, operator, reviewer, inspector: await shop.hire('inspector') };
}, 60_000);
afterAll(() => larder.close());

const inputOf = (name: RouteName): Record<string, unknown> => everyRequest(stock)[name];
type Reply = Awaited<ReturnType<Device['get']>>;

/** The stable code of a problem; fails for anything that is none. */
function problemOf({ status, headers, body }: Reply): string {
  expect(headers['content-type']).toContain('application/problem+json');
  expect(problemCodes).toContain(ProblemBody.parse(body).code);
  expect(status).toBe(contracts.problems[body.code as contracts.ProblemCode]);
  return `${status} ${body.code}`;
}

describe('what is asked properly is answered by the contract', () => {
  const elsewhere: RouteName[] = ['openDemonstration', 'setUpShop']; // told by the story; done once, before this
  test.each(routes.filter(({ name }) => !elsewhere.includes(name)))('$name', async ({ name, route }) => {
    const by = name === 'signOut' ? await shop.hire('inspector') : shop.owner;
    const reply = await ask(by, route, inputOf(name));
    expect(reply.status, reply.text).toBe(200);
    if (isStream(route.returns)) expect(reply.headers['content-type']).toContain(route.returns.stream);
    else expect(route.returns.parse(reply.body)).toEqual(reply.body);
  });
});

/** A body, or the lack of one, that our own pages would not send. */
const raw = ({ method, path }: contracts.ApiRequest, body: string | undefined, type: string) =>
  fetch(`${larder.url}/api/v1${path}`, {
    method,
    headers: { 'x-larderbook': '1', 'content-type': type, cookie: shop.owner.cookie() },
    body,
  });

/** Whether it can be sent at all and is let through by the contract; what is refused there has no way further in. */
function isLetThrough(route: RouteShape, input: Record<string, unknown>): boolean {
  try {
    const { path, body } = requestOf(route, input);
    const query = Object.fromEntries(new URL(path, larder.url).searchParams);
    return readInput(route, { params: input, query, body }) !== undefined;
  } catch (refusal) {
    if (refusal instanceof Problem || refusal instanceof URIError) return false;
    throw refusal;
  }
}

test('there is a request for every route', () => {
  expect(routes.map(({ name }) => name).sort()).toEqual(Object.keys(everyRequest(stock)).sort());
  expect(routes.length).toBeGreaterThan(60);
});

describe.each(routes.filter(({ route }) => route.roles !== 'anyone'))('$name', ({ name, route }) => {
  test('is for nobody who is not signed in', async () => {
    expect(problemOf(await ask(aDevice(larder.app), route, inputOf(name)))).toBe('401 not-signed-in');
  });

  const refused = contracts.roles.filter((role) => !route.roles.includes(role));
  test.each(refused)('is not for the %s', async (role) => {
    expect(problemOf(await ask(staff[role], route, inputOf(name)))).toBe('403 not-allowed');
  });

  test('finds nothing of another shop', async () => {
    const by = name === 'signOut' ? await other.hire('inspector') : other.owner;
    const reply = await ask(by, route, inputOf(name));
    if (route.problems.includes('not-found')) expect(problemOf(reply)).toBe('404 not-found');
    else expect(reply.text ?? '').not.toMatch(new RegExp(ourIds().join('|')));
  });
});
const ourIds = () => [shop.establishmentId, shop.owner.personId, stock.open.lotId, stock.receiptId, stock.fresh];

describe('an id that stands for something else already', () => {
  const writing = routes.filter(({ route, name }) => route.method === 'PUT' && name !== 'setUpShop');
  const sendAs = (name: RouteName, route: RouteShape, id: string) =>
    ask(shop.owner, route, { ...inputOf(name), [pathNames(route.path)[0] ?? '']: id });

  test.each(writing)('makes no second record by $name', async ({ name, route }) => {
    const { open, receiptId, fresh, personId, planId } = stock;
    const taken = { lot: open.lotId, receiptId, fresh, personId, planId, shop: shop.establishmentId };
    for (const [kind, id] of Object.entries(taken)) {
      expect(`${kind}: ${problemOf(await sendAs(name, route, id))}`).toBe(`${kind}: 409 sent-differently`);
    }
  });

  test('is a conflict too where no device made it', async () => {
    const { deviationId = '' } = await stock.kitchen.weighCure(stock.open.lotId, { weight: { value: 25, unit: 'g' } });
    const [grant] = await run<{ id: string }>(larder.database.ownerUrl, 'SELECT id FROM role_grant LIMIT 1');
    expect(problemOf(await sendAs('openDeviation', contracts.openDeviation, deviationId))).toBe('409 sent-differently');
    expect(problemOf(await sendAs('grantRoles', contracts.grantRoles, grant?.id ?? ''))).toBe('409 sent-differently');
    const person = await sendAs('addPerson', contracts.addPerson, shop.owner.personId);
    expect(problemOf(person)).toBe('409 sent-differently');
  });
});

describe('what is no JSON object of the right kind is refused', () => {
  const reading = routes.filter(({ route }) => route.body);
  const noObjects = ['{', '', '[]', 'null', '"x"', '{"a":'.repeat(3), JSON.stringify([junk]), '{"__proto__":{"a":1}}'];
  const otherTypes = ['text/plain', 'application/x-www-form-urlencoded', 'multipart/form-data; boundary=x', 'junk'];
  test.each(reading)('$name', async ({ name, route }) => {
    const request = requestOf(route, inputOf(name));
    const answers = await Promise.all([
      ...noObjects.map((body) => raw(request, body, 'application/json')),
      ...otherTypes.map((type) => raw(request, JSON.stringify(request.body), type)),
    ]);
    expect(answers.map(({ status }) => status)).toEqual([...noObjects.map(() => 400), ...otherTypes.map(() => 415)]);
    for (const answer of answers) expect(problemCodes).toContain(ProblemBody.parse(await answer.json()).code);
  });

  const named = routes.filter(({ route }) => route.path.includes(':'));
  test.each(named)('an id in the path of $name', async ({ name, route }) => {
    for (const bad of ['1', 'null', '%00', '..%2f..', v7().slice(1), `${v7()}0`, "' OR 1=1", 'x'.repeat(3000)]) {
      const { body } = requestOf(route, inputOf(name));
      const path = `/api/v1${route.path.replace(/:\w+/, encodeURIComponent(bad))}`;
      const reply = await larder.app.inject({
        ...{ method: route.method, url: path, headers: { 'x-larderbook': '1', cookie: shop.owner.cookie() } },
        ...(body && { payload: body }),
      });
      expect([400, 404, 414], `${path} answered ${reply.statusCode}`).toContain(reply.statusCode);
    }
  });
});

describe('what the contract lets through is done or refused with a problem, whatever stands in it', () => {
  /** How often each route is tried; more with `JUNK=200 npx vitest …`, where a whole night is given to it. */
  const tries = Number(process.env.JUNK ?? 20);
  /** Each makes or tries a password, which is slow on purpose. */
  const slow: RouteName[] = ['signIn', 'addPerson', 'resetPassword', 'changePassword', 'setUpShop'];
  test.each(routes.filter(({ name }) => name !== 'openDemonstration'))('$name', async ({ name, route }) => {
    const { amends: _first, ...base } = inputOf(name);
    for (const { place, input } of withJunk(base, slow.includes(name) ? tries / 2 : tries)) {
      const own = { ...inputOf(name), amends: undefined, ...input };
      if (!isLetThrough(route, own)) continue;
      const reply = await ask(shop.owner, route, own);
      expect(reply.status, `${place} answered ${reply.status}: ${reply.text}`).toBeLessThan(500);
      if (reply.status !== 200) problemOf(reply);
    }
  });
});

test('after all that the book is as it was written', async () => {
  const { body } = await ask(staff.inspector, contracts.verifyLedger, {});
  expect(body).toMatchObject({ sound: true });
});
