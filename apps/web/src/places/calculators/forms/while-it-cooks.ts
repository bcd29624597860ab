import { calculateCurve, calculateEquivalentHold, calculateHold, calculateHumidity, calculateLethality } from '@larderbook/contracts';
import { heldProducts } from '@larderbook/haccp';
import { choicesOf } from './choices-of';
import { readings, unit } from './curve-fields';
import type { CalculatorForm } from './form';

const group = 'group-while-it-cooks';

export const whileItCooks: readonly CalculatorForm[] = [
  {
    name: 'time-at-temperature',
    group,
    route: calculateHold,
    fields: [
      { kind: 'number', key: 'value', label: 'core-temperature' },
      unit,
      { kind: 'limit', key: 'limit', label: 'table', kinds: ['dwell'] },
    ],
  },
  {
    name: 'curve-against-limit',
    group,
    route: calculateCurve,
    fields: [
      { kind: 'limit', key: 'limit', label: 'limit', kinds: ['dwell', 'cooling', 'bandTime'] },
      {
        kind: 'choice',
        key: 'shape',
        label: 'piece-shape',
        first: 'cylinder',
        choices: [
          { value: 'cylinder', name: 'shape-cylinder' },
          { value: 'sphere', name: 'shape-sphere' },
          { value: 'slab', name: 'shape-slab' },
          { value: 'stirred', name: 'shape-stirred' },
        ],
      },
      {
        kind: 'number',
        key: 'thinnest',
        label: 'its-thinnest',
        unit: 'mm',
        optional: true,
        decimals: 0,
        hint: 'its-thinnest-hint',
      },
      unit,
      readings,
    ],
  },
  {
    name: 'lethality-of-cook',
    group,
    route: calculateLethality,
    fields: [{ kind: 'limit', key: 'limit', label: 'table', kinds: ['dwell'] }, unit, readings],
  },
  {
    name: 'humidity-while-cooking',
    group,
    route: calculateHumidity,
    fields: [
      {
        kind: 'choice',
        key: 'option',
        label: 'option',
        choices: [
          { value: '1', name: 'option-1' },
          { value: '2', name: 'option-2' },
          { value: '3', name: 'option-3' },
          { value: '4', name: 'option-4' },
        ],
      },
      {
        kind: 'number',
        key: 'cooking',
        label: 'cooking-time',
        unit: 'min',
        hint: 'cooking-time-hint',
      },
      {
        kind: 'number',
        key: 'humid',
        label: 'humid-in-all',
        unit: 'min',
        hint: 'humid-in-all-hint',
      },
      { kind: 'number', key: 'endpoint', label: 'core-at-end' },
      unit,
    ],
  },
  {
    name: 'hold-at-another-temperature',
    group,
    route: calculateEquivalentHold,
    fields: [
      { kind: 'choice', key: 'product', label: 'product', choices: choicesOf('held', heldProducts) },
      { kind: 'number', key: 'value', label: 'core-temperature' },
      unit,
    ],
  },
];
