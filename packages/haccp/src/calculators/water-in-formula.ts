import { mostWaterInAll } from '../formula/water-and-fat';
import { coded, wordFor } from '../limits/coded';
import { sum } from '../limits/line-part';
import { divide } from '../quantity/divide';
import type { EnteredMass } from '../quantity/mass';
import { massOf, roundedMass } from '../quantity/weigh';
import type { Calculation } from './calculation';
import { atFault, type CannotCalculate } from './cannot';
import { cautions } from './cautions';
import { percent, typed } from './figures';
import { publishedFigure } from './published-figure';

const rows = {
  'fresh pork sausage': 'water-fresh-pork-sausage',
  'whole hog sausage': 'water-whole-hog-sausage',
  'fresh beef sausage': 'water-fresh-beef-sausage',
  'breakfast sausage': 'water-breakfast-sausage',
  'Italian sausage': 'water-italian-sausage',
  'luncheon meat': 'water-luncheon-meat',
} as const;
type WateredFormula = keyof typeof rows;
export const wateredFormulas = Object.keys(rows) as [WateredFormula, ...WateredFormula[]];

export type WaterInFormula = {
  product: WateredFormula;
  /** Everything but the water. */
  others: EnteredMass;
};

/** Water is a percentage of all ingredients; rounded down. */
export function waterInFormula({ product, others }: WaterInFormula): Calculation | CannotCalculate {
  const { max = 0, source } = publishedFigure(rows[product]);
  const share = percent(max / 1000);
  const rest = massOf(others);
  const water = mostWaterInAll(rest, max / 1000);
  if (typeof water !== 'bigint') return atFault(water, 'weigh-them-first');
  const most = roundedMass(water, others.unit, 3, 'down');
  return {
    given: [
      { what: coded('product'), is: wordFor('product', product) },
      { what: coded('other-ingredients'), is: typed(others) },
    ],
    steps: [
      {
        what: coded('most-water'),
        rule: coded('most-water.rule'),
        putIn: sum`${typed(others)} × ${share} ÷ (${percent(100)} − ${share})`,
        gives: most,
      },
    ],
    results: [
      { what: coded('water-and-ice-at-most'), is: most, value: Number(divide(water, 10n ** 12n, 'down')) / 1000, unit: 'g' },
      { what: coded('all-together'), is: roundedMass(rest + water, others.unit) },
    ],
    judged: [],
    notes: [coded('water-counts-in-whole', { percent: share })],
    sources: [source],
    grounds: [],
    cautions: [cautions.limits],
  };
}
