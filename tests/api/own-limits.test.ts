import * as contract from '@larderbook/contracts';
import type { InputOf, ReplyOf } from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { anotherShop, aShop, done, type Shop, type Worker } from '../builders/a-shop';
import { aDwellRow, heldFor, ownLimits } from '../builders/own-limits';
import { ask, code } from '../support/ask';
import { run } from '../support/database';
import { startApp, type TestApp } from '../support/start-app';

let larder: TestApp;
let shop: Shop;
let owner: Worker;
beforeAll(async () => {
  larder = await startApp();
  shop = await aShop(larder);
  owner = shop.owner;
});
afterAll(() => larder.close());
/** The first edition of a set, anew for each test. */
let first: string;
beforeEach(async () => {
  first = v7();
  await done(write(ownLimits(), first));
});

type Fields = Parameters<typeof ownLimits>[0];
const write = (fields: Fields, ownSetId = v7(), by = owner) => ask(by, contract.recordOwnLimits, { ownSetId, ...ownLimits(fields) });
const tell = <R extends contract.RouteShape>(route: R, input: InputOf<R>) => done<ReplyOf<R>>(ask(owner, route, input));
const listed = async () => (await tell(contract.listLimitSets, {})).sets.filter(({ own }) => own);
const secondEdition = async (fields: Fields = {}) => {
  const ownSetId = v7();
  await done(write({ edition: '2026-2', replaces: first, rows: [heldFor(720)], ...fields }, ownSetId));
  return ownSetId;
};

describe('an edition of limits of one’s own', () => {
  test('is kept as it was written, and stands among the sets after the published ones', async () => {
    const { sets } = await tell(contract.listLimitSets, {});
    expect(sets.find(({ setId }) => setId === first)).toEqual({
      setId: first,
      jurisdiction: 'own',
      title: 'Our smokehouse',
      edition: '2026-1',
      validFrom: '2026-02-01',
      usual: false,
      rows: 1,
      own: { recordedAt: '2026-03-02T08:00:00.000Z', recordedBy: owner.name },
    });
    expect(sets.findIndex(({ own }) => own)).toBe(sets.findLastIndex(({ own }) => !own) + 1);
    expect(await tell(contract.rowsToTake, { set: first })).toEqual({ rows: [aDwellRow()] });
  });

  test('shows each figure with its source, the paragraph and its conditions, to everyone in the shop', async () => {
    const inspector = await shop.hire('inspector');
    const { body } = await ask(inspector, contract.showLimitSet, { set: first });
    expect(body.rows).toMatchObject([
      {
        rowId: 'smoked-sausage-core',
        says: ['145 °F for 10 min', '62.8 °C for 10 min'],
        paragraph: 'Binder 3, tab B',
        source: { citation: 'Validation of our smokehouse, report 7', confirmed: true },
        conditions: ['in the small smokehouse, fan at full speed'],
        usedBy: [],
      },
    ]);
  });

  test('is replaced by a later one; both stay, and the earlier one says what counts now', async () => {
    const second = await secondEdition();
    expect((await listed()).filter(({ setId }) => [first, second].includes(setId))).toMatchObject([
      { setId: second, edition: '2026-2', own: { replaces: first } },
      { setId: first, edition: '2026-1', own: { replacedBy: second } },
    ]);
    expect((await tell(contract.showLimitSet, { set: first })).newer).toMatchObject({ setId: second });
    expect((await tell(contract.showLimitSet, { set: second })).newer).toBeUndefined();
  });

  test('takes the place only of one that has not been replaced, and of one that is there', async () => {
    await secondEdition();
    const again = await write({ edition: '2026-3', replaces: first });
    expect(code(again)).toEqual([409, 'edition-replaced-already']);
    expect(again.body.detail).toBe('Edition 2026-1 was replaced by edition 2026-2. Start from that one.');
    expect(code(await write({ edition: '2026-3', replaces: v7() }))).toEqual([404, 'not-found']);
  });

  test('of two written at once from the same one, one lands', async () => {
    const both = await Promise.all(['a', 'b'].map((edition) => write({ edition, replaces: first })));
    expect(both.map(({ status }) => status).toSorted()).toEqual([200, 409]);
  });

  test('sent twice lands once; the same id with other figures is refused', async () => {
    const ownSetId = v7();
    const [one, other] = await Promise.all([write({}, ownSetId), write({}, ownSetId)]);
    expect([one.status, other.status]).toEqual([200, 200]);
    expect(one.body).toEqual(other.body);
    expect((await listed()).filter(({ setId }) => setId === ownSetId)).toHaveLength(1);
    expect(code(await write({ rows: [heldFor(1)] }, ownSetId))).toEqual([409, 'sent-differently']);
  });

  test('is one line of the ledger, which verifies, and notices when a figure is altered', async () => {
    const before = await tell(contract.ledgerHead, {});
    const second = await secondEdition();
    const { latest } = await tell(contract.ledgerHead, {});
    const line = latest.find(({ subject }) => subject === second);
    expect(line).toMatchObject({ kind: 'own limits', seq: (before.head?.seq ?? 0) + 1 });
    expect(await tell(contract.verifyLedger, {})).toMatchObject({ sound: true });
    const { ownerUrl } = larder.database;
    const [row] = await run<{ rows: string }>(ownerUrl, `SELECT rows::text FROM own_limit_set WHERE id = '${first}'`);
    const put = (rows: string) => run(ownerUrl, `UPDATE own_limit_set SET rows = ${rows}::jsonb WHERE id = '${first}'`);
    await put(`replace(rows::text, '600', '60')`);
    expect(await tell(contract.verifyLedger, {})).toMatchObject({ sound: false });
    await put(`'${row?.rows}'`);
    expect(await tell(contract.verifyLedger, {})).toMatchObject({ sound: true });
  });
});

describe('a set that is not sound', () => {
  test('comes back with a sentence for each row that is wrong, and nothing is kept', async () => {
    const before = await listed();
    const lost = { citation: 'Heard of', edition: '', confirmed: false };
    const reply = await write({
      rows: [
        aDwellRow({ rowId: 'fine' }),
        heldFor(0, { rowId: 'unfiled', title: 'Core of ham', known: 'from memory' }),
        aDwellRow({
          rowId: 'cold',
          title: 'Cold room',
          purpose: 'cold holding',
          known: 'from memory',
          limit: { kind: 'range', measured: 'temperature', min: { '°C': 500 }, max: { '°C': 400 }, source: lost },
        }),
      ],
    });
    expect(code(reply)).toEqual([422, 'limit-set-faulty']);
    expect(reply.body.detail).toBe('Core of ham: Confirmed is only what was read in the source.');
    expect(reply.body.errors).toMatchObject([
      { pointer: '#/rows/1', detail: 'Confirmed is only what was read in the source.' },
      { pointer: '#/rows/2', detail: 'The source’s citation or edition, or the paragraph or file, is missing.' },
      { pointer: '#/rows/2', detail: 'The least is more than the most.' },
    ]);
    expect(await listed()).toEqual(before);
  });

  test.each<[string, Fields, string, string]>([
    ['without rows', { rows: [] }, '#/rows', 'The set has no figures.'],
    ['with one id for two rows', { rows: [aDwellRow(), heldFor(720)] }, '#/rows/1', 'The id is used twice.'],
    [
      'of degrees that do not agree',
      {
        rows: [
          aDwellRow({
            limit: {
              kind: 'bandTime',
              from: { '°F': 5000, '°C': 2000 },
              to: { '°F': 13_000 },
              maxSeconds: 60,
              longestGapSeconds: 60,
              source: { citation: 'Ours', edition: '1', confirmed: true },
            },
          }),
        ],
      },
      '#/rows/0',
      '50 °F and 20 °C do not agree.',
    ],
    ['with a row that ends', { rows: [aDwellRow({ validUntil: '2025' })] }, '#/rows/0', 'It ends before it counts.'],
  ])('%s', async (_case, fields, pointer, detail) => {
    const reply = await write(fields);
    expect(code(reply)).toEqual([422, 'limit-set-faulty']);
    expect(reply.body.errors).toMatchObject([{ pointer, detail }]);
  });

  test('counts from before the edition it replaces, or is called the same', async () => {
    const reply = await write({ validFrom: '2026-01-31', replaces: first });
    expect(reply.body.errors.map(({ detail }: { detail: string }) => detail)).toEqual([
      'The edition it replaces is called 2026-1 too.',
      'It counts from 2026-01-31, before the edition it replaces (2026-02-01).',
    ]);
  });
});

describe('limits of one’s own are not', () => {
  test.each(['operator', 'reviewer', 'inspector'] as const)('written by the %s, who may read them', async (role) => {
    const worker = await shop.hire(role);
    expect(code(await write({}, v7(), worker))).toEqual([403, 'not-allowed']);
    expect(code(await ask(worker, contract.rowsToTake, { set: first }))).toEqual([403, 'not-allowed']);
    expect((await ask(worker, contract.showLimitSet, { set: first })).status).toBe(200);
  });

  test('seen, compared, taken from or replaced by another shop', async () => {
    const stranger = (await anotherShop(larder)).owner;
    const replies = await Promise.all([
      ask(stranger, contract.showLimitSet, { set: first }),
      ask(stranger, contract.compareLimitSets, { here: 'us-retail-2022', there: first }),
      ask(stranger, contract.rowsToTake, { set: first }),
      write({ edition: '2026-2', replaces: first }, v7(), stranger),
    ]);
    expect(replies.map(code)).toEqual([...Array(3).fill([404, 'no-such-set']), [404, 'not-found']]);
    const { body } = await ask(stranger, contract.listLimitSets, {});
    expect(JSON.stringify(body)).not.toContain(first);
    expect((await ask(stranger, contract.listPublishedLimits, {})).text).not.toContain(first);
  });
});

test('two editions, and a published set with the same matter, are laid side by side', async () => {
  const second = await secondEdition();
  const { differing } = await tell(contract.compareLimitSets, { here: first, there: second });
  expect(differing).toEqual([
    {
      rowId: 'smoked-sausage-core',
      title: 'Core of smoked sausage',
      differences: [{ what: '145 °F', here: '10 min', there: '12 min' }],
    },
  ]);
  const { rows } = await tell(contract.rowsToTake, { set: 'us-retail-2022' });
  const cold = rows.find(({ rowId }) => rowId === 'cold-holding');
  if (cold?.limit.kind !== 'range') throw new Error('There is no range for cold holding');
  const stricter = { ...cold, limit: { ...cold.limit, max: { '°F': 3800 } } };
  await done(write({ title: 'Our cold rooms', rows: [stricter] }, (first = v7())));
  const beside = await tell(contract.compareLimitSets, { here: 'us-retail-2022', there: first });
  expect(beside.differing).toMatchObject([{ rowId: 'cold-holding', differences: [{ here: '≤ 41 °F (5 °C)', there: '≤ 38 °F' }] }]);
});
