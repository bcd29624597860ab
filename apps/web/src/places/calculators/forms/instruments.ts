import { pressuresOfAir, calculateBoiling, calculateInstrument } from '@larderbook/contracts';
import { choicesOf } from './choices-of';
import type { CalculatorForm } from './form';

const group = 'group-instruments';

export const instruments: readonly CalculatorForm[] = [
  {
    name: 'limit-with-instrument',
    group,
    route: calculateInstrument,
    fields: [
      { kind: 'number', key: 'figure', label: 'limit', belowZero: true },
      {
        kind: 'choice',
        key: 'side',
        label: 'the-limit-is',
        choices: [
          { value: 'min', name: 'side-min' },
          { value: 'max', name: 'side-max' },
        ],
      },
      { kind: 'number', key: 'error', label: 'thermometer-good-to-field' },
      { kind: 'unit', key: 'unit', label: 'unit' },
    ],
  },
  {
    name: 'thermometer-in-boiling-water',
    group,
    route: calculateBoiling,
    fields: [
      {
        kind: 'number',
        key: 'hectopascal',
        label: 'pressure',
        unit: 'hPa',
        optional: true,
        hint: 'pressure-hint',
      },
      { kind: 'choice', key: 'pressureIs', label: 'that-pressure-is', choices: choicesOf('pressure-is', pressuresOfAir) },
      {
        kind: 'number',
        key: 'metres',
        label: 'height',
        unit: 'm',
        decimals: 1,
        belowZero: true,
        optional: true,
        hint: 'height-hint',
      },
      { kind: 'unit', key: 'unit', label: 'unit' },
    ],
  },
];
