import { describe, expect, test } from 'vitest';
import {
  centreSource,
  freezingByCentre,
  freezingByThickness,
  judgeFreezing,
  thicknessSource,
  type CurveReading,
  type TemperatureUnit,
} from '@larderbook/haccp';

const HOUR = 3_600_000;
const DAY = 24;
/** Read every half hour and at the end. */
const held = (hours: number, temperature: number, unit: TemperatureUnit): CurveReading[] =>
  [...Array.from({ length: Math.ceil(hours * 2) }, (_, i) => i / 2), hours].map((at) => ({
    at: Math.round(at * HOUR),
    temperature: { hundredths: Math.round(temperature * 100), unit },
  }));
const kind = (read: Parameters<typeof judgeFreezing>[0]['read'], readings: CurveReading[]) =>
  judgeFreezing({ read, readings, startAt: 0, ended: true }).kind;

/** 9 CFR 318.10(c)(2), removed on 30 July 2018, as copied in 7 Pa. Code § 1.333 and JAMA 155:1394 (1954). */
describe('freezing by thickness: up to 6 in and up to 27 in', () => {
  test.each([
    [5, -15, 20, 30],
    [-10, -23.3, 10, 20],
    [-20, -28.9, 6, 12],
  ])('%s °F (%s °C): %s and %s days', (fahrenheit, celsius, thin, thick) => {
    for (const [most, days] of [
      [6, thin],
      [27, thick],
    ] as const) {
      const read = { what: 'freezer', thickness: { value: most, unit: 'in' } } as const;
      expect(kind(read, held(days * DAY, fahrenheit, '°F'))).toBe('met');
      expect(kind(read, held(days * DAY - 0.01, fahrenheit, '°F'))).toBe('missed');
      expect(kind(read, held(days * DAY, fahrenheit + 0.1, '°F'))).toBe('missed');
      expect(kind(read, held(days * DAY, celsius, '°C'))).toBe('met');
      expect(kind(read, held(days * DAY, celsius + 0.1, '°C'))).toBe('missed');
    }
  });

  test('a piece a thousandth thicker is in the next group, 15 and 69 cm as printed', () => {
    const for10Days = held(10 * DAY, -10, '°F');
    const by = (value: number, unit: 'in' | 'cm') => kind({ what: 'freezer', thickness: { value, unit } }, for10Days);
    expect([by(6, 'in'), by(6.001, 'in'), by(15, 'cm'), by(15.001, 'cm')]).toEqual(['met', 'missed', 'met', 'missed']);
    expect([by(27, 'in'), by(27.001, 'in'), by(69, 'cm'), by(69.1, 'cm')]).toEqual(['missed', 'undetermined', 'missed', 'undetermined']);
  });

  test('the groups hold these rows and no others', () => {
    const days = freezingByThickness.map(({ rows }) => rows.map(({ hours }) => hours / DAY));
    expect(days).toEqual([
      [20, 10, 6],
      [30, 20, 12],
    ]);
    expect(thicknessSource.confirmed).toBe(false);
  });
});

/** The same rule, alternative by the temperature at the centre, as a paper quotes it. */
describe('freezing by centre temperature', () => {
  test.each([
    [0, -17.8, 106],
    [-5, -20.6, 82],
    [-10, -23.3, 63],
    [-15, -26.1, 48],
    [-20, -28.9, 35],
    [-25, -31.7, 22],
    [-30, -34.5, 8],
    [-35, -37.2, 0.5],
  ])('%s °F (%s °C): %s h', (fahrenheit, celsius, hours) => {
    expect(kind({ what: 'centre' }, held(hours, fahrenheit, '°F'))).toBe('met');
    expect(kind({ what: 'centre' }, held(hours, celsius, '°C'))).toBe('met');
    expect(kind({ what: 'centre' }, held(hours - 0.001, fahrenheit, '°F'))).toBe('missed');
    expect(kind({ what: 'centre' }, held(hours, fahrenheit + 0.1, '°F'))).toBe('missed');
  });

  test('eight rows, unconfirmed', () => {
    expect(freezingByCentre).toHaveLength(8);
    expect(centreSource).toMatchObject({ confirmed: false });
  });
});
