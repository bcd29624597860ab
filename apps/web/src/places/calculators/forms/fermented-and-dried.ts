import { massUnits, calculateDrying, calculateFermentation, calculateFreezing } from '@larderbook/contracts';
import { choicesOf } from './choices-of';
import type { CalculatorForm } from './form';

const group = 'Fermented, dried and frozen';
const time = { key: 'minutes', name: 'time', asClock: true as const };

export const fermentedAndDried: readonly CalculatorForm[] = [
  {
    name: 'fermentation-by-degree-hours',
    group,
    title: 'Fermentation by degree-hours',
    about: 'From the temperature of the chamber and the pH, until the pH is down to 5.3.',
    route: calculateFermentation,
    fields: [
      { kind: 'unit', key: 'unit', label: 'Unit' },
      {
        kind: 'series',
        key: 'readings',
        label: 'Readings',
        hint: 'One on each line: the time since the beginning as h:mm, the chamber, the pH.',
        columns: [time, { key: 'value', name: 'chamber' }, { key: 'pH', name: 'pH' }],
      },
    ],
  },
  {
    name: 'loss-in-drying',
    group,
    title: 'Loss of weight in drying',
    about: 'How much was lost so far, and when the loss aimed at will be there.',
    route: calculateDrying,
    fields: [
      { kind: 'number', key: 'percent', label: 'Loss aimed at', unit: '%', decimals: 4 },
      { kind: 'choice', key: 'unit', label: 'Weighed in', choices: choicesOf(massUnits) },
      {
        kind: 'series',
        key: 'weighings',
        label: 'Weighings',
        hint: 'One on each line: days since it was hung, then the weight.',
        columns: [
          { key: 'days', name: 'days' },
          { key: 'weight', name: 'weight' },
        ],
      },
    ],
  },
  {
    name: 'freezing-of-pork',
    group,
    title: 'Freezing of pork against trichinae',
    about: 'By the air of the freezer and the thickness, or by the centre of the meat.',
    route: calculateFreezing,
    fields: [
      {
        kind: 'choice',
        key: 'what',
        label: 'Read in',
        choices: [
          { value: 'freezer', name: 'the freezer' },
          { value: 'centre', name: 'the centre of the meat' },
        ],
      },
      {
        kind: 'number',
        key: 'thickness',
        label: 'Thickness',
        hint: 'Of the thickest piece or layer; for the freezer.',
        optional: true,
        decimals: 3,
      },
      { kind: 'choice', key: 'thicknessUnit', label: 'Measured in', choices: choicesOf(['in', 'cm']) },
      { kind: 'unit', key: 'unit', label: 'Temperatures in' },
      {
        kind: 'series',
        key: 'readings',
        label: 'Readings',
        hint: 'One on each line: the time since the first as h:mm, then the temperature.',
        columns: [time, { key: 'value', name: 'temperature' }],
      },
    ],
  },
];
