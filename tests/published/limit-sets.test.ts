import { describe, expect, test } from 'vitest';
import { defaultsOf, faultsOfSets, limitSetById, limitSets, type LimitRow } from '@larderbook/haccp';
import { printed } from '../support/told';

const rowOf = (set: string, id: string): LimitRow => {
  const row = limitSetById(set)?.rows.find((one) => one.id === id);
  if (!row) throw new Error(`${set} has no row ${id}`);
  return row;
};
const said = (set: string, id: string) => printed(rowOf(set, id).limit);
/** Every holding time of a row, as temperature in hundredths and seconds. */
const table = (set: string, id: string, unit: '°F' | '°C') => {
  const { limit } = rowOf(set, id);
  return limit.kind === 'dwell' ? limit.rows.map(({ at, seconds }) => [(at[unit] ?? NaN) / 100, seconds]) : [];
};

test('every published set is sound', () => {
  expect(faultsOfSets(limitSets)).toEqual([]);
});

/** FSIS-GD-2021-14, Table 2, p. 35 and Table 6, p. 59: °F, °C, seconds for 5, 6.5 and 7 log. */
const MEAT = `130 54.4 5160 6720 7260|131 55 4140 5340 5820|132 55.6 3300 4260 4620|133 56.1 2640 3360 3720
134 56.7 2100 2700 2820|135 57.2 1680 2160 2220|136 57.8 1320 1680 1920|137 58.4 1080 1380 1440|138 58.9 840 1080 1140
139 59.5 660 900 900|140 60 540 720 720|141 60.6 420 540 600|142 61.1 360 480 480|143 61.7 300 360 360
144 62.2 240 300 300|145 62.8 180 240 240|146 63.3 130 169 182|147 63.9 103 134 144|148 64.4 82 107 115
149 65 65 85 91|150 65.6 52 67 72|151 66.1 41 54 58|152 66.7 33 43 46|153 67.2 26 34 37|154 67.8 21 27 29
155 68.3 17 22 23|156 68.9 14 17 19|157 69.4 11 14 15|158 70 0 0 0|159 70.6 0 0 0|160 71.1 0 0 0`
  .split(/[|\n]/)
  .map((line) => line.split(' ').map(Number));

describe('FSIS-GD-2021-14, meat', () => {
  test.each([
    ['cooked-meat-5-log', 2],
    ['cooked-meat-6.5-log', 3],
    ['cooked-meat-7-log', 4],
  ])('%s has every row as printed', (id, column) => {
    expect(table('us-inspected-2021', id, '°F')).toEqual(MEAT.map((row) => [row[0], row[column]]));
    expect(table('us-inspected-2021', id, '°C')).toEqual(MEAT.map((row) => [row[1], row[column]]));
  });

  test('the columns of 1999 are the same, row for row', () => {
    for (const id of ['cooked-meat-6.5-log', 'cooked-meat-7-log'])
      expect(table('us-inspected-1999', id, '°F')).toEqual(table('us-inspected-2021', id, '°F'));
  });
});

describe('poultry by species and fat (FSIS-GD-2021-14, Tables 3 and 4, pp. 36-39)', () => {
  test.each([
    ['cooked-chicken-7-log-1-fat', 136, 3798],
    ['cooked-chicken-7-log-12-fat', 136, 4884],
    ['cooked-chicken-7-log-6-fat', 162, 0],
    ['cooked-chicken-7-log-7-fat', 162, 9.6],
    ['cooked-chicken-7-log-12-fat', 160, 16.9],
    ['cooked-turkey-7-log-5-fat', 155, 72],
    ['cooked-turkey-7-log-1-fat', 164, 11.1],
    ['cooked-poultry-7-log-8-fat', 150, 240],
  ])('%s at %s °F', (id, fahrenheit, seconds) => {
    expect(table('us-inspected-2021', id, '°F')).toContainEqual([fahrenheit, seconds]);
  });

  test('twelve columns of thirty rows for each of chicken, turkey and the longer of both', () => {
    for (const species of ['chicken', 'turkey', 'poultry']) {
      for (let fat = 1; fat <= 12; fat += 1)
        expect(table('us-inspected-2021', `cooked-${species}-7-log-${fat}-fat`, '°F')).toHaveLength(30);
    }
  });
});

describe('other cooking tables', () => {
  // FDA Food Code 2022, 3-401.11(B)(1).
  test('the roast table of the Food Code', () => {
    const roast = [130, 131, 133, 135, 136, 138, 140, 142, 144, 145, 147, 149, 151, 153, 155, 157, 158];
    const sixPointFive = new Map(MEAT.map((row) => [row[0], row[3]]));
    expect(table('us-retail-2022', 'roast', '°F')).toEqual(roast.map((at) => [at, sixPointFive.get(at)]));
  });

  // Ontario Meat Plant Guidelines, Appendix 1, Table 1: every row of Table 2 above but 146 °F, in °C alone.
  test('the Canadian table', () => {
    const rows = MEAT.filter(([fahrenheit]) => fahrenheit !== 146).map((row) => [row[1], row[3]]);
    expect(table('canada-2026', 'cooked-meat-6.5-log', '°C')).toEqual(rows);
    expect(said('canada-2026', 'cook-whole-poultry')).toBe('180 °F for 15 s; 82 °C for 15 s');
  });

  test.each([
    // Food Standards Agency, "Cooking your food", as restated by trainers.
    [
      'united-kingdom-2026',
      'cook-equivalents',
      [
        [60, 2700],
        [65, 600],
        [70, 120],
        [75, 30],
        [80, 6],
      ],
    ],
    // ACMSF Ad Hoc Group on Safe Cooking of Burgers, March 2007: 65 °C for 13.6 min, 75 °C for 18 s.
    [
      'united-kingdom-2026',
      'cook-burgers',
      [
        [65, 816],
        [70, 120],
        [75, 18],
      ],
    ],
    // Template food control plan, New Zealand, 2017 and 2011.
    [
      'australia-new-zealand-2026',
      'cook-poultry',
      [
        [65, 900],
        [70, 180],
        [75, 30],
      ],
    ],
    [
      'australia-new-zealand-2026',
      'cook-poultry-2011',
      [
        [65, 600],
        [70, 120],
        [75, 0],
      ],
    ],
    // Australian meat standard, as quoted by a training page.
    ['australia-new-zealand-2026', 'cook-meat', [[65, 600]]],
    // FSAI Guidance Note 15.
    ['united-kingdom-2026', 'cook-chill-cook', [[75, 0]]],
  ])('%s, %s', (set, id, rows) => {
    expect(table(set, id, '°C')).toEqual(rows);
  });

  // FSA vacuum-packing training, module 3: minutes at 80 to 100 °C, in seconds.
  test('non-proteolytic Clostridium botulinum, 21 rows', () => {
    const minutes = [129, 100, 77, 60, 46, 36, 28, 22, 17, 13, 10, 7.9, 6.3, 5, 4, 3.2, 2.5, 2, 1.6, 1.3, 1];
    const rows = minutes.map((minute, index) => [80 + index, Math.round(minute * 60)]);
    expect(table('united-kingdom-2026', 'vacuum-heat', '°C')).toEqual(rows);
  });
});

describe('figures with their comparison, verbatim in the units that are printed', () => {
  test.each([
    ['us-retail-2022', 'cold-holding', '≤ 41 °F (5 °C)'],
    ['us-retail-2022', 'hot-holding', '≥ 135 °F (57 °C)'],
    ['us-retail-2022', 'hot-holding-roast', '≥ 130 °F (54 °C)'],
    ['us-retail-2022', 'rop-aw', 'water activity ≤ 0.91'],
    ['canada-2026', 'cold-holding', '≤ 4 °C'],
    ['canada-2026', 'cold-holding-roasted', '≤ 40 °F (4.4 °C)'],
    ['canada-2026', 'hot-holding', '≥ 140 °F (60 °C)'],
    ['united-kingdom-2026', 'cold-holding', '≤ 8 °C'],
    ['united-kingdom-2026', 'cold-holding-display', 'time on display < 4 h'],
    ['united-kingdom-2026', 'hot-holding', '≥ 63 °C'],
    ['united-kingdom-2026', 'hot-holding-scotland', '> 63 °C'],
    ['united-kingdom-2026', 'hot-holding-display', 'time on display < 2 h'],
    ['european-union-2025', 'cold-holding-mince', '≤ 2 °C'],
    ['european-union-2025', 'received-offal', '≤ 3 °C'],
    ['european-union-2025', 'nitrite-heat-treated', '≤ 80 mg/kg as NO₂ ion'],
    ['european-union-2008', 'nitrite-heat-treated', '≤ 150 mg/kg as NaNO₂'],
    ['australia-new-zealand-2026', 'cold-holding', '≤ 5 °C'],
    ['australia-new-zealand-2026', 'hot-holding', '≥ 60 °C'],
    ['us-inspected-2021', 'nitrite-comminuted', '≤ ¼ oz per 100 lb (156 ppm)'],
    ['us-inspected-2021', 'mpr-semi-dry', 'moisture to protein ≤ 3.1'],
  ])('%s, %s', (set, id, figure) => {
    expect(said(set, id)).toBe(figure);
  });

  test.each([
    ['us-inspected-2021', 'cooling-any'],
    ['us-inspected-2021', 'cooling-120-55'],
    ['us-inspected-2021', 'cooling-cured'],
    ['us-inspected-2021', 'patties-318.23'],
    ['us-inspected-2021', 'nitrite-least-refrigerated'],
    ['us-inspected-2021', 'fat-frankfurter'],
    ['united-kingdom-2026', 'cook-chill-1989-cooling'],
    ['canada-2026', 'cooling-any'],
    ['canada-2026', 'degree-hours-warm'],
    ['australia-new-zealand-2026', 'nitrite-cured'],
    ['european-union-2025', 'nitrite-residual'],
  ])('%s, %s is carried as unconfirmed and is no default', (set, id) => {
    const row = rowOf(set, id);
    expect([row.limit.source.confirmed, row.isDefault ?? false]).toEqual([false, false]);
    expect(defaultsOf(limitSetById(set) ?? { ...limitSets[0]! })).not.toContain(row);
  });
});
