import { calculateArrival, calculateGrowth } from '@larderbook/contracts';
import { choicesOf } from './choices-of';
import { readings, unit } from './curve-fields';
import type { CalculatorForm } from './form';

const group = 'group-while-it-cools';

export const whileItCools: readonly CalculatorForm[] = [
  {
    name: 'arrival-at-target',
    group,
    route: calculateArrival,
    fields: [
      { kind: 'choice', key: 'way', label: 'it-is', choices: choicesOf('way', ['cooling', 'heating']) },
      { kind: 'number', key: 'target', label: 'target', belowZero: true },
      {
        kind: 'number',
        key: 'medium',
        label: 'lies-in',
        hint: 'lies-in-hint',
        belowZero: true,
      },
      unit,
      { kind: 'number', key: 'withinMinutes', label: 'within', unitSaid: 'minutes-from-first', optional: true, decimals: 0 },
      readings,
    ],
  },
  {
    name: 'growth-while-cooling',
    group,
    route: calculateGrowth,
    fields: [
      { kind: 'choice', key: 'species', label: 'meat', choices: choicesOf('species', ['mixed or unknown', 'beef', 'pork', 'chicken']) },
      {
        kind: 'choice',
        key: 'cured',
        label: 'cured',
        choices: [
          { value: 'no', name: 'no' },
          { value: 'yes', name: 'yes' },
        ],
      },
      unit,
      readings,
    ],
  },
];
