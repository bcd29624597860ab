import { describe, expect, test } from 'vitest';
import { boundOf } from '../quantity/bound';
import { onCommonScale } from '../quantity/convert-degrees';
import type { PrintedTemperature } from '../quantity/temperature';
import type { DwellLimit } from '../kinds/dwell/dwell-limit';
import { kindOf } from '../kinds/registry';
import { catalogue } from './catalogue';
import { cookedPoultry, cookedPoultry7Log } from './fsis-poultry';
import { chicken, meat, turkey } from './published/fsis-cooking-tables.json';
import { readSeconds } from './read-cell';
import { cellOf, rowsOf, type Table } from './set-file';

/** Printed °C is rounded by its source; the two rows of Table 2 printed a tenth too high are within this as well. */
const PRINTING_HUNDREDTHS_CELSIUS = 60;

describe.each(catalogue)('$key', ({ limit }) => {
  test('names its source, edition and whether it was read there', () => {
    expect(limit.source.citation).not.toBe('');
    expect(limit.source.edition).not.toBe('');
    expect(typeof limit.source.confirmed).toBe('boolean');
    expect(`${limit.source.citation} ${limit.source.edition}`).not.toMatch(/undefined|NaN(?!O)/);
  });

  test('prints a unit, or both of one temperature', () => {
    for (const printed of kindOf(limit).temperatures(limit))
      expect(gapBetweenUnits(printed)).toBeLessThanOrEqual(PRINTING_HUNDREDTHS_CELSIUS);
  });

  test('asks for less time the hotter it is', () => {
    if (limit.kind !== 'dwell') return;
    expect(risesIn(limit, '°F')).toBe(true);
    expect(risesIn(limit, '°C')).toBe(true);
    expect(limit.rows.every(({ seconds }, i) => i === 0 || seconds <= (limit.rows[i - 1]?.seconds ?? 0))).toBe(true);
  });
});

test('every key of the catalogue is there once', () => {
  expect(new Set(catalogue.map(({ key }) => key)).size).toBe(catalogue.length);
});

const fahrenheitIn = (table: Table) => rowsOf(table).map((row) => Number(cellOf(row, '°F')));
const FATS = Array.from({ length: 12 }, (_, i) => `${i + 1} % fat`);

test('the tables have all their rows', () => {
  expect(fahrenheitIn(meat)).toEqual(Array.from({ length: 31 }, (_, i) => 130 + i));
  for (const table of [chicken, turkey]) {
    expect(fahrenheitIn(table)).toEqual(Array.from({ length: 30 }, (_, i) => 136 + i));
    expect(table.columns).toEqual(['°F', '°C', ...FATS]);
  }
});

test('meat: a higher reduction never takes less time', () => {
  for (const row of rowsOf(meat)) {
    const [log5, log65, log7] = ['5-log', '6.5-log', '7-log'].map((column) => readSeconds(cellOf(row, column))) as [number, number, number];
    expect(log5).toBeLessThanOrEqual(log65);
    expect(log65).toBeLessThanOrEqual(log7);
  }
});

test('poultry: more fat never takes less time, except where it is printed so', () => {
  const falls = (table: Table) =>
    rowsOf(table).flatMap((row) => {
      const seconds = FATS.map((column) => readSeconds(cellOf(row, column)));
      return seconds.flatMap((own, i) => (i > 0 && own < (seconds[i - 1] ?? 0) ? [`${cellOf(row, '°F')} °F, ${i} to ${i + 1} %`] : []));
    });
  expect(falls(chicken)).toEqual(['151 °F, 1 to 2 %']);
  expect(falls(turkey)).toEqual(['150 °F, 1 to 2 %', '151 °F, 1 to 2 %']);
});

test('the printed °C that are a tenth above the true conversion stay as printed', () => {
  const odd = rowsOf(meat)
    .map((row) => [Number(cellOf(row, '°F')), Number(cellOf(row, '°C'))] as const)
    .filter(([fahrenheit, celsius]) => celsius.toFixed(1) !== (((fahrenheit - 32) * 5) / 9).toFixed(1));
  expect(odd.map(([, celsius]) => celsius)).toEqual([58.4, 59.5]);
});

test.each([
  ['fat not known', undefined, 'chicken', 16.9],
  ['more fat than the table has', 20, 'chicken', 16.9],
  ['exactly 12 %', 12, 'chicken', 16.9],
  ['less fat than the table has', 0, 'chicken', 13.7],
  ['fat that is no number', NaN, 'chicken', 16.9],
  ['fat between two columns', 7.5, 'chicken', 15.6],
  ['several species', undefined, 'other', 26.9],
] as const)('poultry at 160 °F, %s', (_case, fat, poultry, seconds) => {
  expect(secondsAt(cookedPoultry(poultry, fat), 16_000)).toBe(seconds);
});

test('between two columns the longer counts, even where the printed time falls', () => {
  expect(secondsAt(cookedPoultry('turkey', 1.5), 15_000)).toBe(228);
});

test('the strictest poultry table is at least as long as every other', () => {
  for (const poultry of ['chicken', 'turkey', 'other'] as const) {
    for (let fat = 1; fat <= 12; fat += 1) {
      cookedPoultry(poultry, fat).rows.forEach(({ seconds }, i) => {
        expect(cookedPoultry7Log.rows[i]?.seconds).toBeGreaterThanOrEqual(seconds);
      });
    }
  }
});

function gapBetweenUnits(printed: PrintedTemperature): number {
  expect(printed['°F'] ?? printed['°C']).toBeTypeOf('number');
  if (printed['°F'] === undefined || printed['°C'] === undefined) return 0;
  const fahrenheit = onCommonScale({ hundredths: printed['°F'], unit: '°F' });
  const celsius = onCommonScale({ hundredths: printed['°C'], unit: '°C' });
  return Math.abs(fahrenheit - celsius) / 9;
}

const risesIn = ({ rows }: DwellLimit, unit: '°F' | '°C'): boolean =>
  rows.every(({ at }, i) => i === 0 || boundOf(at)[unit] > boundOf(rows[i - 1]?.at ?? {})[unit]);

const secondsAt = ({ rows }: DwellLimit, fahrenheit: number): number | undefined => rows.find(({ at }) => at['°F'] === fahrenheit)?.seconds;
