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

const group = 'group-curing-and-pickles';
const asItsLabelSays = 'as-its-label-says';

export const curingAndPickles: readonly CalculatorForm[] = [
  {
    name: 'cure-for-meat',
    group,
    route: calculateCure,
    fields: [
      { kind: 'mass', key: 'meat', label: 'meat-block', hint: 'trimmed-without', first: 'heavy' },
      { kind: 'number', key: 'strength', label: 'substance-in-the-salt', unit: '%', decimals: 4, hint: asItsLabelSays },
      { kind: 'limit', key: 'limit', label: 'limit', kinds: ['concentration'] },
      { kind: 'mass', key: 'scale', label: 'scale-shows-steps', first: 'g' },
    ],
  },
  {
    name: 'ingoing-by-method',
    group,
    route: calculateIngoing,
    fields: [
      { kind: 'choice', key: 'method', label: 'method', choices: choicesOf('method', cureMethods) },
      { kind: 'mass', key: 'salt', label: 'curing-salt', first: 'g' },
      { kind: 'number', key: 'strength', label: 'substance-in-the-salt', unit: '%', decimals: 4, hint: asItsLabelSays },
      {
        kind: 'mass',
        key: 'weight',
        label: 'meat-pickle-or-batch',
        hint: 'meat-pickle-or-batch-hint',
        first: 'heavy',
      },
      { kind: 'mass', key: 'meat', label: 'meat-beside-pickle', hint: 'only-until-even', optional: true, first: 'heavy' },
      {
        kind: 'number',
        key: 'pump',
        label: 'pumped-or-picked-up',
        unit: '%',
        hint: 'of-the-green-weight',
        optional: true,
        decimals: 4,
      },
    ],
  },
  {
    name: 'cure-for-pickle',
    group,
    route: calculatePickle,
    fields: [
      { kind: 'choice', key: 'substance', label: 'substance', choices: choicesOf('pickled', pickledSubstances) },
      { kind: 'mass', key: 'pickle', label: 'pickle', hint: 'pickle-hint', first: 'heavy' },
      { kind: 'number', key: 'pump', label: 'pumped-or-picked-up', unit: '%', hint: 'of-the-green-weight', decimals: 4 },
      { kind: 'number', key: 'ppm', label: 'aimed-at', unit: 'ppm', hint: 'on-the-green-weight', decimals: 0 },
      {
        kind: 'number',
        key: 'strength',
        label: 'substance-in-weighed',
        unit: '%',
        decimals: 4,
        hint: 'strength-of-weighed-hint',
      },
    ],
  },
  {
    name: 'nitrite-from-natural-source',
    group,
    route: calculateNaturalNitrite,
    fields: [
      { kind: 'mass', key: 'natural', label: 'natural-source', hint: 'natural-source-hint', first: 'g' },
      { kind: 'text', key: 'ingredientLot', label: 'lot-on-bag' },
      { kind: 'text', key: 'certificateLot', label: 'lot-on-certificate' },
      { kind: 'number', key: 'percent', label: 'nitrite-by-certificate', unit: '%', decimals: 4 },
      {
        kind: 'number',
        key: 'plusMinus',
        label: 'either-side',
        unit: '%',
        hint: 'either-side-hint',
        optional: true,
        decimals: 4,
      },
      {
        kind: 'choice',
        key: 'as',
        label: 'it-counts',
        choices: [
          { value: 'NaNO₂', name: 'counts-nitrite' },
          { value: 'NO₂', name: 'counts-ion' },
        ],
      },
      { kind: 'mass', key: 'meat', label: 'meat-block', first: 'heavy' },
      { kind: 'limit', key: 'limit', label: 'limit', kinds: ['concentration'] },
    ],
  },
  {
    name: 'citric-for-accelerator',
    group,
    route: calculateCitric,
    fields: [
      { kind: 'mass', key: 'accelerator', label: 'accelerator', first: 'g' },
      { kind: 'mass', key: 'citric', label: 'citric', first: 'g' },
    ],
  },
  {
    name: 'strength-of-brine',
    group,
    route: calculateBrine,
    fields: [
      { kind: 'mass', key: 'salt', label: 'salt', first: 'heavy' },
      { kind: 'mass', key: 'water', label: 'water', first: 'heavy' },
    ],
  },
  {
    name: 'pump-by-weight',
    group,
    route: calculatePump,
    fields: [
      { kind: 'mass', key: 'green', label: 'green-weight', hint: 'before-pumped', first: 'heavy' },
      { kind: 'mass', key: 'pumped', label: 'pumped-weight', hint: 'after-drained', first: 'heavy' },
    ],
  },
  {
    name: 'phosphate-in-pumped-meat',
    group,
    route: calculatePhosphate,
    fields: [
      { kind: 'number', key: 'pickle', label: 'phosphate-in-pickle', unit: '%', decimals: 4 },
      { kind: 'number', key: 'pump', label: 'pump', unit: '%', hint: 'of-the-green-weight', decimals: 4 },
    ],
  },
];
