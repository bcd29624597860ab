import { expect, test } from 'vitest';
import { ApiProblem, NoConnection } from '../api/api-problem';
import type { Entry, OutboxStore } from './entry';
import { sendWaiting, type Outcome, type PauseReason } from './send';
import { makeSender } from './sender';

const anEntry = (id: string, more: Partial<Entry> = {}): Entry => ({
  id,
  method: 'PUT',
  path: `/readings/${id}`,
  body: {},
  what: `Reading ${id}`,
  establishmentId: 'shop',
  personId: 'ada',
  takenAt: '2026-03-02T09:00:00-06:00',
  state: 'waiting',
  failures: 0,
  ...more,
});

const problem = (status: number) => new ApiProblem({ type: 'test', code: 'test', status, title: `Status ${status}.` });

/** An outbox in memory, and a server that answers each delivery in turn; when it has said everything it says yes. */
function aShop(kept: Entry[], answers: (unknown | Error)[] = []) {
  const rows = new Map(kept.map((entry) => [entry.id, entry]));
  const delivered: string[] = [];
  const told: Outcome[] = [];
  const store: OutboxStore = {
    add: async (entry) => void (rows.has(entry.id) || rows.set(entry.id, entry)),
    all: async () => [...rows.values()],
    change: async (id, change) => {
      const row = rows.get(id);
      if (row) rows.set(id, { ...row, ...change });
    },
    remove: async (id) => void rows.delete(id),
  };
  const sending = {
    store,
    tell: (outcome: Outcome) => void told.push(outcome),
    mayDeliver: ({ personId }: Entry) => personId === 'ada',
    deliver: async ({ id }: Entry) => {
      delivered.push(id);
      const answer = answers.shift() ?? { verdict: 'met' };
      if (answer instanceof Error) throw answer;
      return answer;
    },
  };
  return { rows, delivered, told, store, sending };
}

test('entries go oldest first, one at a time, and leave the device only with the server’s yes', async () => {
  const shop = aShop([anEntry('1'), anEntry('2')]);
  expect(await sendWaiting(shop.sending)).toBe('empty');
  expect(shop.delivered).toEqual(['1', '2']);
  expect(shop.told).toMatchObject([
    { id: '1', state: 'sent', reply: { verdict: 'met' } },
    { id: '2', state: 'sent' },
  ]);
  expect(shop.rows.size).toBe(0);
});

test('without a network everything waits, in its order', async () => {
  const shop = aShop([anEntry('1'), anEntry('2')], [new NoConnection('No answer')]);
  expect(await sendWaiting(shop.sending)).toBe('no-connection');
  expect(shop.delivered).toEqual(['1']);
  expect([...shop.rows.values()].map(({ id, state }) => [id, state])).toEqual([
    ['1', 'waiting'],
    ['2', 'waiting'],
  ]);
});

test('an expired sign-in pauses the queue and refuses nothing', async () => {
  const shop = aShop([anEntry('1')], [problem(401)]);
  expect(await sendWaiting(shop.sending)).toBe('sign-in');
  expect(shop.rows.get('1')).toMatchObject({ state: 'waiting' });
});

test('a refused entry is parked with its sentence, and the next one goes', async () => {
  const shop = aShop([anEntry('1'), anEntry('2')], [problem(422)]);
  expect(await sendWaiting(shop.sending)).toBe('empty');
  expect(shop.rows.get('1')).toMatchObject({ state: 'parked', problem: { code: 'test', title: 'Status 422.' } });
  expect(shop.rows.has('2')).toBe(false);
  expect(shop.told[0]).toMatchObject({ id: '1', state: 'parked' });
});

test('a parked entry is not sent by itself', async () => {
  const shop = aShop([anEntry('1', { state: 'parked' })]);
  expect(await sendWaiting(shop.sending)).toBe('empty');
  expect(shop.delivered).toEqual([]);
  expect(shop.rows.has('1')).toBe(true);
});

test.each([500, 503, 429, 408])('status %i is not the entry’s fault: it waits', async (status) => {
  const shop = aShop([anEntry('1')], [problem(status)]);
  expect(await sendWaiting(shop.sending)).toBe('server-failed');
  expect(shop.rows.get('1')).toMatchObject({ state: 'waiting', failures: 1 });
});

test('an entry the server failed on three times no longer keeps the others waiting, and still is not dropped', async () => {
  const shop = aShop([anEntry('1', { failures: 2 }), anEntry('2')], [problem(500)]);
  expect(await sendWaiting(shop.sending)).toBe('server-failed');
  expect(shop.delivered).toEqual(['1', '2']);
  expect([...shop.rows.keys()]).toEqual(['1']);
});

test('but a server that fails on everything is left alone after two', async () => {
  const kept = ['1', '2', '3'].map((id) => anEntry(id, { failures: 5 }));
  const shop = aShop(kept, [problem(500), problem(500)]);
  expect(await sendWaiting(shop.sending)).toBe('server-failed');
  expect(shop.delivered).toEqual(['1', '2']);
});

test('an entry that was being sent when the tablet died is sent again', async () => {
  const shop = aShop([anEntry('1', { state: 'sending' })]);
  expect(await sendWaiting(shop.sending)).toBe('empty');
  expect(shop.delivered).toEqual(['1']);
});

test('another person’s entries wait for that person', async () => {
  const shop = aShop([anEntry('1', { personId: 'ben' }), anEntry('2')]);
  expect(await sendWaiting(shop.sending)).toBe('sign-in');
  expect(shop.delivered).toEqual(['2']);
  expect([...shop.rows.keys()]).toEqual(['1']);
});

test('an entry that the server failed on is tried again, though another person’s waits beside it', async () => {
  const shop = aShop([anEntry('1', { personId: 'ben' }), anEntry('2', { failures: 2 })], [problem(500)]);
  const { send, pauses, reasons } = aSender(shop);
  await send();
  expect(reasons).toEqual(['server-failed']);
  expect(pauses).toEqual([2000]);
});

function aSender(shop: ReturnType<typeof aShop>) {
  const pauses: number[] = [];
  const timers: (() => void)[] = [];
  const reasons: PauseReason[] = [];
  let inside = 0;
  const send = makeSender(shop.sending, {
    exclusively: async (work) => {
      expect(++inside).toBe(1);
      return work().finally(() => void inside--);
    },
    schedule: (work, ms) => {
      pauses.push(ms);
      timers.push(work);
    },
    paused: (why) => void reasons.push(why),
  });
  return { send, pauses, timers, reasons };
}

test('asked twice at once, it sends once', async () => {
  const shop = aShop([anEntry('1')]);
  const { send, reasons } = aSender(shop);
  await Promise.all([send(), send()]);
  expect(shop.delivered).toEqual(['1']);
  expect(reasons).toEqual(['empty']);
});

test('what is kept while sending goes too', async () => {
  const shop = aShop([anEntry('1')]);
  const { send } = aSender(shop);
  const first = send();
  await shop.store.add(anEntry('2'));
  await Promise.all([first, send()]);
  expect(shop.delivered).toEqual(['1', '2']);
});

test('it tries again after growing pauses, up to a minute, and starts afresh after a success', async () => {
  const shop = aShop(
    [anEntry('1')],
    Array.from({ length: 7 }, () => new NoConnection('No answer')),
  );
  const { send, pauses } = aSender(shop);
  for (let i = 0; i < 7; i++) await send();
  expect(pauses).toEqual([2000, 4000, 8000, 16_000, 32_000, 60_000, 60_000]);
  await send();
  expect(shop.rows.size).toBe(0);
});

test('an old timer does nothing once a newer round has been made', async () => {
  const shop = aShop([anEntry('1')], [new NoConnection('No answer'), new NoConnection('No answer')]);
  const { send, timers } = aSender(shop);
  await send();
  await send();
  timers[0]?.();
  expect(shop.delivered).toEqual(['1', '1']);
  timers[1]?.();
  await send();
  expect(shop.delivered).toEqual(['1', '1', '1']);
});

test('a pause for signing in sets no timer: signing in sends again', async () => {
  const shop = aShop([anEntry('1')], [problem(401)]);
  const { send, pauses, reasons } = aSender(shop);
  await send();
  expect(pauses).toEqual([]);
  expect(reasons).toEqual(['sign-in']);
});

test('a device that cannot read what it keeps says so, and tries again later', async () => {
  const shop = aShop([anEntry('1')]);
  shop.store.all = async () => Promise.reject(new Error('storage is gone'));
  const { send, pauses, reasons } = aSender(shop);
  await send();
  expect(reasons).toEqual(['device-failed']);
  expect(pauses).toEqual([2000]);
  expect(shop.rows.size).toBe(1);
});
