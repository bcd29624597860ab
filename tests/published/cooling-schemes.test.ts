import { describe, expect, test } from 'vitest';
import {
  boundOf,
  degrees,
  fallsBelow,
  judgeCurve,
  limitSetById,
  type CoolingLimit,
  type CurveReading,
  type LimitRow,
} from '@larderbook/haccp';

const MINUTE = 60_000;
const curve = (...points: [minutes: number, celsius: number][]): CurveReading[] =>
  points.map(([minutes, value]) => ({ at: minutes * MINUTE, temperature: degrees(value, '°C') }));

/** An invented chill in °C, cooking ended at 0; read at every whole degree a rule asks about, on straight lines. */
const POINTS: [number, number][] = [
  [0, 72],
  [30, 60],
  [60, 50],
  [150, 20],
  [240, 12],
  [330, 5],
  [380, 3],
];
const log = curve(...POINTS);
const CROSSED = [48, 54, 129, 147, 355].map((minute): [number, number] => [minute, onLine(minute)]);
const dense = curve(...[...POINTS, ...CROSSED].sort(([a], [b]) => a - b));

function onLine(minute: number): number {
  const after = POINTS.findIndex(([at]) => at > minute);
  const [[t1, c1], [t2, c2]] = [POINTS[after - 1] ?? [0, 0], POINTS[after] ?? [0, 0]];
  return c1 + ((c2 - c1) * (minute - t1)) / (t2 - t1);
}

const rowOf = (set: string, id: string): LimitRow => {
  const row = limitSetById(set)?.rows.find((one) => one.id === id);
  if (!row) throw new Error(`${set} has no row ${id}`);
  return row;
};
const cooling = (set: string, id: string) => rowOf(set, id).limit as CoolingLimit;
const judged = (readings: CurveReading[], limit: CoolingLimit) => judgeCurve(readings, limit, { ended: true, startAt: 0 }).kind;
test.each([
  [60, 30],
  [54, 48],
  [52, 54],
  [50, 60],
  [27, 129],
  [21, 147],
  [20, 150],
  [12, 240],
  [5, 330],
  [4, 355],
  [3, 380],
])('straight lines cross %s °C after %s min', (celsius, minutes) => {
  const bound = boundOf({ '°C': celsius * 100 });
  // The line leaves a bound that is read exactly, so the crossing is the moment of that reading or of the line.
  const [crossed] = fallsBelow(celsius === 3 ? [...log, ...curve([381, 2.9])] : log, bound);
  expect((crossed ?? NaN) / MINUTE).toBeCloseTo(minutes, 6);
});

describe('one chill by each rule', () => {
  const southern = 'australia-new-zealand-2026';
  test.each([
    // Standard 3.2.2, cl. 7(3): 117 of 120 min, 183 of 240 min.
    ['Australia, 60 to 21 to 5 °C', southern, 'cooling-any', 'met'],
    ['New Zealand, the same figures', southern, 'cooling-new-zealand', 'met'],
    // Eastern Ontario Health Unit: 120 of 120 min, which tests the sign; 205 of 240 min (the hours from memory).
    ['Canada, premises, 60 to 20 to 4 °C', 'canada-2026', 'cooling-premises', 'met'],
    ['Canada, premises, first stage', 'canada-2026', 'cooling-premises-first', 'met'],
    // Archived CFIA manual, 4.5, in fragments: 90 of 120 min; 81 of 120 and 307 of 420 min from 54 °C.
    ['Canada, intact muscle, 50 to 20 °C', 'canada-2026', 'cooling-intact', 'met'],
    ['Canada, rapid, 54 to 27 to 4 °C', 'canada-2026', 'cooling-any', 'met'],
    // Australian meat standard: 180 of 360 min, 90 of 96 min (printed as 1.6 h, and 10 h 6 min in all).
    ['Australia, uncured, 50 to 12 to 5 °C', southern, 'cooling-uncured', 'met'],
    ['Australia, cured, 50 to 12 to 5 °C', southern, 'cooling-cured', 'met'],
  ])('%s', (_case, set, id, kind) => {
    expect(judged(dense, cooling(set, id))).toBe(kind);
  });

  // The clock of these starts when cooking ends, at 0.
  test.each([
    // Australian meat standard: 60 of 150 min, 60 of 195 min; 330 of 480 and of 600 min in all.
    ['Australia, uncured, to 50 °C', southern, 'cooling-uncured-first', 'met'],
    ['Australia, cured, to 50 °C', southern, 'cooling-cured-first', 'met'],
    ['Australia, uncured, good practice', southern, 'cooling-good-practice-uncured', 'met'],
    ['Australia, cured, good practice', southern, 'cooling-good-practice-cured', 'met'],
    // FSAI Guidance Note 15: 380 of 150 min from cooking to 3 °C.
    ['Ireland, cook-chill, to 3 °C', 'united-kingdom-2026', 'cook-chill-cooling', 'missed'],
    // Department of Health, 1989: 380 of 120 min (from memory).
    ['United Kingdom, cook-chill, to 3 °C', 'united-kingdom-2026', 'cook-chill-1989-cooling', 'missed'],
  ] as const)('%s from the end of cooking', (_case, set, id, kind) => {
    expect(judged(dense, cooling(set, id))).toBe(kind);
  });

  test('21.0 °C at 150 min: Canada misses, Australia is still met at exactly 120 min', () => {
    const slower = curve(...POINTS.map(([at, value]): [number, number] => [at, at === 150 ? 21 : value]));
    expect(judged(slower, cooling('canada-2026', 'cooling-premises-first'))).not.toBe('met');
    expect(judged(slower, cooling(southern, 'cooling-any'))).toBe('met');
  });

  test('with nothing read between 60 and 240 min, neither is shown', () => {
    const sparse = curve(...POINTS.filter(([at]) => at !== 150));
    expect(judged(sparse, cooling('canada-2026', 'cooling-premises-first'))).not.toBe('met');
    expect(judged(sparse, cooling(southern, 'cooling-any'))).not.toBe('met');
  });
});

describe('the time from the end of cooking (FSAI Guidance Note 15: 3 °C within 150 min)', () => {
  const limit = cooling('united-kingdom-2026', 'cook-chill-cooling');
  const inFahrenheit = (...points: [minutes: number, value: number][]): CurveReading[] =>
    points.map(([minutes, value]) => ({ at: minutes * MINUTE, temperature: degrees(value, '°F') }));
  test.each([
    ['on the bound counts', curve([0, 72], [150, 3]), 'met'],
    ['on the bound in °F, 37.4 °F exactly', inFahrenheit([0, 161.6], [150, 37.4]), 'met'],
    ['a hundredth above does not', curve([0, 72], [150, 3.01], [151, 3]), 'missed'],
    ['a hundredth above in °F does not', inFahrenheit([0, 161.6], [150, 37.41], [151, 37.4]), 'missed'],
    ['a hundredth below', curve([0, 72], [150, 2.99]), 'met'],
    ['a second too late', curve([0, 72], [140, 4], [150 + 1 / 60, 3]), 'missed'],
    ['nothing read for longer than that', curve([0, 72], [150 + 1 / 60, 3]), 'undetermined'],
    ['a second to spare', curve([0, 72], [150 - 1 / 60, 3]), 'met'],
    ['warm again: only what stays counts', curve([0, 72], [100, 3], [120, 4], [160, 3]), 'missed'],
    ['never reached', curve([0, 72], [150, 3.01]), 'missed'],
    ['cold at the only reading, in time', curve([149, 3]), 'met'],
    ['cold at the only reading, too late to show it', curve([151, 3]), 'undetermined'],
  ])('%s', (_case, readings, kind) => {
    expect(judged(readings, limit)).toBe(kind);
  });

  test('without a recorded end of cooking nothing is known, however cold the core', () => {
    expect(judgeCurve(curve([0, 72], [100, 3]), limit, { ended: true })).toMatchObject({
      kind: 'undetermined',
      finding: 'cooling-end-of-cooking-unknown',
      figures: {
        stage: { code: 'from-cooking', figures: { to: { value: '3', unit: '°C' } } },
        to: { value: '3', unit: '°C' },
        allowed: { value: '9000000', unit: 'ms' },
      },
    });
  });
});

/** The second limit counts from 54 °C: 7 h in all, so that a quick first stage leaves more for the second. */
test.each([
  ['1 h and 6 h', curve([0, 54], [60, 27], [420, 4]), 'met'],
  ['2 h and 5 h', curve([0, 54], [120, 27], [420, 4]), 'met'],
  ['2 h and a minute over', curve([0, 54], [121, 27], [420, 4]), 'missed'],
  ['7 h and a minute over', curve([0, 54], [60, 27], [421, 4]), 'missed'],
] as const)('archived Canadian manual, 4.5, in fragments: %s', (_case, readings, kind) => {
  expect(judged([...readings], cooling('canada-2026', 'cooling-any'))).toBe(kind);
});

/** 12 to 5 °C is printed as 1.6 h and as 1 h 36 min. */
test.each([
  [96, 'met'],
  [97, 'missed'],
] as const)('Australian meat standard, uncured, the last stage in %s min', (minutes, kind) => {
  const readings = curve([0, 50], [360, 12], [360 + minutes, 5]);
  expect(judged(readings, cooling('australia-new-zealand-2026', 'cooling-uncured'))).toBe(kind);
});

/** Stages as printed, on their boundary: FSIS Appendix B 1999, 2021, 2017 (as reported); Food Code 2022 3-501.14(A). */
describe('stages of the United States on their boundary, in both units', () => {
  const stages = (unit: '°F' | '°C', ...points: [number, number][]): CurveReading[] =>
    points.map(([minutes, value]) => ({ at: minutes * MINUTE, temperature: degrees(value, unit) }));
  test.each([
    ['us-inspected-2021', 'cooling-any', stages('°F', [0, 130], [90, 80], [390, 40]), 'met'],
    ['us-inspected-2021', 'cooling-any', stages('°C', [0, 54.4], [90, 26.7], [390, 4.4]), 'met'],
    ['us-inspected-2021', 'cooling-any', stages('°F', [0, 130], [91, 80], [391, 40]), 'missed'],
    ['us-inspected-2021', 'cooling-any', stages('°C', [0, 54.4], [91, 26.7], [391, 4.4]), 'missed'],
    ['us-inspected-2021', 'cooling-any', stages('°F', [0, 130], [90, 80], [391, 40]), 'missed'],
    ['us-inspected-2021', 'cooling-cured', stages('°F', [0, 130], [300, 80], [900, 45]), 'met'],
    ['us-inspected-2021', 'cooling-cured', stages('°F', [0, 130], [301, 80], [901, 45]), 'missed'],
    ['us-inspected-2017', 'cooling-any', stages('°F', [0, 120], [60, 80], [360, 40]), 'met'],
    ['us-inspected-2017', 'cooling-any', stages('°F', [0, 120], [61, 80], [361, 40]), 'missed'],
    ['us-retail-2022', 'cooling-any', stages('°F', [0, 135], [120, 70], [360, 41]), 'met'],
    ['us-retail-2022', 'cooling-any', stages('°C', [0, 57], [120, 21], [360, 5]), 'met'],
    ['us-retail-2022', 'cooling-any', stages('°F', [0, 135], [90, 70], [361, 41]), 'missed'],
  ] as const)('%s, %s', (set, id, readings, kind) => {
    expect(judged([...readings], cooling(set, id))).toBe(kind);
  });
});
