import { describe, expect, test } from 'vitest';
import { awaitedUnder } from '../forecast/awaited';
import { salmonellaKilled } from '../limit-sets';
import { catalogue } from '../limit-sets/catalogue';
import type { CriticalLimit } from '../limits/limit';
import { isCurveLimit } from './curve-judges';
import { isOfKind, limitsOfKind } from './of-kind';
import { isReadingLimit } from './reading-judges';
import { kindOf, kindsTakenAs } from './registry';
import { isWholeLimit } from './series-judges';

const { source } = salmonellaKilled;
const supported = { ...salmonellaKilled, authority: 'an invented authority, letter 3' };
const others: CriticalLimit[] = [
  supported,
  { kind: 'weightLoss', percent: 35, source },
  { kind: 'attestation', statement: 'The label is right.', source },
  { kind: 'figure', of: 'fat', unit: '%', max: 30_000, source },
];
const limits = [...catalogue.map(({ limit }) => limit), ...others];
const every = [...new Map(limits.map((limit) => [limit.kind, limit])).values()];

describe.each(every.map((limit) => [limit.kind, limit] as const))('%s', (kind, limit) => {
  test('is judged from the record that it is taken as, in one way', () => {
    const { takenAs } = kindOf(limit);
    const ways = [isReadingLimit(limit), isCurveLimit(limit), isWholeLimit(limit), takenAs === 'weighings'];
    expect(ways.filter(Boolean)).toHaveLength(1);
    expect(takenAs === 'curve').toBe(isCurveLimit(limit) || isWholeLimit(limit));
    expect(kindsTakenAs(takenAs)).toContain(kind);
  });

  test('asks to be read in units wherever it is read as a number, and is sound', () => {
    const isNumber = ['value', 'curve'].includes(kindOf(limit).takenAs);
    expect(kindOf(limit).unitsRead(limit).length > 0).toBe(isNumber);
    expect(kindOf(limit).fault(limit)).toBeUndefined();
  });

  test('says its figures in a line', () => {});
});

test('every kind is offered for one record, and is told from the others', () => {
  const taken = (['value', 'curve', 'weighings', 'attestation'] as const).flatMap(kindsTakenAs);
  expect([...taken].sort()).toEqual(every.map(({ kind }) => kind).sort());
  expect(limitsOfKind(every, 'cooling').map(({ stages }) => stages.length)).toHaveLength(1);
  expect(isOfKind(undefined, 'range')).toBe(false);
});

test('a kill and a growth wait for no temperature', () => {
  for (const limit of [salmonellaKilled, ...limitsOfKind(limits, 'growth')]) {
    expect(awaitedUnder(limit, [{ at: 0, temperature: { hundredths: 14_000, unit: '°F' } }], { ended: false })).toBeUndefined();
  }
});

test('what a margin is ruled with and what a table prints are told by its kind', () => {
  const [table] = limitsOfKind(limits, 'dwell').filter(({ rows }) => rows.length > 2);
  const [row] = limitsOfKind(limits, 'dwell').filter(({ rows }) => rows.length === 1);
  if (!table || !row) throw new Error('There is a table and a single row');
  expect(kindOf(table).ruled(table)).toEqual([table.rows[0]?.at, table.rows.at(-1)?.at]);
  expect(kindOf(row).ruled(row)).toEqual([row.rows[0]?.at]);
  expect(kindOf(table).rows(table)).toBe(table.rows);
  const ruled = every.map((limit) => [limit.kind, kindOf(limit).ruled(limit).length]);
  expect(Object.fromEntries(ruled)).toMatchObject({ bandTime: 2, attestation: 0, growth: 0 });
  const [chill] = limitsOfKind(limits, 'cooling').filter(({ stages }) => stages.length === 2 && stages[0]?.from);
  expect(chill && kindOf(chill).ruled(chill)).toHaveLength(3);
  const [fromCooking] = limitsOfKind(limits, 'cooling').filter(({ stages }) => stages.length === 1 && !stages[0]?.from);
  expect(fromCooking && kindOf(fromCooking).ruled(fromCooking)).toEqual([fromCooking?.stages[0]?.to]);
});
