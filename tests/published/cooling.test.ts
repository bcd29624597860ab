import { describe, expect, test } from 'vitest';
import {
  boundOf,
  coolingCured,
  coolingFoodCode,
  coolingFromCooking,
  coolingFromCookingStrict,
  coolingUncured,
  degrees,
  fallsBelow,
  judgeConcentration,
  judgeCurve,
  massOf,
  prepareCurve,
  risesTo,
  stageSpans,
  timeInBand,
  type ConcentrationLimit,
  type CurveReading,
} from '@larderbook/haccp';

const MINUTE = 60_000;
const curve = (...points: [minutes: number, fahrenheit: number][]): CurveReading[] =>
  points.map(([minutes, value]) => ({ at: minutes * MINUTE, temperature: degrees(value, '°F') }));
const at = (fahrenheit: number) => boundOf({ '°F': fahrenheit * 100 });
const minutes = (instants: number[]) => instants.map((instant) => instant / MINUTE);

describe('FSIS Compliance Guidelines for Cooling Heat-Treated Meat and Poultry Products (Appendix B), 1999', () => {
  test.each([
    ['option 1: 90 min and 300 min', coolingUncured, curve([0, 130], [90, 80], [390, 40]), {}, 'met'],
    ['option 1: 91 min to 80 °F', coolingUncured, curve([0, 130], [91, 80], [391, 40]), {}, 'missed'],
    ['option 3, cured: 4 h 50 and 9 h 50', coolingCured, curve([0, 130], [290, 80], [880, 45]), {}, 'met'],
    [
      'option 2: 120 to 55 °F in 5 h 50',
      coolingFromCooking,
      curve([0, 120], [70, 80], [350, 55]),
      { startAt: 0, chillingBegan: 0 },
      'met',
    ],
    // The same chill against the 2021 form with 1 h to 80 °F (figures of that edition unconfirmed).
    [
      'stricter: 120 to 80 °F in 70 min',
      coolingFromCookingStrict,
      curve([0, 120], [70, 80], [350, 55]),
      { startAt: 0, chillingBegan: 0 },
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

/**
 * Straight-line crossings, t1 + (B − T1)(t2 − t1)/(T2 − T1), of invented curves: worked out beforehand in 40-digit
 * decimals.
 * The guideline speaks of the total time between two temperatures (FSIS-GD-2021-14, pp. 23-24).
 */
describe('crossings and times between bounds, in minutes', () => {
  const heating = curve(
    [0, 38],
    [47, 55.5],
    [121, 82],
    [180, 101.3],
    [238, 118],
    [291, 133.4],
    [330, 146],
    [352, 152.2],
  );
  const cooling = curve(
    ...(
      [
        [0, 151.8],
        [22, 139],
        [61, 118.5],
        [140, 91],
        [171, 92.2],
        [205, 83],
        [249, 74.1],
        [420, 55],
        [611, 46.2],
      ] as const
    ).map(([minute, value]): [number, number] => [minute, value]),
    [700, 43.8],
    [790, 40.9],
    [830, 39.2],
  );
  const sparse = curve([0, 141], [300, 79], [900, 44]);
  const bouncing = curve([0, 132], [100, 90], [150, 78], [170, 84], [230, 79], [300, 60]);
  const straightBetween = (readings: CurveReading[], low: number, high: number) =>
    timeInBand(prepareCurve(readings), at(low), at(high), Infinity, readings.length - 1).straight / MINUTE;

  test('a come-up', () => {
    expect(minutes(risesTo(heating, at(50)))).toEqual([expect.closeTo(32.228571, 6)]);
    expect(minutes(risesTo(heating, at(130)))).toEqual([expect.closeTo(279.298701, 6)]);
    expect(straightBetween(heating, 50, 130)).toBeCloseTo(247.07013, 6);
  });

  test.each([
    [130, 39.121951],
    [120, 58.146341],
    [80, 219.831461],
    [55, 420],
    [45, 655.5],
    [40, 811.176471],
  ])('a chill falls below %s °F', (bound, minute) => {
    expect(minutes(fallsBelow(cooling, at(bound))).at(-1)).toBeCloseTo(minute, 5);
  });

  test('its stages by straight lines, and the longest the readings allow', () => {
    const [first, second] = stageSpans(prepareCurve(cooling), coolingUncured, { ended: true });
    expect(straightOf(first)).toBeCloseTo(180.7095, 4);
    expect(straightOf(second)).toBeCloseTo(591.345, 4);
    expect(longestOf(first)).toBe(227);
    const [, slow] = stageSpans(prepareCurve(cooling), coolingCured, { ended: true });
    expect(straightOf(slow)).toBeCloseTo(435.6685, 4);
  });

  test('three readings cannot show a slow second stage: 300 and 900 min in the worst case', () => {
    const [first, second] = stageSpans(prepareCurve(sparse), coolingCured, { ended: true });
    expect(straightOf(first)).toBeCloseTo(295.161 - 53.226, 2);
    expect(straightOf(second)).toBeCloseTo(587.696, 3);
    expect([longestOf(first), longestOf(second)]).toEqual([300, 900]);
    expect(judgeCurve(sparse, coolingCured, { ended: true }).kind).toBe('undetermined');
  });

  test('a bounce: the stage ends at the last crossing', () => {
    expect(minutes(fallsBelow(bouncing, at(80)))).toEqual([expect.closeTo(141.666667, 6), expect.closeTo(218, 6)]);
    expect(straightBetween(bouncing, 80, 130)).toBeCloseTo(198.238095, 6);
    const [first] = stageSpans(prepareCurve(bouncing), coolingUncured, { ended: true });
    expect(straightOf(first)).toBeCloseTo(213.238095, 6);
  });

  test('the chill above is missed uncured and its first stage is met cured', () => {
    expect(judgeCurve(cooling, coolingUncured, { ended: true }).kind).toBe('missed');
    expect(stageSpans(prepareCurve(cooling), coolingCured, { ended: true })[0]?.verdict).toBe('met');
  });
});

type Span = ReturnType<typeof stageSpans>[number];
const straightOf = (span: Span | undefined) =>
  ((span?.straight?.endAt ?? NaN) - (span?.straight?.startAt ?? NaN)) / MINUTE;
const longestOf = (span: Span | undefined) => ((span?.endAt ?? NaN) - (span?.startAt ?? NaN)) / MINUTE;
