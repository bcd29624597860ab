import fc from 'fast-check';
import { expect, test } from 'vitest';
import { massOf } from '../quantity/weigh';
import { countDecisions, decidedOf, type DecisionMade, type HeldProduct } from './decided';

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

test.each<[string, number, number, boolean]>([
  ['one pound of a hundred is all of another lot: that lot is undecided', 99, 1, false],
  ['the decision speaks for that lot too', 100, 1, true],
  ['a hundredth of that lot is left, which scales do not agree about', 99.99, 1, true],
  ['a pound of two lots of fifty is left: which of them it is in is not known', 99, 50, false],
])('%s', (_case, decided, small, isCovered) => {
  const taken = [
    { into: 'small', mass: lb(small) },
    { into: 'empty', mass: 0n },
  ];
  const first = held({ there: lb(100), decided: lb(decided), taken });
  expect(of('first', { first, small: held({ there: lb(small) }), empty: held({}) }).isCovered).toBe(isCovered);
});

const made = (becomes: DecisionMade['becomes'], mass: bigint, speaksForIt = true): DecisionMade => ({ mass, speaksForIt, becomes });
test.each<[string, DecisionMade[], bigint, bigint]>([
  ['none', [], 0n, 0n],
  ['its own, whatever becomes of the product', [made('stays', 5n), made('leaves', 3n), made('recalled', 2n)], 0n, 10n],
  ['another hold’s release says nothing about this one', [made('stays', 5n, false)], 0n, 0n],
  [
    'what another hold condemned before is gone, and what is released then is of the rest',
    [made('leaves', 5n, false), made('stays', 5n)],
    5n,
    5n,
  ],
  ['what another hold condemns after a release may be what was released', [made('stays', 5n), made('leaves', 3n, false)], 3n, 2n],
  ['but not what was condemned or called back', [made('leaves', 5n), made('recalled', 5n), made('leaves', 5n, false)], 5n, 10n],
  ['nor the same pounds a second time', [made('stays', 5n), made('leaves', 4n, false), made('leaves', 4n, false)], 8n, 0n],
])('decisions count: %s', (_case, decisions, gone, decided) => {
  expect(countDecisions(decisions)).toEqual({ gone, decided });
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
  .array(
    fc.record({
      there: mass,
      gone: mass,
      decided: mass,
      into: fc.array(fc.record({ step: fc.integer({ min: 1, max: 4 }), mass }), { maxLength: 3 }),
    }),
    { minLength: 1, maxLength: 8 },
  )
  .map((lots) =>
    lots.map(
      ({ into, ...lot }, at): HeldProduct => ({
        ...lot,
        taken: into.map(({ step, mass: part }) => ({ into: `${at + step}`, mass: part })),
      }),
    ),
  );
const byId = (lots: readonly HeldProduct[]) => new Map(lots.map((lot, at) => [`${at}`, lot]));

test('decided and undecided are what is at stake, neither below zero', () => {
  fc.assert(
    fc.property(kitchens, (lots) => {
      const { atStake, decided, undecided, isCovered } = decidedOf(byId(lots))('0');
      expect(decided + undecided).toBe(atStake);
      expect(decided >= 0n && undecided >= 0n).toBe(true);
      if (isCovered) expect(undecided * 100n <= atStake).toBe(true);
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
