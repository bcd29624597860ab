import fc from 'fast-check';
import { expect, test } from 'vitest';
import { massOf } from '../quantity/weigh';
import { decidedOf, type HeldProduct } from './decided';

const lb = (value: number) => massOf({ value, unit: 'lb' });
const held = (product: Partial<HeldProduct>): HeldProduct => ({ there: lb(28.7), gone: 0n, decided: 0n, taken: [], ...product });
const of = (id: string, products: Record<string, HeldProduct>) => decidedOf(new Map(Object.entries(products)))(id);

test.each<[string, Partial<HeldProduct>, number, boolean]>([
  ['nothing is decided', {}, 28.7, false],
  ['2.8 of 28.7 lb are condemned: the other 25.9 lb are not', { decided: lb(2.8) }, 25.9, false],
  ['the rest is released', { decided: lb(2.8) + lb(25.9) }, 0, true],
  ['a hundredth is left, which scales do not agree about', { decided: lb(28.413) }, 0.287, true],
  ['a thousandth more than a hundredth is left', { decided: lb(28.412) }, 0.288, false],
  ['more is decided than there is now: nothing is left over for another', { decided: lb(30) }, 0, true],
  ['another hold’s decision condemned some of it', { gone: lb(8.7) }, 20, false],
  ['another hold’s decisions condemned all of it', { gone: lb(30) }, 0, true],
  ['nothing was put in', { there: 0n }, 0, true],
  ['more left it than went in', { there: lb(-1) }, 0, true],
])('%s', (_case, product, undecided, isCovered) => {
  expect(of('lot', { lot: held(product) })).toMatchObject({ undecided: lb(undecided), isCovered });
});

test('a product that is not known has nothing at stake', () => {
  expect(of('lot', {})).toEqual({ atStake: 0n, decided: 0n, undecided: 0n, isCovered: true });
});

test.each<[string, Partial<HeldProduct>, Partial<HeldProduct>, number]>([
  ['neither the store nor the lot made from it is decided', {}, {}, 40],
  ['the store is, the lot is not', { decided: lb(25) }, {}, 15],
  ['part of the lot is: none of what went into it', { decided: lb(25) }, { decided: lb(10) }, 15],
  ['the lot is, the store is not', {}, { decided: lb(16) }, 25],
  ['both are', { decided: lb(25) }, { decided: lb(16) }, 0],
  ['the decision on the delivery speaks for the lot too', { decided: lb(40) }, {}, 0],
  ['and is not counted twice when the lot is decided as well', { decided: lb(15) }, { decided: lb(16) }, 10],
])('of 40 lb delivered 15 lb are in a lot: %s', (_case, store, lot, undecided) => {
  const delivery = held({ there: lb(40), taken: [{ into: 'lot', mass: lb(15) }], ...store });
  expect(of('delivery', { delivery, lot: held({ there: lb(16), ...lot }) }).undecided).toBe(lb(undecided));
});

test('what was reworked on is decided only when the last lot is', () => {
  const first = held({ there: lb(10), taken: [{ into: 'second', mass: lb(10) }] });
  const second = held({ there: lb(12), taken: [{ into: 'third', mass: lb(12) }] });
  const chain = (decided: bigint) => of('first', { first, second, third: held({ there: lb(20), decided }) });
  expect(chain(lb(19)).undecided).toBe(lb(10));
  expect(chain(lb(20)).undecided).toBe(0n);
});

const mass = fc.bigInt({ min: 0n, max: 1_000n });
/** Lots in a row, each of which may have gone into any later one. */
const kitchens = fc
  .array(fc.record({ there: mass, gone: mass, decided: mass, into: fc.array(fc.record({ step: fc.integer({ min: 1, max: 4 }), mass }), { maxLength: 3 }) }), { minLength: 1, maxLength: 8 })
  .map((lots) => lots.map(({ into, ...lot }, at): HeldProduct => ({ ...lot, taken: into.map(({ step, mass: part }) => ({ into: `${at + step}`, mass: part })) })));
const byId = (lots: readonly HeldProduct[]) => new Map(lots.map((lot, at) => [`${at}`, lot]));

test('decided and undecided are what is at stake, neither below zero', () => {
  fc.assert(
    fc.property(kitchens, (lots) => {
      const { atStake, decided, undecided, isCovered } = decidedOf(byId(lots))('0');
      expect(decided + undecided).toBe(atStake);
      expect(decided >= 0n && undecided >= 0n).toBe(true);
      expect(isCovered).toBe(undecided * 100n <= atStake);
    }),
    { numRuns: 2000 },
  );
});

test('a decision decides no more than its own weight of what it is made about', () => {
  fc.assert(
    fc.property(kitchens, mass, (lots, more) => {
      const [first, ...others] = lots as [HeldProduct, ...HeldProduct[]];
      const before = decidedOf(byId(lots))('0').undecided;
      const after = decidedOf(byId([{ ...first, decided: first.decided + more }, ...others]))('0').undecided;
      expect(before - after <= more && after <= before).toBe(true);
      const out = first.taken.reduce((sum, { mass: part }) => sum + part, 0n);
      const addsUp = out <= first.there - first.gone; // no more was taken out than there was
      if (addsUp && more <= before) expect(before - after).toBe(more);
    }),
    { numRuns: 2000 },
  );
});

test('more meat is more to decide', () => {
  fc.assert(
    fc.property(kitchens, mass, (lots, more) => {
      const [first, ...others] = lots as [HeldProduct, ...HeldProduct[]];
      const before = decidedOf(byId(lots))('0').undecided;
      expect(decidedOf(byId([{ ...first, there: first.there + more }, ...others]))('0').undecided >= before).toBe(true);
    }),
    { numRuns: 2000 },
  );
});
