import { calculateCurve, calculateEquivalentHold, calculateHold, calculateHumidity, calculateLethality } from '@larderbook/contracts';
import { heldProducts } from '@larderbook/haccp';
import { choicesOf } from './choices-of';
import { readings, unit } from './curve-fields';
import type { CalculatorForm } from './form';

const group = 'While it cooks';

export const whileItCooks: readonly CalculatorForm[] = [
  {
    name: 'time-at-temperature',
    group,
    title: 'How long at this temperature?',
    about: 'What if it is pulled at 68 °C: the printed row that counts, and its time.',
    route: calculateHold,
    fields: [
      { kind: 'number', key: 'value', label: 'Core temperature' },
      unit,
      { kind: 'limit', key: 'limit', label: 'Table', kinds: ['dwell'] },
    ],
  },
  {
    name: 'curve-against-limit',
    group,
    title: 'A curve against a limit',
    about: 'Readings of a cook or a chill, judged by the limit you choose.',
    route: calculateCurve,
    fields: [
      { kind: 'limit', key: 'limit', label: 'Limit', kinds: ['dwell', 'cooling', 'bandTime'] },
      {
        kind: 'choice',
        key: 'shape',
        label: 'Shape of the piece',
        first: 'cylinder',
        choices: [
          { value: 'cylinder', name: 'Round and long: sausage, log' },
          { value: 'sphere', name: 'Round: ham, whole bird' },
          { value: 'slab', name: 'Flat: belly, patty, tray' },
          { value: 'stirred', name: 'Stirred or pumped: no core' },
        ],
      },
      {
        kind: 'number',
        key: 'thinnest',
        label: 'Its thinnest',
        unit: 'mm',
        optional: true,
        decimals: 0,
        hint: 'How fast its core can move. Not said, it counts as a thin sausage.',
      },
      unit,
      readings,
    ],
  },
  {
    name: 'lethality-of-cook',
    group,
    title: 'What a cook killed',
    about: 'By the printed table, and the lethality of its curve as support for a process authority.',
    route: calculateLethality,
    fields: [{ kind: 'limit', key: 'limit', label: 'Table', kinds: ['dwell'] }, unit, readings],
  },
  {
    name: 'humidity-while-cooking',
    group,
    title: 'Humidity while cooking',
    about: 'Whether it was humid for long enough, by one of the four options, and when it need not be.',
    route: calculateHumidity,
    fields: [
      {
        kind: 'choice',
        key: 'option',
        label: 'Option',
        choices: [
          { value: '1', name: '1 · live steam' },
          { value: '2', name: '2 · sealed oven' },
          { value: '3', name: '3 · 90 % for a part' },
          { value: '4', name: '4 · 90 % throughout' },
        ],
      },
      {
        kind: 'number',
        key: 'cooking',
        label: 'Cooking time',
        unit: 'min',
        hint: 'From going into the heated oven until the lethality is met.',
      },
      {
        kind: 'number',
        key: 'humid',
        label: 'Humid in all',
        unit: 'min',
        hint: 'Steam let in, oven sealed, or at 90 % or more; bursts add up.',
      },
      { kind: 'number', key: 'endpoint', label: 'Core at the end' },
      unit,
    ],
  },
  {
    name: 'hold-at-another-temperature',
    group,
    title: 'A hold at another temperature',
    about: 'What is to stand for 70 °C for 2 min: the printed row first, the law as support for a process authority.',
    route: calculateEquivalentHold,
    fields: [
      { kind: 'choice', key: 'product', label: 'Product', choices: choicesOf(heldProducts) },
      { kind: 'number', key: 'value', label: 'Core temperature' },
      unit,
    ],
  },
];
