import { describe, expect, test } from 'vitest';
import {
  differencesBetween,
  judgeConditions,
  limitSetById,
  limitSets,
  limitsThatApply,
  newerEditionOf,
  compose,
  massOf,
  type LimitRow,
  type ProductClass,
} from '@larderbook/haccp';

const rowOf = (set: string, id: string): LimitRow => {
  const row = limitSetById(set)?.rows.find((one) => one.id === id);
  if (!row) throw new Error(`${set} has no row ${id}`);
  return row;
};

describe('conditions of the slow chill', () => {
  const cured = rowOf('us-inspected-2021', 'cooling-cured');
  const kg = massOf({ value: 10, unit: 'kg' });
  const lot = (nitriteGrams: number, erythorbateGrams: number, product: ProductClass = 'cooked sausage') => ({
    product,
    composition: compose({
      freshMeat: [kg],
      weighed: [
        { mass: massOf({ value: nitriteGrams, unit: 'g' }), substance: 'sodium nitrite', percent: 100 },
        { mass: massOf({ value: erythorbateGrams, unit: 'g' }), substance: 'sodium erythorbate', percent: 100 },
      ],
      reworked: [],
    }),
  });

  // Appendix B, option 3: at least 100 ppm ingoing nitrite; the form of 2021 at least 250 ppm erythorbate as well.
  test.each([
    ['100 and 250 ppm', lot(1, 2.5), 'met'],
    ['99 ppm nitrite', lot(0.99, 2.5), 'missed'],
    ['99.9 ppm nitrite', lot(0.999, 2.5), 'missed'],
    ['249.9 ppm erythorbate', lot(1, 2.499), 'missed'],
    ['another product', lot(1, 2.5, 'roast beef'), 'missed'],
    ['nothing weighed yet', { product: 'cooked sausage' as const }, 'undetermined'],
    ['no product said', { composition: lot(1, 2.5).composition }, 'undetermined'],
    ['no meat', { product: 'cooked sausage' as const, composition: compose({ freshMeat: [], weighed: [], reworked: [] }) }, 'undetermined'],
  ])('%s: %s', (_case, given, kind) => {
    expect(judgeConditions(cured, given).kind).toBe(kind);
  });

  // 86 FR 71007: since 14 December 2022 inside a gap of the later guideline, or with support of one's own.
  test('the form of 1999 asks of the formula for nitrite alone, and of the plan for its support', () => {
    const row = rowOf('us-inspected-1999', 'cooling-cured');
    const asked = row.conditions.flatMap((one) => (one.kind === 'support' ? [one.says] : []));
    expect(asked).toEqual([expect.stringContaining('14 December 2022')]);
    const answered = (answer: boolean) => new Map(asked.map((says) => [says, answer]));
    expect(judgeConditions(row, lot(1, 0)).kind).toBe('undetermined');
    expect(judgeConditions(row, { ...lot(1, 0), answered: answered(true) }).kind).toBe('met');
    expect(judgeConditions(row, { ...lot(1, 0), answered: answered(false) }).kind).toBe('missed');
  });

  test('each condition is said with its figures', () => {
    const nitrite = judgeConditions(cured, lot(0.99, 2.5)).conditions.find(({ condition }) => condition.kind === 'nitrite');
    expect(nitrite?.verdict).toMatchObject({
      ...{ kind: 'missed', finding: 'figure-below' },
      figures: { read: { value: '99', unit: 'ppm' }, by: { value: '1', unit: 'ppm' }, bound: { value: '100', unit: 'ppm' } },
    });
  });

  // Australian meat standard: at least 2.5 % salt on water phase and 100 ppm ingoing nitrite.
  test.each([
    ['2.5 % exactly', 25n, 975n, 'met'],
    ['a little less', 24n, 975n, 'missed'],
    ['2.5 % only as salt ÷ water', 25n, 1000n, 'missed'],
  ])('salt in the water phase, %s', (_case, salt, water, kind) => {
    const row = rowOf('australia-new-zealand-2026', 'cooling-cured');
    expect(judgeConditions(row, { ...lot(1.2, 0), place: 'Australia', salt, water }).kind).toBe(kind);
  });
});

describe('editions and sets side by side', () => {
  test('2013 held poultry and 155 °F for 15 s (from memory)', () => {
    const [older, newer] = ['us-retail-2013', 'us-retail-2022'].map(limitSetById);
    if (!older || !newer) throw new Error('an edition is missing');
    const { differing, onlyThere, notRead } = differencesBetween(older, newer);
    const figures = differing.flatMap(({ differences }) => differences.filter(({ what }) => what === 'time'));
    expect(figures).toEqual([
      { what: 'time', at: expect.objectContaining({ '°F': 15_500 }), here: 15, there: 17 },
      { what: 'time', at: expect.objectContaining({ '°F': 16_500 }), here: 15, there: 0 },
    ]);
    expect(onlyThere).toEqual([]);
    expect(notRead.length).toBeGreaterThan(20);
  });

  test('nitrite in the European Union: 150 as NaNO₂ became 80 as NO₂ on 9 October 2025', () => {
    const [before, after] = ['european-union-2008', 'european-union-2025'].map(limitSetById);
    if (!before || !after) throw new Error('an edition is missing');
    const { differing, onlyHere } = differencesBetween(before, after);
    const heated = differing.find(({ here }) => here.id === 'nitrite-heat-treated');
    expect(heated?.differences[0]).toEqual({
      what: 'figure',
      here: expect.objectContaining({ printed: '150 mg/kg as NaNO₂' }),
      there: expect.objectContaining({ printed: '80 mg/kg as NO₂ ion' }),
    });
    expect(onlyHere.map(({ id }) => id)).toContain('nitrite-rohschinken-residual');
  });

  test.each([
    ['european-union-2008', '2025-10-08', undefined],
    ['european-union-2008', '2025-10-09', 'european-union-2025'],
    ['us-inspected-1999', '2026-01-01', 'us-inspected-2021'],
    ['us-inspected-1999', '2017-07-01', 'us-inspected-2017'],
    ['us-retail-2022', '2026-09-16', undefined],
    ['us-retail-2022', '2026-09-17', 'us-retail-2026'],
    ['us-inspected-2021', '2026-11-28', undefined],
    ['no such set', '2026-11-28', undefined],
  ])('a plan built on %s is told on %s of %s', (setId, today, newer) => {
    expect(newerEditionOf(limitSets, { setId, today })?.id).toBe(newer);
  });
});

describe('limits that apply', () => {
  const ids = (product: ProductClass, jurisdiction: Parameters<typeof limitsThatApply>[0]['jurisdiction'], place?: string) =>
    limitsThatApply({ product, jurisdiction, place }).map(({ row }) => row.id);

  test('a cooked sausage under inspection: chopped meat, not pickle, not bacon', () => {
    const applying = ids('cooked sausage', 'US, inspected establishment');
    expect(applying).toEqual(expect.arrayContaining(['nitrite-comminuted', 'water-cooked-sausage', 'binders', 'cooked-meat-6.5-log']));
    for (const other of ['nitrite-pumped', 'bacon-pumped-nitrite', 'fat-frankfurter', 'cooked-poultry-7-log'])
      expect(applying).not.toContain(other);
  });

  test('bacon: its own nitrite, and no nitrate', () => {
    expect(ids('bacon, pumped', 'US, inspected establishment')).toEqual(
      expect.arrayContaining(['bacon-pumped-nitrite', 'bacon-pumped-accelerator', 'nitrate-bacon']),
    );
    expect(ids('bacon, dry-cured', 'US, inspected establishment')).not.toContain('bacon-pumped-nitrite');
  });

  test('a nation is told apart', () => {
    expect(ids('cooked sausage', 'United Kingdom and Ireland', 'Scotland')).toContain('hot-holding-scotland');
    expect(ids('cooked sausage', 'United Kingdom and Ireland', 'England')).not.toContain('hot-holding-scotland');
    expect(ids('cooked sausage', 'United Kingdom and Ireland', 'Northern Ireland')).toContain('nitrite-heat-treated-ion');
    expect(ids('cooked sausage', 'United Kingdom and Ireland', 'England')).not.toContain('nitrite-heat-treated-ion');
  });

  test('each says whether it is for its class, and what is still needed', () => {
    const applying = limitsThatApply({ product: 'cooked sausage', jurisdiction: 'US, inspected establishment' });
    const chill = applying.find(({ row }) => row.id === 'cooling-cured');
    expect(chill).toMatchObject({ isForClass: true });
    expect(chill?.alsoNeeds.map(({ kind }) => kind)).toEqual(['nitrite', 'accelerator']);
    expect(applying.find(({ row }) => row.id === 'nitrite-comminuted')?.alsoNeeds).toEqual([]);
  });

  test('of one’s own, only the set that is given', () => {
    expect(limitsThatApply({ product: 'ground beef', jurisdiction: 'own' })).toEqual([]);
  });
});
