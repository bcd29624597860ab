import { describe, expect, test } from 'vitest';
import {
  allowForError,
  comeUpWithinSixHours,
  cookedMeat5Log,
  cookedMeat65Log,
  cookedMeat7Log,
  cookedPoultry,
  degrees,
  judgeCurve,
  roastFoodCode,
  type CurveReading,
  type DwellLimit,
  type TemperatureUnit,
} from '@larderbook/haccp';

const MINUTE = 60_000;
const steady = (value: number, unit: TemperatureUnit, seconds: number): CurveReading[] => {
  const readings: CurveReading[] = [];
  for (let at = 0; at < seconds; at += 300) readings.push({ at: at * 1000, temperature: degrees(value, unit) });
  return [...readings, { at: Math.round(seconds * 1000), temperature: degrees(value, unit) }];
};
const held = (limit: DwellLimit, value: number, unit: TemperatureUnit, seconds: number) =>
  judgeCurve(steady(value, unit, seconds), limit, { ended: true }).kind;

/** The least seconds at this temperature that meet the limit, found by asking the judge, in tenths. */
function secondsNeeded(limit: DwellLimit, value: number, unit: TemperatureUnit): number {
  for (const { seconds } of limit.rows.toReversed()) {
    if (held(limit, value, unit, seconds) === 'met' && (seconds === 0 || held(limit, value, unit, seconds - 0.1) !== 'met')) return seconds;
  }
  return NaN;
}

describe('FSIS Cooking Guideline (Revised Appendix A), FSIS-GD-2021-14, Dec 2021, Table 2 p. 35, Table 6 p. 59', () => {
  test.each([
    ['6.5-log, 145 °F for 4 min', cookedMeat65Log, 145, '°F', 240, 'met'],
    ['6.5-log, 145 °F for 3 min 59 s', cookedMeat65Log, 145, '°F', 239, 'missed'],
    ['5-log, 145 °F for 3 min 59 s: 3 min are enough', cookedMeat5Log, 145, '°F', 239, 'met'],
    ['5-log, 145 °F for 2 min 59 s', cookedMeat5Log, 145, '°F', 179, 'missed'],
    ['6.5-log, 157 °F for 13 s', cookedMeat65Log, 157, '°F', 13, 'missed'],
    ['6.5-log, 157 °F for 14 s', cookedMeat65Log, 157, '°F', 14, 'met'],
    ['6.5-log, 158 °F at once', cookedMeat65Log, 158, '°F', 0, 'met'],
    ['6.5-log, 129.9 °F for a whole day: no row', cookedMeat65Log, 129.9, '°F', 86_400, 'missed'],
    ['6.5-log, 130 °F for 112 min', cookedMeat65Log, 130, '°F', 112 * 60, 'met'],
    ['6.5-log, 130 °F for a second less', cookedMeat65Log, 130, '°F', 112 * 60 - 1, 'missed'],
  ] as const)('%s', (_case, limit, value, unit, seconds, kind) => {
    expect(held(limit, value, unit, seconds)).toBe(kind);
  });

  test.each([
    ['7-log at 150 °F', cookedMeat7Log, 150, '°F', 72],
    ['6.5-log at 150.9 °F: the row at or below, 150 °F', cookedMeat65Log, 150.9, '°F', 67],
    ['6.5-log at 65.0 °C, printed beside 149 °F', cookedMeat65Log, 65, '°C', 85],
  ] as const)('%s', (_case, limit, value, unit, seconds) => {
    expect(secondsNeeded(limit, value, unit)).toBe(seconds);
  });
});

describe('FSIS-GD-2021-14, poultry, 7-log: Tables 3 and 4, pp. 36-39', () => {
  test.each([
    ['pork and chicken sausage, fat unknown, 160 °F: chicken, 12 % column', cookedPoultry('chicken'), 160, 16.9],
    ['turkey of 5 % fat, 155 °F: 1.2 min', cookedPoultry('turkey', 5), 155, 72],
    ['duck of 8 % fat, 150 °F: the longer of 3.1 and 4 min', cookedPoultry('other', 8), 150, 240],
    ['chicken of 7 % fat, 162 °F', cookedPoultry('chicken', 7), 162, 9.6],
    ['chicken of 6 % fat, 162 °F: at once', cookedPoultry('chicken', 6), 162, 0],
  ] as const)('%s', (_case, limit, fahrenheit, seconds) => {
    expect(secondsNeeded(limit, fahrenheit, '°F')).toBe(seconds);
  });
});

describe('FSIS-GD-2021-14, p. 24: 50 to 130 °F in 6 h or less', () => {
  const comeUp = (minutes: number): CurveReading[] =>
    [
      [0, 50],
      [100, 70],
      [200, 95],
      [300, 115],
      [minutes, 130],
    ].map(([at = 0, value = 0]) => ({
      at: at * MINUTE,
      temperature: degrees(value, '°F'),
    }));

  test.each([
    ['6 h 00', 360, 'met'],
    ['6 h 01', 361, 'missed'],
  ])('%s', (_case, minutes, kind) => {
    expect(judgeCurve(comeUp(minutes), comeUpWithinSixHours, { ended: true }).kind).toBe(kind);
  });
});

test('FSIS-GD-2021-14, p. 20: a need of 165 °F read with ± 1 °F asks for 166 °F', () => {
  expect(allowForError(degrees(165, '°F'), degrees(1, '°F'), 'min')).toEqual(degrees(166, '°F'));
});

test('FDA Food Code 2022, 3-401.11(B)(1): the roast table is the 6.5-log table with rows left out', () => {
  const known = new Map(cookedMeat65Log.rows.map(({ at, seconds }) => [at['°F'], { at, seconds }]));
  expect(roastFoodCode.rows).toHaveLength(17);
  for (const row of roastFoodCode.rows) expect(known.get(row.at['°F'])).toEqual(row);
});
