import { calculateArrival, calculateGrowth } from '@larderbook/contracts';
import { choicesOf } from './choices-of';
import { readings, unit } from './curve-fields';
import type { CalculatorForm } from './form';

const group = 'While it cools';

export const whileItCools: readonly CalculatorForm[] = [
  {
    name: 'arrival-at-target',
    group,
    title: 'When will it be there?',
    about: 'When a core that cools or heats will be at its target, as an honest range.',
    route: calculateArrival,
    fields: [
      { kind: 'choice', key: 'way', label: 'It is', choices: choicesOf(['cooling', 'heating']) },
      { kind: 'number', key: 'target', label: 'Target', belowZero: true },
      {
        kind: 'number',
        key: 'medium',
        label: 'It lies in',
        hint: 'The air, the water or the smoke around it, as measured.',
        belowZero: true,
      },
      unit,
      { kind: 'number', key: 'withinMinutes', label: 'Within', unit: 'min from the first reading', optional: true, decimals: 0 },
      readings,
    ],
  },
  {
    name: 'growth-while-cooling',
    group,
    title: 'What grew while it cooled',
    about: 'C. perfringens in a slow chill, in coarse classes and with what may be claimed.',
    route: calculateGrowth,
    fields: [
      { kind: 'choice', key: 'species', label: 'Meat', choices: choicesOf(['mixed or unknown', 'beef', 'pork', 'chicken']) },
      { kind: 'choice', key: 'cured', label: 'Cured', choices: choicesOf(['no', 'yes']) },
      unit,
      readings,
    ],
  },
];
