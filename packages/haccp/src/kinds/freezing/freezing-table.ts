import type { Source } from '../../limits/source';
import { scaled } from '../../quantity/decimal';
import type { PrintedTemperature } from '../../quantity/temperature';
import type { FreezingLimit } from './freezing-limit';

/** Against trichinae in pork; any one row is enough. */
export type FreezingRow = { at: PrintedTemperature; hours: number };

/** Of the piece, or of the layer, box or block it is frozen in. Whole tenths, as printed. */
export type ThicknessGroup = {
  name: 'group 1' | 'group 2';
  most: { in: number; cm: number };
  rows: readonly FreezingRow[];
};

/**
 * Removed from the regulation in 2018 (final rule of 31 May 2018, effective 30 July): control goes through the hazard
 * analysis, which may still rest on these tables. Read in copies, not in the regulation itself.
 */
const removed = (place: string, copy: string): Source => ({
  citation: `9 CFR 318.10(c)(2), ${place}, removed on 30 July 2018; from ${copy}`,
  edition: 'until 2018',
  confirmed: false,
});

const DAY = 24;
const row = (fahrenheit: number, celsius: number, hours: number): FreezingRow => ({
  at: { '°F': fahrenheit * 100, '°C': Math.round(celsius * 100) },
  hours,
});

/** By the freezer. Group 1 to 6 in thick, group 2 over 6 to 27 in. */
export const freezingByThickness: readonly ThicknessGroup[] = [
  {
    name: 'group 1',
    most: { in: 60, cm: 150 },
    rows: [row(5, -15, 20 * DAY), row(-10, -23.3, 10 * DAY), row(-20, -28.9, 6 * DAY)],
  },
  {
    name: 'group 2',
    most: { in: 270, cm: 690 },
    rows: [row(5, -15, 30 * DAY), row(-10, -23.3, 20 * DAY), row(-20, -28.9, 12 * DAY)],
  },
];

export const freezingByCentre: readonly FreezingRow[] = [
  row(0, -17.8, 106),
  row(-5, -20.6, 82),
  row(-10, -23.3, 63),
  row(-15, -26.1, 48),
  row(-20, -28.9, 35),
  row(-25, -31.7, 22),
  row(-30, -34.5, 8),
  row(-35, -37.2, 0.5),
];

/** Thickness compares exactly in its own unit; no row beyond the thickest. */
export function freezingRows(read: FreezingLimit['read']): readonly FreezingRow[] | undefined {
  if (read.what === 'centre') return freezingByCentre;
  const { value, unit } = read.thickness;
  const thousandths = scaled(value, 3);
  if (thousandths === undefined || thousandths <= 0) return undefined;
  return freezingByThickness.find(({ most }) => thousandths <= most[unit] * 100)?.rows;
}

export const thicknessSource = removed('table of freezing by thickness', '7 Pa. Code § 1.333 and JAMA 155:1394 (1954)');
export const centreSource = removed('table of freezing by centre temperature', 'a paper that quotes it');

/** Pork, not game, whose trichinae freezing does not kill (from memory); chilled before, and spaced for the air. */
export const FREEZING_CONDITIONS = [{ code: 'freezing-for-pork' }, { code: 'freezing-spaced' }] as const;
