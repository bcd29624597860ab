import { pressuresOfAir, calculateBoiling, calculateInstrument } from '@larderbook/contracts';
import { choicesOf } from './choices-of';
import type { CalculatorForm } from './form';

const group = 'Thermometers';

export const instruments: readonly CalculatorForm[] = [
  {
    name: 'limit-with-instrument',
    group,
    title: 'A limit with the thermometer’s error',
    about: 'What it must show so that the limit is held whatever its error.',
    route: calculateInstrument,
    fields: [
      { kind: 'number', key: 'figure', label: 'Limit', belowZero: true },
      {
        kind: 'choice',
        key: 'side',
        label: 'The limit is',
        choices: [
          { value: 'min', name: 'the least' },
          { value: 'max', name: 'the most' },
        ],
      },
      { kind: 'number', key: 'error', label: 'The thermometer is good to ±' },
      { kind: 'unit', key: 'unit', label: 'Unit' },
    ],
  },
  {
    name: 'thermometer-in-boiling-water',
    group,
    title: 'A thermometer in boiling water',
    about: 'What it should show here and today, by barometer, weather report or height.',
    route: calculateBoiling,
    fields: [
      {
        kind: 'number',
        key: 'hectopascal',
        label: 'Pressure of the air',
        unit: 'hPa',
        optional: true,
        hint: 'From a barometer on the spot, or from a weather report.',
      },
      { kind: 'choice', key: 'pressureIs', label: 'That pressure is', choices: choicesOf(pressuresOfAir) },
      {
        kind: 'number',
        key: 'metres',
        label: 'Height of the place',
        unit: 'm',
        decimals: 1,
        belowZero: true,
        optional: true,
        hint: 'Alone, or with the pressure to check it.',
      },
      { kind: 'unit', key: 'unit', label: 'Unit' },
    ],
  },
];
