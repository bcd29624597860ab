import { binderPercent, type Binder } from '../formula/binders';
import { percentOf } from '../formula/percent-of';
import { isFault } from '../formula/fault';
import type { Told } from '../limits/told';
import type { EnteredMass } from '../quantity/mass';
import { massOf, sayMass } from '../quantity/weigh';
import { cautions } from './cautions';
import { judgedBefore, numberOf, publishedFigure, sayRatio } from './published-figure';
import type { CannotCalculate, Calculation } from './calculation';

/** Of which product the published limit is taken. */
export const boundProducts = ['sausage', 'chili con carne', 'spaghetti with meat balls'] as const;

export type BindersInProduct = {
  product: (typeof boundProducts)[number];
  /** The finished product, of which the limit is a percentage. */
  finished: EnteredMass;
  /** Cereal, dried milk, starch, soy flour and the like, together. */
  usual?: EnteredMass;
  isolatedSoy?: EnteredMass;
  caseinate?: EnteredMass;
};

/** Binders and extenders together, the strong ones counted with their factor, against the limit of the product. */
export function bindersInProduct(given: BindersInProduct): Calculation | CannotCalculate {
  const { product, finished } = given;
  const whole = massOf(finished);
  const weighed = WEIGHED.flatMap((kind) => {
    const entered = given[kind.key];
    return entered ? [{ ...kind, entered, mass: massOf(entered) }] : [];
  });
  if (weighed.length === 0) return { cannot: 'No binder is given: weigh at least one.' };
  const together = binderPercent(
    weighed.map(({ mass, strength }): Binder => ({ mass, strength })),
    whole,
  );
  if (isFault(together)) return { cannot: together.fault };
  if (weighed.reduce((sum, { mass }) => sum + mass, 0n) > whole) {
    return { cannot: 'The binders weigh more than the finished product: check the weights.' };
  }
  const said = sayRatio(together, '%');
  const next = 'Take less of it before anything is mixed.';
  return {
    title: 'Binders and extenders',
    given: [
      { what: 'Product', said: product },
      { what: 'Finished weight', said: `${finished.value} ${finished.unit}` },
      ...weighed.map(({ what, entered }) => ({ what, said: `${entered.value} ${entered.unit}` })),
    ],
    steps: [
      {
        what: 'Counted together',
        rule: '100 × (usual binders + 1.75 × isolated soy protein and caseinate) ÷ finished weight',
        putIn: `100 × (${weighed.map(({ mass, strength }) => `${strength === 'strong' ? '1.75 × ' : ''}${sayMass(mass, 'g')}`).join(' + ')}) ÷ ${sayMass(whole, 'g')}`,
        gives: said,
      },
    ],
    results: [{ what: 'Counted together', said, value: numberOf(together), unit: '%' }],
    verdicts: [
      judgedBefore(together, publishedFigure(LIMIT[product]), next),
      ...weighed.flatMap(({ mass, alone }): Told[] =>
        alone && product === 'sausage' ? [judgedBefore(percentOf(mass, whole), publishedFigure(alone), next)] : [],
      ),
    ],
    notes: [
      'In sausage 2 % of isolated soy protein or caseinate count as 3.5 % of the others; in the dishes the same is done, the strict side.',
      'On the finished weight, which is less than what went in where it is dried or smoked.',
      'Whether a binder may be in a product at all follows from its standard: none in hamburger or ground beef.',
    ],
    sources: [publishedFigure(LIMIT[product]).source, publishedFigure('binder-soy-equivalent').source],
    cautions: [cautions.limits],
  };
}

const WEIGHED = [
  { key: 'usual', what: 'Usual binders', strength: 'usual', alone: undefined },
  { key: 'isolatedSoy', what: 'Isolated soy protein', strength: 'strong', alone: 'binder-isolated-soy' },
  { key: 'caseinate', what: 'Sodium caseinate', strength: 'strong', alone: 'binder-caseinate' },
] as const;
const LIMIT: Record<BindersInProduct['product'], string> = {
  sausage: 'binders',
  'chili con carne': 'binders-chili',
  'spaghetti with meat balls': 'binders-spaghetti',
};
