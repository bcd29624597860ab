import { describe, expect, test } from 'vitest';
import type { FigureLimit } from './figure-limit';
import { figureFault, sayFigureLimit } from './figure-limit';
import { judgeFigure } from './judge-figure';

const source = { citation: 'an example', edition: 'none', confirmed: false };
const fat: FigureLimit = { kind: 'figure', of: 'fat', unit: '%', max: 30_000, source };
const life: FigureLimit = { kind: 'figure', of: 'shelf life', unit: 'days', max: 5000, signs: { max: '<' }, source };
const nitrite: FigureLimit = { kind: 'figure', of: 'nitrite', unit: 'ppm', min: 40_000, max: 80_000, source };
const of = (numerator: bigint, denominator = 1n) => ({ numerator, denominator });

describe('a figure against its bounds, without any rounding', () => {
  test.each([
    ['on the most', of(30n), fat, 'met', '0 % to spare'],
    ['a billionth above it', of(30_000_000_001n, 1_000_000_000n), fat, 'missed', '0.001 % too much'],
    ['a billionth below it', of(29_999_999_999n, 1_000_000_000n), fat, 'met', '0 % to spare'],
    ['on a figure that is excluded', of(5n), life, 'missed', 'on a figure that is excluded'],
    ['just below it', of(4999n, 1000n), life, 'met', '0.001 days to spare'],
    ['on the least', of(40n), nitrite, 'met', '0 ppm to spare'],
    ['below the least', of(39n), nitrite, 'missed', '1 ppm short'],
    ['between, nearer the most', of(70n), nitrite, 'met', '10 ppm to spare'],
    ['a third', of(100n, 3n), fat, 'missed', '3.334 % too much'],
  ])('%s', (_case, figure, limit, kind, margin) => {
    expect(judgeFigure(figure, limit)).toMatchObject({ kind, margin });
  });

  test('a figure that is advised fails nothing, and says so; without a figure nothing is met', () => {
    const useful: FigureLimit = { kind: 'figure', of: 'nitrite', unit: 'ppm', min: 40_000, advises: true, source };
    expect(judgeFigure(of(39n), useful)).toEqual({
      kind: 'met',
      measured: '39 ppm',
      limit: 'nitrite ≥ 40 ppm, advised',
      notes: [],
      source,
      because: '39 ppm is outside what is advised, nitrite ≥ 40 ppm, advised; no minimum or maximum is asked for.',
    });
    expect(judgeFigure(of(40n), useful)).toMatchObject({ kind: 'met', margin: '0 ppm to spare' });
    expect(judgeFigure(undefined, useful).kind).toBe('undetermined');
  });

  test('what fewer decimals would put on the bound is said with more', () => {
    expect(judgeFigure(of(300_001n, 10_000n), fat)).toMatchObject({ measured: '30.0001 %' });
    expect(judgeFigure(of(30_000_000_001n, 1_000_000_000n), fat)).toMatchObject({ measured: 'just off 30 %' });
  });
});

test.each([
  [fat, 'fat ≤ 30 %'],
  [life, 'shelf life < 5 days'],
  [nitrite, 'nitrite ≥ 40 ppm and ≤ 80 ppm'],
  [{ ...fat, printed: '≤ a third' }, 'fat ≤ a third'],
  [{ ...fat, max: undefined }, 'fat: no bound set'],
])('a limit is said as it is printed', (limit, line) => {
  expect(sayFigureLimit(limit)).toBe(line);
});

test.each([
  ['no bound', { ...fat, max: undefined }, 'The figure has neither a least nor a most.'],
  ['half a thousandth', { ...fat, max: 0.5 }, 'A bound is no whole number of thousandths.'],
  ['upside down', { ...nitrite, min: 90_000 }, 'The least is more than the most.'],
  ['sound', nitrite, undefined],
])('%s', (_case, limit, fault) => {
  expect(figureFault(limit)).toBe(fault);
  if (fault) expect(judgeFigure(of(1n), limit)).toMatchObject({ kind: 'undetermined', because: fault });
});
