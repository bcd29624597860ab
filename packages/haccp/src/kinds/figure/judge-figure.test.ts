import { describe, expect, test } from 'vitest';
import type { FigureLimit } from './figure-limit';
import { figureFault } from './figure-limit';
import { judgeFigure } from './judge-figure';
import { plainly, type Plainly } from '../../limits/plainly.test-data';

const source = { citation: 'an example', edition: 'none', confirmed: false };
const fat: FigureLimit = { kind: 'figure', of: 'fat', unit: '%', max: 30_000, source };
const life: FigureLimit = { kind: 'figure', of: 'shelf life', unit: 'days', max: 5000, signs: { max: '<' }, source };
const nitrite: FigureLimit = { kind: 'figure', of: 'nitrite', unit: 'ppm', min: 40_000, max: 80_000, source };
const of = (numerator: bigint, denominator = 1n) => ({ numerator, denominator });

describe('a figure against its bounds, without any rounding', () => {
  test.each([
    ['on the most', of(30n), fat, 'value-within', '0 %'],
    ['a billionth above it', of(30_000_000_001n, 1_000_000_000n), fat, 'figure-above', '0.001 %'],
    ['a billionth below it', of(29_999_999_999n, 1_000_000_000n), fat, 'value-within', '0 %'],
    ['on a figure that is excluded', of(5n), life, 'figure-excluded', undefined],
    ['just below it', of(4999n, 1000n), life, 'value-within', '0.001 days'],
    ['on the least', of(40n), nitrite, 'value-within', '0 ppm'],
    ['below the least', of(39n), nitrite, 'figure-below', '1 ppm'],
    ['between, nearer the most', of(70n), nitrite, 'value-within', '10 ppm'],
    ['a third', of(100n, 3n), fat, 'figure-above', '3.334 %'],
  ])('%s', (_case, figure, limit, finding, by) => {
    const judged = plainly(judgeFigure(figure, limit)) as Plainly;
    expect(judged).toMatchObject({ finding, kind: finding === 'value-within' ? 'met' : 'missed' });
    expect(judged.by ?? judged.spare).toBe(by);
  });

  test('a figure that is advised fails nothing, and says so; without a figure nothing is met', () => {
    const useful: FigureLimit = { kind: 'figure', of: 'nitrite', unit: 'ppm', min: 40_000, advises: true, source };
    expect(judgeFigure(of(39n), useful)).toEqual({
      kind: 'met',
      finding: 'figure-not-as-advised',
      figures: { read: { value: '39', unit: 'ppm' } },
      notes: [],
    });
    expect(plainly(judgeFigure(of(40n), useful))).toMatchObject({ kind: 'met', spare: '0 ppm' });
    expect(judgeFigure(undefined, useful).kind).toBe('undetermined');
  });

  test('what fewer decimals would put on the bound is said with more', () => {
    expect(plainly(judgeFigure(of(300_001n, 10_000n), fat))).toMatchObject({ read: '30.0001 %' });
    expect(plainly(judgeFigure(of(30_000_000_001n, 1_000_000_000n), fat))).toMatchObject({ read: 'just-off: 30 %' });
  });
});

test.each([
  ['no bound', { ...fat, max: undefined }, 'neither-least-nor-most'],
  ['half a thousandth', { ...fat, max: 0.5 }, 'bound-unusable'],
  ['upside down', { ...nitrite, min: 90_000 }, 'least-above-most'],
  ['sound', nitrite, undefined],
])('%s', (_case, limit, code) => {
  const fault = code && { code };
  expect(figureFault(limit)).toEqual(fault);
  if (fault) expect(judgeFigure(of(1n), limit)).toMatchObject({ kind: 'undetermined', figures: { fault } });
});
