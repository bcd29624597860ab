import { describe, expect, test } from 'vitest';
import { limitSetById } from '@larderbook/haccp';
import { carried, isRetypedElsewhere, retyped } from './rows-as-printed';

/** FDA Food Code 2022, 3-401.11 to 3-502.12; thermometers by 4-203.11 and 4-203.12. */
const FOOD_CODE = `
cook-intact | 145 °F for 15 s; 63 °C for 15 s | C
cook-poultry | 165 °F, no holding time; 74 °C, no holding time | C
roast-oven-still | ≥ 350 °F (177 °C) | C
roast-oven-convection | ≥ 325 °F (163 °C) | C
roast-oven-large | ≥ 250 °F (121 °C) | C
roast-oven-humid | ≤ 250 °F (121 °C) | C
cook-plant-food | 135 °F, no holding time; 57 °C, no holding time | C
non-continuous-heat | initial heating ≤ 60 min | C
reheat-hot-holding | 165 °F for 15 s; 74 °C for 15 s | C
reheat-plant-packaged | 135 °F, no holding time; 57 °C, no holding time | C
reheat-time | reheating ≤ 2 h | C
thaw | ≤ 41 °F (5 °C) | C
thaw-running-water | ≤ 70 °F (21 °C) | C
thaw-raw-time | time above 41 °F ≤ 4 h | C
cooling-any | 135 → 70 °F within 2 h, and 135 → 41 °F within 6 h in all;
  57 → 21 °C within 2 h, and 57 → 5 °C within 6 h in all | C
cooling-from-ambient | time to 41 °F (5 °C) ≤ 4 h | C
hot-holding | ≥ 135 °F (57 °C) | C
hot-holding-roast | ≥ 130 °F (54 °C) | C
cold-holding | ≤ 41 °F (5 °C) | C
date-mark | days at or below 41 °F, the first being day 1 ≤ 7 days | C
time-as-control | time ≤ 4 h | C
time-as-control-cool | time ≤ 6 h | C
rop-aw | water activity ≤ 0.91 | C
rop-ph | pH ≤ 4.6 | C
rop-days | days from packing ≤ 30 days | C
cook-chill-34-hours | time to 34 °F (1 °C) ≤ 48 h | C
cook-chill-34-days | days ≤ 30 days | C
cook-chill-41-days | days ≤ 7 days | C
rop-short | time in the package ≤ 48 h | C
fish-freezing-records | days kept ≥ 90 days | C
thermometer-food | error either way, in °C ≤ 1 °C | S
thermometer-food-f | error either way, in °F ≤ 2 °F | S
thermometer-air | error either way, in °C ≤ 1.5 °C (3 °F) | M`;

describe('at retail and in catering, 2022', () => {
  test.each(retyped(FOOD_CODE))('%s: %s', (id, figure, known) => {
    expect(carried('us-retail-2022', id)).toEqual([figure, known]);
  });
});

describe('other editions', () => {
  test.each([
    // A trade article on Appendix B of June 2017.
    [
      'us-inspected-2017',
      'cooling-any',
      '120 → 80 °F within 1 h, then 80 → 40 °F within 5 h; 48.9 → 26.7 °C within 1 h, then 26.7 → 4.4 °C within 5 h',
      'second hand',
    ],
    ['us-retail-2013', 'cook-poultry', '165 °F for 15 s; 74 °C for 15 s', 'from memory'],
    // A document that read the Food Code of 2026.
    ['us-retail-2026', 'roast', '130 °F for 1 h 52 min, or 145 °F for 4 min; 54.4 °C for 1 h 52 min, or 62.8 °C for 4 min', 'second hand'],
  ] as const)('%s, %s', (set, id, figure, known) => {
    expect(carried(set, id)).toEqual([figure, known]);
  });

  test('of the Food Code of 2017 every figure is that of 2022, and none is confirmed', () => {
    for (const [id, figure] of retyped(FOOD_CODE)) expect(carried('us-retail-2017', id)).toEqual([figure, 'from memory']);
  });
});

const seconds = (set: string, id: string): (readonly [fahrenheit: number, seconds: number])[] => {
  const limit = limitSetById(set)?.rows.find((row) => row.id === id)?.limit;
  return limit?.kind === 'dwell' ? limit.rows.map((row) => [(row.at['°F'] ?? NaN) / 100, row.seconds]) : [];
};

describe('tables of holding times that are not the meat table', () => {
  test.each([
    // 9 CFR 318.23, cooked uncured patties; values from memory.
    [
      'us-inspected-2021',
      'patties-318.23',
      [
        [151, 41],
        [152, 32],
        [153, 26],
        [154, 20],
        [155, 16],
        [156, 13],
        [157, 10],
      ],
    ],
    // 9 CFR 318.10(c)(1), removed in 2018; from memory.
    [
      'us-inspected-2021',
      'trichinae-heated',
      [
        [120, 75_600],
        [122, 34_200],
        [124, 16_200],
        [126, 7920],
        [128, 3600],
        [130, 1800],
        [132, 900],
        [134, 360],
        [136, 180],
        [138, 120],
        [140, 60],
        [142, 60],
        [144, 0],
      ],
    ],
    // FDA Food Code 2022, 3-401.11(A)(2): 17 s; 15 s in 2013 and before, from memory.
    [
      'us-retail-2022',
      'cook-comminuted',
      [
        [145, 180],
        [150, 60],
        [155, 17],
        [158, 0],
      ],
    ],
    [
      'us-retail-2013',
      'cook-comminuted',
      [
        [145, 180],
        [150, 60],
        [155, 15],
        [158, 0],
      ],
    ],
  ] as const)('%s, %s', (set, id, rows) => {
    expect(seconds(set, id)).toEqual(rows);
  });

  test('any row of the meat table is stricter than the heating against trichinae', () => {
    const heated = new Map(seconds('us-inspected-2021', 'trichinae-heated'));
    for (const [fahrenheit, needed] of seconds('us-inspected-2021', 'cooked-meat-5-log')) {
      expect(needed).toBeGreaterThanOrEqual(heated.get(fahrenheit) ?? 0);
    }
  });
});

test('no figure of the Food Code is left out here', () => {
  const here = new Set(retyped(FOOD_CODE).map(([id]) => id));
  const missing = limitSetById('us-retail-2022')?.rows.filter((row) => !isRetypedElsewhere(row) && !here.has(row.id));
  expect(missing?.map(({ id }) => id)).toEqual([]);
});
