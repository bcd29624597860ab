import { binderPercent, type Binder } from '../formula/binders';
import { isFault } from '../formula/fault';
import { percentOf } from '../formula/percent-of';
import { coded, wordFor } from '../limits/coded';
import { sum } from '../limits/line-part';
import type { EnteredMass } from '../quantity/mass';
import { massOf } from '../quantity/weigh';
import type { Calculation } from './calculation';
import { atFault, cannot, type CannotCalculate } from './cannot';
import { cautions } from './cautions';
import { grams, typed } from './figures';
import { ratioOf, judgedBefore, numberOf, publishedFigure } from './published-figure';

export const boundProducts = ['sausage', 'chili con carne', 'spaghetti with meat balls'] as const;

export type BindersInProduct = {
  product: (typeof boundProducts)[number];
  /** The limit is a percentage of it. */
  finished: EnteredMass;
  /** Cereal, dried milk, starch, soy flour and the like, together. */
  usual?: EnteredMass;
  isolatedSoy?: EnteredMass;
  caseinate?: EnteredMass;
};

/** Strong binders count with their factor. */
export function bindersInProduct(given: BindersInProduct): Calculation | CannotCalculate {
  const { product, finished } = given;
  const whole = massOf(finished);
  const weighed = WEIGHED.flatMap((kind) => {
    const entered = given[kind.key];
    return entered ? [{ ...kind, entered, mass: massOf(entered) }] : [];
  });
  if (weighed.length === 0) return cannot('no-binder');
  const together = binderPercent(
    weighed.map(({ mass, strength }): Binder => ({ mass, strength })),
    whole,
  );
  if (isFault(together)) return atFault(together);
  if (weighed.reduce((all, { mass }) => all + mass, 0n) > whole) return cannot('binders-outweigh');
  const is = ratioOf(together, '%');
  const counted = weighed.map(({ mass, strength }) => (strength === 'strong' ? ['1.75 × ', grams(mass)] : [grams(mass)]));
  return {
    given: [
      { what: coded('product'), is: wordFor('product', product) },
      { what: coded('finished-weight'), is: typed(finished) },
      ...weighed.map(({ what, entered }) => ({ what: coded(what), is: typed(entered) })),
    ],
    steps: [
      {
        what: coded('counted-together'),
        rule: coded('binders.rule'),
        putIn: sum`100 × (${counted.flatMap((terms, index) => (index === 0 ? terms : [' + ', ...terms]))}) ÷ ${grams(whole)}`,
        gives: is,
      },
    ],
    results: [{ what: coded('counted-together'), is, value: numberOf(together), unit: '%' }],
    judged: [
      judgedBefore(together, publishedFigure(LIMIT[product]), 'take-less-binder'),
      ...weighed.flatMap(({ mass, alone }) =>
        alone && product === 'sausage' ? [judgedBefore(percentOf(mass, whole), publishedFigure(alone), 'take-less-binder')] : [],
      ),
    ],
    notes: [coded('binders-strong-in-dishes'), coded('binders-on-finished'), coded('binders-by-standard')],
    sources: [publishedFigure(LIMIT[product]).source, publishedFigure('binder-soy-equivalent').source],
    grounds: [],
    cautions: [cautions.limits],
  };
}

const WEIGHED = [
  { key: 'usual', what: 'usual-binders', strength: 'usual', alone: undefined },
  { key: 'isolatedSoy', what: 'isolated-soy', strength: 'strong', alone: 'binder-isolated-soy' },
  { key: 'caseinate', what: 'caseinate', strength: 'strong', alone: 'binder-caseinate' },
] as const;
const LIMIT: Record<BindersInProduct['product'], string> = {
  sausage: 'binders',
  'chili con carne': 'binders-chili',
  'spaghetti with meat balls': 'binders-spaghetti',
};
