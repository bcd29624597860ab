import { calculateBatch, calculateBinders, calculatePercent, calculateWaterInFormula } from '@larderbook/contracts';
import { boundProducts, wateredFormulas } from '@larderbook/haccp';
import { choicesOf } from './choices-of';
import type { CalculatorForm } from './form';

const group = 'Before anything is weighed';

export const beforeWeighing: readonly CalculatorForm[] = [
  {
    name: 'batch-by-percent',
    group,
    title: 'A batch by percent',
    about: 'What to weigh for the trimmed meat at hand, or back from the packages wanted. For a product of yours see its own batch page.',
    route: calculateBatch,
    fields: [
      {
        kind: 'lines',
        key: 'lines',
        label: 'Lines of the formula',
        hint: 'One on each line: the name, then percent on the meat block, such as “Salt 1.8”.',
      },
      { kind: 'choice', key: 'from', label: 'Begin with', choices: choicesOf(['trimmed meat', 'packages']) },
      { kind: 'mass', key: 'trimmedMeat', label: 'Trimmed meat', hint: 'To begin with the meat.', optional: true, first: 'heavy' },
      {
        kind: 'number',
        key: 'packages',
        label: 'Packages wanted',
        hint: 'To begin with the packages; this and the three below.',
        optional: true,
        decimals: 0,
      },
      { kind: 'mass', key: 'net', label: 'Net weight of a package', optional: true, first: 'light' },
      {
        kind: 'number',
        key: 'yieldPercent',
        label: 'Yield',
        unit: '%',
        hint: 'Packed weight, from lots before.',
        optional: true,
        decimals: 4,
      },
      {
        kind: 'choice',
        key: 'yieldOn',
        label: 'The yield is of',
        choices: [
          { value: 'everything', name: 'everything that goes in' },
          { value: 'meat block', name: 'the meat block' },
        ],
      },
    ],
  },
  {
    name: 'percent-and-weight',
    group,
    title: 'Percent and weight',
    about: 'So many percent of a weight, or a weight as percent of another.',
    route: calculatePercent,
    fields: [
      { kind: 'mass', key: 'base', label: 'Counted on', hint: 'The meat block, for a line of a formula.', first: 'heavy' },
      { kind: 'number', key: 'percent', label: 'Percentage', unit: '%', optional: true, decimals: 4 },
      { kind: 'mass', key: 'weight', label: 'Or the weight', optional: true, first: 'g' },
    ],
  },
  {
    name: 'water-in-formula',
    group,
    title: 'Water a formula may take',
    about: 'The most water or ice in fresh sausage and luncheon meat, by their standards.',
    route: calculateWaterInFormula,
    fields: [
      { kind: 'choice', key: 'product', label: 'Product', choices: choicesOf(wateredFormulas) },
      {
        kind: 'mass',
        key: 'others',
        label: 'All other ingredients',
        hint: 'Meat, salt, spices and the rest, without the water.',
        first: 'heavy',
      },
    ],
  },
  {
    name: 'binders-in-product',
    group,
    title: 'Binders and extenders',
    about: 'Together, the strong ones with their factor, against the limit of the product.',
    route: calculateBinders,
    fields: [
      { kind: 'choice', key: 'product', label: 'Product', choices: choicesOf(boundProducts) },
      { kind: 'mass', key: 'finished', label: 'Finished product', first: 'heavy' },
      {
        kind: 'mass',
        key: 'usual',
        label: 'Usual binders together',
        hint: 'Cereal, dried milk, starch, soy flour and the like.',
        optional: true,
        first: 'light',
      },
      { kind: 'mass', key: 'isolatedSoy', label: 'Isolated soy protein', optional: true, first: 'light' },
      { kind: 'mass', key: 'caseinate', label: 'Sodium caseinate', optional: true, first: 'light' },
    ],
  },
];
