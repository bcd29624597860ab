import { describe, expect, test } from 'vitest';
import { limitsThatApply, type ProductClass, type PublishedJurisdiction } from '@larderbook/haccp';

const cures = (jurisdiction: PublishedJurisdiction, place: string | undefined, product: ProductClass): string[] =>
  limitsThatApply({ product, jurisdiction, place })
    .filter(({ row }) => row.purpose === 'curing')
    .map(({ row }) => row.id)
    .filter((id) => id !== 'nitrite-preparations'); // 08.2 names preparations and no class of product

/** Regulation (EC) 1333/2008, Annex II, Table 34, group 7, text of 3 December 2012: what is left, not what was added. */
describe('United Kingdom and Ireland', () => {
  test.each<[string, ProductClass, string[]]>([
    ['England', 'bacon, dry-cured', ['nitrite-bacon-residual', 'nitrate-bacon-residual']],
    ['Wales', 'bacon, Wiltshire', ['nitrite-wiltshire-residual']],
    ['Scotland', 'dry-cured ham', ['nitrite-dry-cured-residual', 'nitrate-dry-cured-residual']],
    ['England', 'ham, Wiltshire', ['nitrite-dry-cured-residual']],
    ['England', 'bacon, pumped', ['nitrite-uncooked', 'nitrate-uncooked']],
    ['England', 'dry sausage', ['nitrite-uncooked', 'nitrate-uncooked']],
    ['England', 'ham, pumped', ['nitrite-heat-treated']],
    ['Northern Ireland', 'bacon, Wiltshire', ['nitrite-wiltshire-residual-ion']],
    ['Ireland', 'bacon, dry-cured', ['nitrite-bacon-residual-ion']],
    ['Ireland', 'dry-cured ham', ['nitrite-dry-cured-residual-ion', 'nitrate-dry-cured-residual-ion']],
    ['Northern Ireland', 'bacon, immersed', ['nitrite-uncooked-ion']],
  ])('%s, %s', (place, product, ids) => {
    expect(cures('United Kingdom and Ireland', place, product)).toEqual(ids);
  });
});

/** 08.3.4: a residual limit alone; so Regulation (EU) 2023/2108 as trade notices give it. */
test.each<[ProductClass, string[]]>([
  ['bacon, Wiltshire', ['nitrite-wiltshire-residual']],
  ['bacon, dry-cured', ['nitrite-bacon-residual']],
  ['dry-cured ham', ['nitrite-dry-cured-residual', 'nitrate-dry-cured-residual']],
  ['bacon, pumped', ['nitrite-uncooked', 'nitrate-uncooked', 'nitrite-residual']],
])('European Union, %s', (product, ids) => {
  expect(cures('European Union', 'another member state', product)).toEqual(ids);
});

/** 9 CFR 424.22(b) and 424.21(c) know no Wiltshire cure: it is immersed, and bacon holds no nitrate. */
test('a Wiltshire cure under US inspection is judged as what is immersed', () => {
  const immersed = cures('US, inspected establishment', undefined, 'bacon, immersed');
  expect(immersed).toContain('nitrate-bacon');
  expect(cures('US, inspected establishment', undefined, 'bacon, Wiltshire')).toEqual(immersed);
  expect(cures('US, inspected establishment', undefined, 'ham, Wiltshire')).toEqual(
    cures('US, inspected establishment', undefined, 'ham, immersed'),
  );
});
