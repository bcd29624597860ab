import fc from 'fast-check';
import { expect, test } from 'vitest';
import { degrees } from '../quantity/degrees';
import { allowForError } from './allow-for-error';
import { icePoint } from './boiling-point';
import { boilingWater } from './boiling-water';
import type { Air } from './station-pressure';

test('the boiling point comes to the tenth of a degree, in either unit, with how well it is known', () => {
  const inFahrenheit = { reads: degrees(212, '°F'), goodTo: degrees(1.08, '°F') };
  const inCelsius = { reads: degrees(95, '°C'), goodTo: degrees(0.6, '°C') };
  expect(boilingWater({ from: 'height', metres: 0 }, '°F')).toMatchObject(inFahrenheit);
  expect(boilingWater({ from: 'height', metres: 1500 }, '°C')).toMatchObject(inCelsius);
  expect(boilingWater({ from: 'barometer', hectopascal: 850 }, '°C')).toEqual({
    kind: 'known',
    reads: degrees(95.1, '°C'),
    goodTo: degrees(0.03, '°C'),
    hectopascal: 850,
  });
});

test('a pressure reduced to sea level is not taken for the one at the place', () => {
  expect(boilingWater({ from: 'barometer', hectopascal: 1005, metres: 1600 }, '°C')).toMatchObject({
    kind: 'undetermined',
    why: [
      { code: 'pressure-not-there', figures: { read: { value: '1005' }, usual: { value: '835' }, height: { value: '1600' } } },
      { code: 'as-weather-report' },
    ],
  });
  expect(boilingWater({ from: 'barometer', hectopascal: 850, metres: 0 }, '°C')).toMatchObject({
    why: [{ code: 'pressure-not-there' }, { code: 'check-height-and-barometer' }],
  });
  expect(boilingWater({ from: 'barometer', hectopascal: 835, metres: 1600 }, '°C').kind).toBe('known');
});

test.each<[string, Air]>([
  ['no height', { from: 'height', metres: NaN }],
  ['a height no shop has', { from: 'height', metres: 20_000 }],
  ['a depth no shop has', { from: 'weather report', seaLevelHectopascal: 1000, metres: -500 }],
  ['no pressure', { from: 'barometer', hectopascal: NaN }],
  ['inches of mercury', { from: 'barometer', hectopascal: 29.92 }],
  ['a pressure without end', { from: 'weather report', seaLevelHectopascal: Infinity, metres: 0 }],
])('%s is undetermined', (_case, air) => {
  expect(boilingWater(air, '°F').kind).toBe('undetermined');
});

test('water boils hotter under more pressure, always', () => {
  const pressure = fc.double({ min: 300, max: 1100, noNaN: true });
  fc.assert(
    fc.property(pressure, pressure, (a, b) => {
      const at = (hectopascal: number) => boilingWater({ from: 'barometer', hectopascal }, '°C');
      const [low, high] = [at(Math.min(a, b)), at(Math.max(a, b))];
      if (low.kind !== 'known' || high.kind !== 'known') throw new Error('not known');
      expect(high.reads.hundredths).toBeGreaterThanOrEqual(low.reads.hundredths);
    }),
  );
});

test('ice water is the same at any height', () => {
  expect([icePoint('°C'), icePoint('°F')]).toEqual([degrees(0, '°C'), degrees(32, '°F')]);
});

test.each([
  ['at least, same unit', degrees(165, '°F'), degrees(1, '°F'), 'min', degrees(166, '°F')],
  ['at most, same unit', degrees(40, '°F'), degrees(1, '°F'), 'max', degrees(39, '°F')],
  ['the sign of the error says nothing', degrees(165, '°F'), degrees(-1, '°F'), 'min', degrees(166, '°F')],
  ['± 1 °C is ± 1.8 °F', degrees(165, '°F'), degrees(1, '°C'), 'min', degrees(166.8, '°F')],
  ['± 1 °F is ± 0.556 °C, to the stricter side', degrees(74, '°C'), degrees(1, '°F'), 'min', degrees(74.56, '°C')],
  ['and at most to the stricter side too', degrees(4, '°C'), degrees(1, '°F'), 'max', degrees(3.44, '°C')],
] as const)('a limit leaves room for the error of the instrument: %s', (_case, figure, error, side, needed) => {
  expect(allowForError(figure, error, side)).toEqual(needed);
});

test('an error that is no number leaves no figure to be met', () => {
  expect(allowForError(degrees(165, '°F'), { hundredths: NaN, unit: '°F' }, 'min').hundredths).toBeNaN();
});
