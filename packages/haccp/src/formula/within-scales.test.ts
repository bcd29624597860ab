import fc from 'fast-check';
import { expect, test } from 'vitest';
import { massOf } from '../quantity/weigh';
import { carriedBy, compose, type Composition, type Parts } from './composition';
import { broughtWithin, isStated, shareWithin, weightWithin, type Base, type ScaleErrors, type Share, type Way } from './within-scales';

const g = (value: number) => massOf({ value: Math.round(value * 1000) / 1000, unit: 'g' });
const lot = (meat: number[], cure: number[], reworked: Parts['reworked'] = []): Composition =>
  compose({
    freshMeat: meat.map(g),
    weighed: [...cure.map((grams) => ({ mass: g(grams), substance: 'sodium nitrite' as const, percent: 6.25 })), { mass: g(20) }],
    reworked,
  });
const errors = (ingredient: number, meat: number): ScaleErrors => ({ ingredient: g(ingredient), meat: g(meat) });
const ppm = ({ substance, base }: Share): number => (Number(substance) / Number(base)) * 1e6;
const within = (of: Composition, by: ScaleErrors, base: Base = 'meat') =>
  ([-1n, 1n] as const).map((way) => ppm(shareWithin(of, 'sodium nitrite', base, by, way)));

test('every weighing is off by the whole error, substance one way and meat the other', () => {
  // 11.5 g of 6.25 % on 4.6 kg read to half a gram: 11 g and 12 g of it, 149.46 to 163.04 ppm.
  expect(within(lot([4600], [11.5]), errors(0.5, 0)).map((one) => one.toFixed(2))).toEqual(['149.46', '163.04']);
  expect(within(lot([2300, 2300], [6, 5.5]), errors(0.5, 20)).map((one) => one.toFixed(2))).toEqual([
    ((10.5 * 62_500) / 4640).toFixed(2),
    ((12.5 * 62_500) / 4560).toFixed(2),
  ]);
  // All that went in holds the other ingredient of 20 g too.
  expect(within(lot([4600], [11.5]), errors(0.5, 0), 'all')[0]?.toFixed(2)).toBe(((11 * 62_500) / 4632.5).toFixed(2));
});

test('rework has the worst share of its own lot, however it was weighed itself', () => {
  const own = lot([4600], [11.5]);
  const reworkAlone = lot([], [], [{ mass: g(1000), of: own }]);
  expect(within(reworkAlone, errors(0.5, 0)).map((one) => one.toFixed(2))).toEqual(['149.46', '163.04']);
  expect(within(reworkAlone, errors(0.5, 20))[1]).toBeCloseTo((12 * 62_500) / 4580, 6);
});

test('of rework that is milder than the rest there may be less, of richer there may be more', () => {
  const [mild, rich] = [lot([4000], [5]), lot([4000], [20])];
  const [withMild, withRich] = [mild, rich].map((of) => lot([4600], [11.5], [{ mass: g(500), of }])) as [Composition, Composition];
  const meatOf = (of: Composition) => Number(of.meat) / Number(of.all);
  const by = (share: number, own: number, of: Composition) => (11.5 * 62_500 + own * share * meatOf(of)) / (4580 + own * meatOf(of));
  expect(within(withMild, errors(0, 20))[1]).toBeCloseTo(by((5 * 62_500) / 3980, 480, mild), -1);
  expect(within(withRich, errors(0, 20))[1]).toBeCloseTo(by((20 * 62_500) / 3980, 520, rich), -1);
});

test('without an error it is what was weighed, rework of a lot without meat and of rework included', () => {
  const pickle = compose({ freshMeat: [], weighed: [{ mass: g(100), substance: 'sodium nitrite', percent: 1 }], reworked: [] });
  const own = lot([4600], [11.5], [{ mass: g(50), of: pickle }]);
  const again = lot(
    [1000],
    [2],
    [
      { mass: g(300), of: own },
      { mass: g(200), of: lot([], []) },
    ],
  );
  const exact = ppm({ substance: again.substances.get('sodium nitrite') ?? 0n, base: again.meat });
  for (const one of within(again, errors(0, 0))) expect(one).toBeCloseTo(exact, 6);
  const [least = 0, most = 0] = within(again, errors(0.1, 5));
  expect(least).toBeLessThan(exact);
  expect(most).toBeGreaterThan(exact);
});

test('a lot of which only the sums are known is taken as it is; an error larger than the weight leaves nothing', () => {
  const { parts: _, ...sums } = lot([4600], [11.5]);
  expect(within(sums, errors(0.5, 20)).map((one) => one.toFixed(2))).toEqual(['156.25', '156.25']);
  expect(shareWithin(sums, 'phosphate', 'meat', errors(0.5, 20), 1n)).toEqual({ substance: 0n, base: g(4600) });
  expect(within(lot([], [], [{ mass: g(100), of: sums }]), errors(0.5, 20)).map((one) => one.toFixed(2))).toEqual(['156.25', '156.25']);
  expect(shareWithin(lot([10], [1]), 'sodium nitrite', 'meat', errors(2, 20), -1n).substance).toBe(0n);
  expect(shareWithin(lot([10], [1]), 'sodium nitrite', 'meat', errors(2, 20), 1n).base).toBe(0n);
  const unknown = compose({
    freshMeat: [g(10)],
    weighed: [
      { mass: g(1), substance: 'sodium nitrite' },
      { mass: g(1), substance: 'sodium nitrite', percent: NaN },
    ],
    reworked: [],
  });
  expect(shareWithin(unknown, 'sodium nitrite', 'meat', errors(0, 0), 1n).substance).toBe(0n);
});

/** Every weighing anywhere within its error gives a share within the two. */
test('no weighing within the errors lies outside', () => {
  const off = fc.double({ min: -1, max: 1, noNaN: true });
  const numbers = fc.record({
    meat: fc.integer({ min: 1000, max: 9000 }),
    cure: fc.integer({ min: 1, max: 30 }),
    ownMeat: fc.integer({ min: 1000, max: 9000 }),
    ownCure: fc.integer({ min: 1, max: 30 }),
    rework: fc.integer({ min: 50, max: 900 }),
    other: fc.integer({ min: 50, max: 900 }),
  });
  const offs = fc.array(off, { minLength: 6, maxLength: 6 });
  fc.assert(
    fc.property(numbers, offs, fc.constantFrom<Base>('meat', 'all'), ({ meat, cure, ownMeat, ownCure, rework, other }, o, base) => {
      const at = (i: number, by: number) => (o[i] ?? 0) * by;
      const make = (scale: 0 | 1): Composition => {
        const own = lot([ownMeat + scale * at(0, 20)], [ownCure + scale * at(1, 0.5)]);
        const plain = lot([2000], [3]);
        return lot(
          [meat + scale * at(2, 20)],
          [cure + scale * at(3, 0.5)],
          [
            { mass: g(rework + scale * at(4, 20)), of: own },
            { mass: g(other + scale * at(5, 20)), of: plain },
          ],
        );
      };
      const truth = make(1);
      const actual = ppm({ substance: truth.substances.get('sodium nitrite') ?? 0n, base: truth[base] });
      const [least = 0, most = 0] = within(make(0), errors(0.5, 20), base);
      expect(actual).toBeGreaterThanOrEqual(least * (1 - 1e-9));
      expect(actual).toBeLessThanOrEqual(most * (1 + 1e-9));
    }),
    { numRuns: 500 },
  );
});

test('towards more is never less than towards less', () => {
  const ways: Way[] = [1n, -1n];
  expect(ways.map((way) => shareWithin(lot([100], [1]), 'phosphate', 'all', errors(1, 1), way).substance)).toEqual([0n, 0n]);
});

test('what rework may bring is told by itself, each at its worst', () => {
  const [own, pickle] = [
    lot([4600], [11.5]),
    compose({ freshMeat: [], weighed: [{ mass: g(100), substance: 'sodium nitrite', percent: 1 }], reworked: [] }),
  ];
  const reworked = [
    { mass: g(500), of: own },
    { mass: g(50), of: pickle },
  ];
  const { least, most } = broughtWithin(reworked, 'sodium nitrite', errors(0.5, 20));
  const exact = reworked.reduce((sum, one) => sum + carriedBy(one, 'sodium nitrite'), 0n);
  expect([least < exact, most > exact]).toEqual([true, true]);
  expect(broughtWithin([], 'sodium nitrite', errors(0.5, 20))).toEqual({ least: 0n, most: 0n });
  const { least: lightest, most: heaviest } = weightWithin(lot([1000], [5], reworked), 'meat', errors(0.5, 20));
  expect([lightest < lot([1000], [5], reworked).meat, heaviest > lot([1000], [5], reworked).meat]).toEqual([true, true]);
  const all = lot([1000], [5], reworked).all;
  expect(weightWithin(lot([1000], [5], reworked), 'all', errors(0.5, 20))).toEqual({ least: all - g(61), most: all + g(61) });
});

test('a plan states an error, or none', () => {
  expect([errors(0, 0), errors(1, 0), errors(0, 1)].map(isStated)).toEqual([false, true, true]);
});
