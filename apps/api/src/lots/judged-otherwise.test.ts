import { RULES_VERSION } from '@larderbook/haccp';
import { expect, test } from 'vitest';
import type { PointOnLot } from './judge-points';
import { judgedOtherwise } from './judged-otherwise';
import type { LotRows } from './lot-rows';

const points = [
  { point: { name: 'Cook' }, isSettled: false },
  { point: { name: 'Chill' }, isSettled: true },
] as PointOnLot[];
const signedBy = (...rules: (number | null)[]) => ({ reviews: rules.map((rulesVersion) => ({ rulesVersion })) as LotRows['reviews'] });

test.each([
  ['earlier rules', signedBy(RULES_VERSION - 1), ['Cook']],
  ['rules nobody wrote down', signedBy(null), ['Cook']],
  ['those of now', signedBy(RULES_VERSION), []],
  ['those of now, after one by earlier ones', signedBy(RULES_VERSION, null), []],
  ['none', signedBy(), []],
])('a review signed by %s', (_case, rows, names) => {
  expect(judgedOtherwise(rows, points)).toEqual(names);
});
