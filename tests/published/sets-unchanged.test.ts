import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { canonicalJson, limitSets, type LimitSet } from '@larderbook/haccp';

/** Everything a set says but its titles and notes. */
const digest = ({ title: _title, rows, ...set }: LimitSet): string => {
  const figures = { ...set, rows: rows.map(({ title: _of, note: _note, ...row }) => row) };
  return createHash('sha256')
    .update(canonicalJson(JSON.parse(JSON.stringify(figures))))
    .digest('hex')
    .slice(0, 16);
};

/** Plans were built on these sets: what one says changes only where it was not what its source prints. */
test.each([
  ['us-inspected-1999', 144, '2eedbcf1052cabd6'],
  ['us-inspected-2017', 125, '416080c3bd125343'],
  ['us-inspected-2021', 192, 'a2478aa155e711bc'],
  ['us-retail-2013', 2, 'ec4e5365d6743eec'],
  ['us-retail-2017', 37, '22cf5d179dce3d45'],
  ['us-retail-2022', 37, '5eda5fb2aa712a07'],
  ['us-retail-2026', 2, 'ba984e34e5a48b68'],
  ['canada-2026', 36, '017bb69b8f009af5'],
  ['united-kingdom-2026', 45, '5304d90357b4ebeb'],
  ['european-union-2008', 36, '343afca0a7354ca1'],
  ['european-union-2025', 33, '2a952cd91dbccc20'],
  ['australia-new-zealand-2026', 33, '63414d415d514dac'],
])('%s says what it said', (id, count, was) => {
  const set = limitSets.find((one) => one.id === id) as LimitSet;
  expect([set.rows.length, digest(set)]).toEqual([count, was]);
});

test('every set is held so', () => expect(limitSets).toHaveLength(12));
