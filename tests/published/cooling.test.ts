import { describe, expect, test } from 'vitest';
import {
  coolingCured,
  coolingFoodCode,
  coolingFromCooking,
  coolingFromCookingStrict,
  coolingUncured,
  degrees,
  judgeConcentration,
  judgeCurve,
  massOf,
  type ConcentrationLimit,
  type CurveReading,
} from '@larderbook/haccp';

const MINUTE = 60_000;
const curve = (...points: [minutes: number, fahrenheit: number][]): CurveReading[] =>
  points.map(([minutes, value]) => ({ at: minutes * MINUTE, temperature: degrees(value, '°F') }));

describe('FSIS Compliance Guidelines for Cooling Heat-Treated Meat and Poultry Products (Appendix B), 1999', () => {
  test.each([
    ['option 1: 90 min and 300 min', coolingUncured, curve([0, 130], [90, 80], [390, 40]), {}, 'met'],
    ['option 1: 91 min to 80 °F', coolingUncured, curve([0, 130], [91, 80], [391, 40]), {}, 'missed'],
    ['option 3, cured: 4 h 50 and 9 h 50', coolingCured, curve([0, 130], [290, 80], [880, 45]), {}, 'met'],
    [
      'option 2: 120 to 55 °F in 5 h 50',
      coolingFromCooking,
      curve([0, 120], [70, 80], [350, 55]),
      { startAt: 0, chillingBegan: { askedAt: 'Into the chiller', answers: [{ at: 0 }] } },
      'met',
    ],
    // The same chill against the 2021 form with 1 h to 80 °F (figures of that edition unconfirmed).
    [
      'stricter: 120 to 80 °F in 70 min',
      coolingFromCookingStrict,
      curve([0, 120], [70, 80], [350, 55]),
      { startAt: 0, chillingBegan: { askedAt: 'Into the chiller', answers: [{ at: 0 }] } },
      'missed',
    ],
  ] as const)('%s', (_case, limit, readings, context, kind) => {
    expect(judgeCurve(readings, limit, { ended: true, ...context }).kind).toBe(kind);
  });

  // Option 3 as quoted by the Canadian Food Inspection Agency: at least 100 ppm ingoing sodium nitrite.
  test.each([
    ['100 ppm', 1, 'met'],
    ['99 ppm', 0.99, 'undetermined'],
  ])('option 3 needs its nitrite: %s', (_case, grams, kind) => {
    const atLeast100: ConcentrationLimit = {
      kind: 'concentration',
      substance: 'sodium nitrite',
      min: 10_000,
      max: 15_625,
      printed: '¼ oz per 100 lb (156 ppm)',
      source: coolingCured.source,
    };
    const nitrite = { mass: massOf({ value: grams, unit: 'g' }), percent: 100 };
    expect(judgeConcentration([nitrite], massOf({ value: 10, unit: 'kg' }), atLeast100).kind).toBe(kind);
  });
});

describe('FDA Food Code 2022, 3-501.14(A)', () => {
  test.each([
    ['70 °F after 2 h 00, 41 °F after 6 h 00', curve([0, 135], [120, 70], [360, 41]), 'met'],
    ['70 °F after 1 h 30, 41 °F after 6 h 01', curve([0, 135], [90, 70], [361, 41]), 'missed'],
    ['70 °F after 2 h 01, 41 °F after 6 h 00', curve([0, 135], [121, 70], [360, 41]), 'missed'],
  ])('%s', (_case, readings, kind) => {
    expect(judgeCurve(readings, coolingFoodCode, { ended: true }).kind).toBe(kind);
  });
});
