import { workOutCurve, workOutHold } from '@larderbook/contracts';
import type { CalculationForm } from './form';

const group = 'While it cooks and chills';

export const whileItCooks: readonly CalculationForm[] = [
  {
    name: 'time-at-temperature',
    group,
    title: 'How long at this temperature?',
    about: 'What if it is pulled at 68 °C: the printed row that counts, and its time.',
    route: workOutHold,
    fields: [
      { kind: 'number', key: 'value', label: 'Core temperature' },
      { kind: 'unit', key: 'unit', label: 'Unit' },
      { kind: 'limit', key: 'limit', label: 'Table', kinds: ['dwell'] },
    ],
  },
  {
    name: 'curve-against-limit',
    group,
    title: 'A curve against a limit',
    about: 'Readings of a cook or a chill, judged by the limit you choose.',
    route: workOutCurve,
    fields: [
      { kind: 'limit', key: 'limit', label: 'Limit', kinds: ['dwell', 'cooling', 'bandTime'] },
      { kind: 'unit', key: 'unit', label: 'Unit' },
      {
        kind: 'series', key: 'readings', label: 'Readings',
        hint: 'One on each line: the time since the first as h:mm or minutes, then the temperature.',
        columns: [{ key: 'minutes', name: 'time' }, { key: 'value', name: 'temperature' }],
      },
    ],
  },
];
