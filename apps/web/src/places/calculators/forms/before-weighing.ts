import { calculateBatch, calculateBinders, calculatePercent, calculateWaterInFormula } from '@larderbook/contracts';
import { boundProducts, wateredFormulas } from '@larderbook/haccp';
import { choicesOf } from './choices-of';
import type { CalculatorForm } from './form';

const group = 'group-before-weighing';

export const beforeWeighing: readonly CalculatorForm[] = [
  {
    name: 'batch-by-percent',
    group,
    route: calculateBatch,
    fields: [
      {
        kind: 'lines',
        key: 'lines',
        label: 'lines-of-formula',
        hint: 'lines-hint',
      },
      { kind: 'choice', key: 'from', label: 'begin-with', choices: choicesOf('begin', ['trimmed meat', 'packages']) },
      { kind: 'mass', key: 'trimmedMeat', label: 'trimmed-meat', hint: 'to-begin-with-meat', optional: true, first: 'heavy' },
      {
        kind: 'number',
        key: 'packages',
        label: 'packages-wanted',
        hint: 'to-begin-with-packages',
        optional: true,
        decimals: 0,
      },
      { kind: 'mass', key: 'net', label: 'net-weight', optional: true, first: 'light' },
      {
        kind: 'number',
        key: 'yieldPercent',
        label: 'yield',
        unit: '%',
        hint: 'yield-hint',
        optional: true,
        decimals: 4,
      },
      {
        kind: 'choice',
        key: 'yieldOn',
        label: 'yield-is-of',
        choices: [
          { value: 'everything', name: 'everything-that-goes-in' },
          { value: 'meat block', name: 'the-meat-block' },
        ],
      },
    ],
  },
  {
    name: 'percent-and-weight',
    group,
    route: calculatePercent,
    fields: [
      { kind: 'mass', key: 'base', label: 'counted-on', hint: 'counted-on-hint', first: 'heavy' },
      { kind: 'number', key: 'percent', label: 'percentage', unit: '%', optional: true, decimals: 4 },
      { kind: 'mass', key: 'weight', label: 'or-the-weight', optional: true, first: 'g' },
    ],
  },
  {
    name: 'water-in-formula',
    group,
    route: calculateWaterInFormula,
    fields: [
      { kind: 'choice', key: 'product', label: 'product', choices: choicesOf('product', wateredFormulas) },
      {
        kind: 'mass',
        key: 'others',
        label: 'other-ingredients',
        hint: 'other-ingredients-hint',
        first: 'heavy',
      },
    ],
  },
  {
    name: 'binders-in-product',
    group,
    route: calculateBinders,
    fields: [
      { kind: 'choice', key: 'product', label: 'product', choices: choicesOf('product', boundProducts) },
      { kind: 'mass', key: 'finished', label: 'finished-product', first: 'heavy' },
      {
        kind: 'mass',
        key: 'usual',
        label: 'usual-binders',
        hint: 'usual-binders-hint',
        optional: true,
        first: 'light',
      },
      { kind: 'mass', key: 'isolatedSoy', label: 'isolated-soy', optional: true, first: 'light' },
      { kind: 'mass', key: 'caseinate', label: 'caseinate', optional: true, first: 'light' },
    ],
  },
];
