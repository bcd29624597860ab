import { cureMethods, workOutCure, workOutIngoing } from '@larderbook/contracts';
import type { CalculationForm } from './form';

const group = 'Before anything is weighed';
const asItsLabelSays = 'As its label says: 6.25 % in one kind, 5.88 % in another.';

export const beforeWeighing: readonly CalculationForm[] = [
  {
    name: 'cure-for-meat',
    group,
    title: 'Curing salt for so much meat',
    about: 'At least and at most in grams, and whether the scale can weigh it.',
    route: workOutCure,
    fields: [
      { kind: 'mass', key: 'meat', label: 'Meat block', hint: 'Trimmed, without bone, water or spices.', first: 'heavy' },
      { kind: 'number', key: 'strength', label: 'Substance in the curing salt', unit: '%', decimals: 4, hint: asItsLabelSays },
      { kind: 'limit', key: 'limit', label: 'Limit', kinds: ['concentration'] },
      { kind: 'mass', key: 'scale', label: 'The scale shows steps of', first: 'g' },
    ],
  },
  {
    name: 'ingoing-by-method',
    group,
    title: 'Ingoing amount by method',
    about: 'Parts per million: chopped, dry-cured, pumped, massaged, immersed or counted on the batch.',
    route: workOutIngoing,
    fields: [
      { kind: 'choice', key: 'method', label: 'Method', choices: cureMethods.map((value) => ({ value, name: value })) },
      { kind: 'mass', key: 'salt', label: 'Curing salt', first: 'g' },
      { kind: 'number', key: 'strength', label: 'Substance in the curing salt', unit: '%', decimals: 4, hint: asItsLabelSays },
      { kind: 'mass', key: 'weight', label: 'Meat, pickle or batch', hint: 'The meat when chopped or dry-cured; the pickle made otherwise.', first: 'heavy' },
      { kind: 'mass', key: 'meat', label: 'Meat beside the pickle', hint: 'Only for immersed until even.', optional: true, first: 'heavy' },
      { kind: 'number', key: 'pump', label: 'Pumped in or picked up', unit: '%', hint: 'Of the green weight.', optional: true, decimals: 4 },
    ],
  },
];
