import { workOutBoiling, workOutInstrument } from '@larderbook/contracts';
import type { CalculationForm } from './form';

const group = 'Thermometers';

export const instruments: readonly CalculationForm[] = [
  {
    name: 'limit-with-instrument',
    group,
    title: 'A limit with the thermometer’s error',
    about: 'What it must show so that the limit is held whatever its error.',
    route: workOutInstrument,
    fields: [
      { kind: 'number', key: 'figure', label: 'Limit', belowZero: true },
      { kind: 'choice', key: 'side', label: 'The limit is', choices: [{ value: 'min', name: 'the least' }, { value: 'max', name: 'the most' }] },
      { kind: 'number', key: 'error', label: 'The thermometer is good to ±' },
      { kind: 'unit', key: 'unit', label: 'Unit' },
    ],
  },
  {
    name: 'thermometer-in-boiling-water',
    group,
    title: 'A thermometer in boiling water',
    about: 'What it should show here and today, by barometer or by height.',
    route: workOutBoiling,
    fields: [
      { kind: 'number', key: 'hectopascal', label: 'Pressure of the air here', unit: 'hPa', optional: true, hint: 'From a barometer on the spot, not reduced to sea level.' },
      { kind: 'number', key: 'metres', label: 'Or the height of the place', unit: 'm', decimals: 1, belowZero: true, optional: true },
      { kind: 'unit', key: 'unit', label: 'Unit' },
    ],
  },
];
