import { massUnits, calculateDrying, calculateFermentation, calculateFreezing } from '@larderbook/contracts';
import type { CalculatorForm } from './form';

const group = 'group-fermented-and-dried';
const time = { key: 'minutes', asClock: true as const };

export const fermentedAndDried: readonly CalculatorForm[] = [
  {
    name: 'fermentation-by-degree-hours',
    group,
    route: calculateFermentation,
    fields: [
      { kind: 'unit', key: 'unit', label: 'unit' },
      {
        kind: 'series',
        key: 'readings',
        label: 'readings',
        hint: 'fermentation-readings-hint',
        columns: [time, { key: 'value' }, { key: 'pH' }],
      },
    ],
  },
  {
    name: 'loss-in-drying',
    group,
    route: calculateDrying,
    fields: [
      { kind: 'number', key: 'percent', label: 'loss-aimed-at', unit: '%', decimals: 4 },
      { kind: 'choice', key: 'unit', label: 'weighed-in', choices: massUnits.map((unit) => ({ value: unit })) },
      {
        kind: 'series',
        key: 'weighings',
        label: 'weighings-field',
        hint: 'weighings-hint',
        columns: [{ key: 'days' }, { key: 'weight' }],
      },
    ],
  },
  {
    name: 'freezing-of-pork',
    group,
    route: calculateFreezing,
    fields: [
      {
        kind: 'choice',
        key: 'what',
        label: 'read-in',
        choices: [
          { value: 'freezer', name: 'read-in-freezer' },
          { value: 'centre', name: 'read-in-centre' },
        ],
      },
      {
        kind: 'number',
        key: 'thickness',
        label: 'thickness',
        hint: 'thickness-hint',
        optional: true,
        decimals: 3,
      },
      { kind: 'choice', key: 'thicknessUnit', label: 'measured-in', choices: [{ value: 'in' }, { value: 'cm' }] },
      { kind: 'unit', key: 'unit', label: 'temperatures-in' },
      {
        kind: 'series',
        key: 'readings',
        label: 'readings',
        hint: 'freezing-readings-hint',
        columns: [time, { key: 'value' }],
      },
    ],
  },
];
