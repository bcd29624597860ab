import {
  cureMethods,
  pickledSubstances,
  calculateBrine,
  calculateCitric,
  calculateCure,
  calculateIngoing,
  calculateNaturalNitrite,
  calculatePhosphate,
  calculatePickle,
  calculatePump,
} from '@larderbook/contracts';
import { choicesOf } from './choices-of';
import type { CalculatorForm } from './form';

const group = 'Curing and pickles';
const asItsLabelSays = 'As its label says: 6.25 % in one kind, 5.88 % in another.';

export const curingAndPickles: readonly CalculatorForm[] = [
  {
    name: 'cure-for-meat',
    group,
    title: 'Curing salt for so much meat',
    about: 'At least and at most in grams, and whether the scale can weigh it.',
    route: calculateCure,
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
    route: calculateIngoing,
    fields: [
      { kind: 'choice', key: 'method', label: 'Method', choices: choicesOf(cureMethods) },
      { kind: 'mass', key: 'salt', label: 'Curing salt', first: 'g' },
      { kind: 'number', key: 'strength', label: 'Substance in the curing salt', unit: '%', decimals: 4, hint: asItsLabelSays },
      {
        kind: 'mass',
        key: 'weight',
        label: 'Meat, pickle or batch',
        hint: 'The meat when chopped or dry-cured; the pickle made otherwise.',
        first: 'heavy',
      },
      { kind: 'mass', key: 'meat', label: 'Meat beside the pickle', hint: 'Only for immersed until even.', optional: true, first: 'heavy' },
      {
        kind: 'number',
        key: 'pump',
        label: 'Pumped in or picked up',
        unit: '%',
        hint: 'Of the green weight.',
        optional: true,
        decimals: 4,
      },
    ],
  },
  {
    name: 'cure-for-pickle',
    group,
    title: 'Cure for a pickle',
    about: 'How much curing salt or erythorbate goes into a pickle for so many parts per million.',
    route: calculatePickle,
    fields: [
      { kind: 'choice', key: 'substance', label: 'Substance', choices: choicesOf(pickledSubstances) },
      { kind: 'mass', key: 'pickle', label: 'Pickle', hint: 'Everything in it, the cure included.', first: 'heavy' },
      { kind: 'number', key: 'pump', label: 'Pumped in or picked up', unit: '%', hint: 'Of the green weight.', decimals: 4 },
      { kind: 'number', key: 'ppm', label: 'Aimed at', unit: 'ppm', hint: 'On the green weight.', decimals: 0 },
      {
        kind: 'number',
        key: 'strength',
        label: 'Substance in what is weighed',
        unit: '%',
        decimals: 4,
        hint: 'As its label says: 6.25 % in one curing salt, 100 % in pure erythorbate.',
      },
    ],
  },
  {
    name: 'nitrite-from-natural-source',
    group,
    title: 'Nitrite from a natural source',
    about: 'By the certificate of the very lot: at least, at most, and what a limit makes of it.',
    route: calculateNaturalNitrite,
    fields: [
      { kind: 'mass', key: 'natural', label: 'Natural source', hint: 'Cultured celery powder or the like.', first: 'g' },
      { kind: 'text', key: 'ingredientLot', label: 'Lot on its bag' },
      { kind: 'text', key: 'certificateLot', label: 'Lot on the certificate' },
      { kind: 'number', key: 'percent', label: 'Nitrite by the certificate', unit: '%', decimals: 4 },
      {
        kind: 'number',
        key: 'plusMinus',
        label: 'Either side ±',
        unit: '%',
        hint: 'Percentage points, where the certificate gives them.',
        optional: true,
        decimals: 4,
      },
      {
        kind: 'choice',
        key: 'as',
        label: 'It counts',
        choices: [
          { value: 'NaNO₂', name: 'sodium nitrite, NaNO₂' },
          { value: 'NO₂', name: 'the ion, NO₂' },
        ],
      },
      { kind: 'mass', key: 'meat', label: 'Meat block', first: 'heavy' },
      { kind: 'limit', key: 'limit', label: 'Limit', kinds: ['concentration'] },
    ],
  },
  {
    name: 'citric-for-accelerator',
    group,
    title: 'Citric acid in place of the accelerator',
    about: 'What share of the ascorbate or erythorbate it stands in for.',
    route: calculateCitric,
    fields: [
      { kind: 'mass', key: 'accelerator', label: 'Ascorbate or erythorbate', first: 'g' },
      { kind: 'mass', key: 'citric', label: 'Citric acid or sodium citrate', first: 'g' },
    ],
  },
  {
    name: 'strength-of-brine',
    group,
    title: 'Strength of a brine',
    about: 'Percent by weight, from the salt and the water.',
    route: calculateBrine,
    fields: [
      { kind: 'mass', key: 'salt', label: 'Salt', first: 'heavy' },
      { kind: 'mass', key: 'water', label: 'Water', first: 'heavy' },
    ],
  },
  {
    name: 'pump-by-weight',
    group,
    title: 'Pump by weight',
    about: 'How much was pumped in, by the weights before and after.',
    route: calculatePump,
    fields: [
      { kind: 'mass', key: 'green', label: 'Green weight', hint: 'Before it is pumped.', first: 'heavy' },
      { kind: 'mass', key: 'pumped', label: 'Pumped weight', hint: 'After it has drained.', first: 'heavy' },
    ],
  },
  {
    name: 'phosphate-in-pumped-meat',
    group,
    title: 'Phosphate in pumped meat',
    about: 'What the pickle brings, on the green and on the pumped weight, against its limit.',
    route: calculatePhosphate,
    fields: [
      { kind: 'number', key: 'pickle', label: 'Phosphate in the pickle', unit: '%', decimals: 4 },
      { kind: 'number', key: 'pump', label: 'Pump', unit: '%', hint: 'Of the green weight.', decimals: 4 },
    ],
  },
];
