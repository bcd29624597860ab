import { mostWaterInAll } from '../formula/water-and-fat';
import type { EnteredMass } from '../quantity/mass';
import { sayPercent } from '../quantity/percent';
import { divide } from '../quantity/divide';
import { massOf, sayMass } from '../quantity/weigh';
import { cautions } from './cautions';
import { publishedFigure } from './published-figure';
import type { CannotCalculate, Calculation } from './calculation';

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

/** The most water or ice that a formula takes where it may be so many percent of all ingredients, rounded down. */
export function waterInFormula({ product, others }: WaterInFormula): Calculation | CannotCalculate {
  const { max = 0, source } = publishedFigure(rows[product]);
  const percent = max / 1000;
  const rest = massOf(others);
  const water = mostWaterInAll(rest, percent);
  if (typeof water !== 'bigint') return { cannot: `${water.fault} Weigh them first.` };
  const said = sayMass(water, others.unit, 3, 'down');
  return {
    title: 'Water a formula may take',
    given: [
      { what: 'Product', said: product },
      { what: 'All other ingredients', said: `${others.value} ${others.unit}` },
    ],
    steps: [
      {
        what: 'Most water',
        rule: 'other ingredients × p ÷ (100 % − p)',
        putIn: `${others.value} ${others.unit} × ${sayPercent(percent)} ÷ (100 % − ${sayPercent(percent)})`,
        gives: said,
      },
    ],
    results: [
      { what: 'Water and ice, at most', said, value: Number(divide(water, 10n ** 12n, 'down')) / 1000, unit: 'g' },
      { what: 'All together', said: sayMass(rest + water, others.unit) },
    ],
    verdicts: [],
    notes: [`The water counts in the whole: ${sayPercent(percent)} of the other ingredients alone would be less.`],
    sources: [source],
    cautions: [cautions.limits],
  };
}
