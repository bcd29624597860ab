import { workOutCure } from '@larderbook/contracts';
import type { CalculationForm } from './form';

const group = 'Before anything is weighed';

export const beforeWeighing: readonly CalculationForm[] = [
  {
    name: 'cure-for-meat',
    group,
    title: 'Curing salt for so much meat',
    about: 'At least and at most in grams, and whether the scale can weigh it.',
    route: workOutCure,
    fields: [
      { kind: 'mass', key: 'meat', label: 'Meat block', hint: 'Trimmed, without bone, water or spices.', first: 'heavy' },
      { kind: 'number', key: 'strength', label: 'Substance in the curing salt', unit: '%', decimals: 4, hint: 'As its label says: 6.25 % in one kind, 5.88 % in another.' },
      { kind: 'limit', key: 'limit', label: 'Limit', kinds: ['concentration'] },
      { kind: 'mass', key: 'scale', label: 'The scale shows steps of', first: 'g' },
    ],
  },
];
