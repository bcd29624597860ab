import fc from 'fast-check';
import { aroundCore, beginSpeed, examineCurve, leastLeft, rateOf, type CurveReading, type Piece } from '@larderbook/haccp';
import { expect, test } from 'vitest';
import { centreAt, centreOver, type Shape } from './heat-in-a-piece';

/**
 * The centre of a slab, a cylinder and a sphere whose surface is put at once at the temperature of what they lie in:
 * H. S. Carslaw and J. C. Jaeger, Conduction of Heat in Solids, 2nd ed. 1959 (the book was not read; the series are in
 * every text on conduction). The digits were worked out from these series with 30 decimals. Fo = α t ÷ L².
 */
const ALPHA = 1.6e-7;
const piece = (shape: Shape, mm: number): Piece => ({ shape, smallest: { value: mm, unit: 'mm' } });
const boundAt = (shape: Shape, fo: number): number => leastLeft(piece(shape, 20), (fo * 0.01 ** 2 * 1000) / ALPHA);

test.each<[Shape, fo: number, centre: number, bound: number]>([
  ['cylinder', 0.1, 0.8483551133, 0.5608405736],
  ['cylinder', 0.2, 0.5014868606, 0.314542149],
  ['cylinder', 0.5, 0.08888971608, 0.05548775121],
  ['sphere', 0.1, 0.7071003482, 0.3727078389],
  ['sphere', 0.2, 0.2770776102, 0.1389111331],
  ['slab', 0.2, 0.7723116069, 0.6104980253],
  ['slab', 1, 0.1079770444, 0.08480497247],
])('a %s at Fo %d has %d of its way left, and the bound lets it have %d', (shape, fo, centre, bound) => {
  expect(centreAt(shape, fo)).toBeCloseTo(centre, 9);
  expect(boundAt(shape, fo)).toBeCloseTo(bound, 9);
});

test('a sausage of 22 mm has 0.2153 of its way left after five minutes, at a diffusivity of 1.4e-7 m²/s', () => {
  // Fo 0.347
  expect(centreAt('cylinder', Number(((1.4e-7 * 300) / 0.011 ** 2).toFixed(3)))).toBeCloseTo(0.2153, 4);
});

test.each<[string, Piece, minutes: number, factor: number]>([
  ['a sausage of 22 mm over 1 min', piece('cylinder', 22), 1, 0.632],
  ['a sausage of 22 mm over 3 min', piece('cylinder', 22), 3, 0.2526],
  ['a sausage of 22 mm over 10 min', piece('cylinder', 22), 10, 0.0102],
  ['a sausage of 22 mm over 15 min', piece('cylinder', 22), 15, 0.00103],
  ['a log of 60 mm over 15 min', piece('cylinder', 60), 15, 0.3964],
  ['a ham of 120 mm over 10 min', piece('sphere', 120), 10, 0.7686],
  ['the same in inches', { shape: 'sphere', smallest: { value: 4.724, unit: 'in' } }, 10, 0.7686],
])('%s', (_case, one, minutes, factor) => {
  expect(Math.abs(leastLeft(one, minutes * 60_000) / factor - 1)).toBeLessThan(0.005);
});

test('between any two moments the centre of the series is slower than the bound', () => {
  const fo = fc.double({ min: 0.02, max: 1.5, noNaN: true });
  fc.assert(
    fc.property(fc.constantFrom<Shape>('slab', 'cylinder', 'sphere'), fo, fo, (shape, one, other) => {
      const [from, to] = [Math.min(one, other), Math.max(one, other)];
      const left = centreAt(shape, to) / centreAt(shape, from);
      expect(left).toBeGreaterThanOrEqual(boundAt(shape, to - from) * (1 - 1e-9));
    }),
    { numRuns: 500 },
  );
});

test('a true core is never doubted, whatever it lies in and however its surface gets there', { timeout: 120_000 }, () => {
  const media = fc.array(fc.record({ celsius: fc.integer({ min: -3, max: 100 }), minutes: fc.integer({ min: 1, max: 90 }) }), {
    minLength: 1,
    maxLength: 4,
  });
  const core = fc.record({
    shape: fc.constantFrom<Shape>('slab', 'cylinder', 'sphere'),
    mm: fc.integer({ min: 8, max: 160 }),
    alpha: fc.constantFrom(1.2e-7, 1.4e-7, 1.6e-7),
    from: fc.integer({ min: 0, max: 98 }),
    media,
    /** How long the surface takes for most of its way: at once, or by and by. */
    lagSeconds: fc.constantFrom(0, 30, 300, 1800),
    everySeconds: fc.constantFrom(1, 10, 60, 180, 900),
    off: fc.constantFrom(0, 0.3, -0.3),
  });
  fc.assert(
    fc.property(core, ({ shape, mm, off, ...course }) => {
      const celsius = centreOver({ shape, half: mm / 2000, ...course });
      const readings = celsius.map(
        (value, i): CurveReading => ({
          at: i * course.everySeconds * 1000,
          // Read to a tenth of a degree, a little off, now up and now down.
          temperature: { hundredths: Math.round((value + (i % 2 === 0 ? off : -off)) * 10) * 10, unit: '°C' },
        }),
      );
      const speed = beginSpeed(rateOf(piece(shape, mm)) as number, aroundCore(undefined, 0));
      const examined = examineCurve(readings, Infinity, { speed });
      const kinds = 'fault' in examined ? [examined.fault] : examined.findings.map(({ kind }) => kind);
      expect(kinds.filter((kind) => kind.includes('faster'))).toEqual([]);
    }),
    { numRuns: 100 },
  );
});
