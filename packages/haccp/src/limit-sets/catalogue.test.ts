import { describe, expect, test } from 'vitest';
import { boundOf } from '../quantity/bound';
import { onCommonScale } from '../quantity/convert-degrees';
import type { PrintedTemperature } from '../quantity/temperature';
import { sayLimit } from '../limits/say-limit';
import type { DwellLimit } from '../limits/limit';
import { catalogue } from './catalogue';
import { chickenRows } from './fsis-chicken';
import { meatRows } from './fsis-meat';
import { cookedPoultry, cookedPoultry7Log } from './fsis-poultry';
import { turkeyRows } from './fsis-turkey';
import { printedSeconds } from './printed';
import { temperaturesIn } from './temperatures-in';

/** Printed °C is rounded by its source; the two rows of Table 2 printed a tenth too high are within this as well. */
const PRINTING_HUNDREDTHS_CELSIUS = 60;

describe.each(catalogue)('$key', ({ limit }) => {
  test('names its source, edition and whether it was read there', () => {
    expect(limit.source.citation).not.toBe('');
    expect(limit.source.edition).not.toBe('');
    expect(typeof limit.source.confirmed).toBe('boolean');
    expect(`${limit.source.citation} ${limit.source.edition}`).not.toMatch(/undefined|NaN(?!O)/);
  });

  test('prints with its comparison', () => {
    expect(sayLimit(limit)).toMatch(/[≤≥<>]|within|for|no holding time/);
    expect(sayLimit(limit, '°C')).not.toMatch(/undefined|NaN(?!O)|no figure/);
  });

  test('prints a unit, or both of one temperature', () => {
    for (const printed of temperaturesIn({ limit }))
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

test('the tables have all their rows', () => {
  expect(meatRows.map((row) => row['°F'])).toEqual(Array.from({ length: 31 }, (_, i) => 130 + i));
  for (const rows of [chickenRows, turkeyRows]) {
    expect(rows.map((row) => row['°F'])).toEqual(Array.from({ length: 30 }, (_, i) => 136 + i));
    for (const { byFat } of rows) expect(byFat.split(' ')).toHaveLength(12);
  }
});

test('meat: a higher reduction never takes less time', () => {
  for (const { log5, log65, log7 } of meatRows) {
    expect(printedSeconds(log5)).toBeLessThanOrEqual(printedSeconds(log65));
    expect(printedSeconds(log65)).toBeLessThanOrEqual(printedSeconds(log7));
  }
});

test('poultry: more fat never takes less time, except where it is printed so', () => {
  const falls = (rows: typeof chickenRows) =>
    rows.flatMap(({ '°F': fahrenheit, byFat }) => {
      const seconds = byFat.split(' ').map(printedSeconds);
      return seconds.flatMap((own, i) =>
        i > 0 && own < (seconds[i - 1] ?? 0) ? [`${fahrenheit} °F, ${i} to ${i + 1} %`] : [],
      );
    });
  expect(falls(chickenRows)).toEqual(['151 °F, 1 to 2 %']);
  expect(falls(turkeyRows)).toEqual(['150 °F, 1 to 2 %', '151 °F, 1 to 2 %']);
});

test('the printed °C that are a tenth above the true conversion stay as printed', () => {
  const odd = meatRows
    .filter((row) => row['°C'].toFixed(1) !== (((row['°F'] - 32) * 5) / 9).toFixed(1))
    .map((row) => row['°C']);
  expect(odd).toEqual([58.4, 59.5]);
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

test.each(['', '5', '5h', '1.25m', '-3m'])('"%s" is no printed time', (text) => {
  expect(() => printedSeconds(text)).toThrow(RangeError);
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

const secondsAt = ({ rows }: DwellLimit, fahrenheit: number): number | undefined =>
  rows.find(({ at }) => at['°F'] === fahrenheit)?.seconds;
