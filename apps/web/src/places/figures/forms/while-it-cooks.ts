import { workOutArrival, workOutCurve, workOutGrowth, workOutHold, workOutLethality } from '@larderbook/contracts';
import type { CalculationForm, FormField } from './form';

const group = 'While it cooks and chills';

const unit: FormField = { kind: 'unit', key: 'unit', label: 'Unit' };
const readings: FormField = {
  kind: 'series', key: 'readings', label: 'Readings',
  hint: 'One on each line: the time since the first as h:mm or minutes, then the temperature.',
  columns: [{ key: 'minutes', name: 'time' }, { key: 'value', name: 'temperature' }],
};
const same = (value: string) => ({ value, name: value });

export const whileItCooks: readonly CalculationForm[] = [
  {
    name: 'time-at-temperature',
    group,
    title: 'How long at this temperature?',
    about: 'What if it is pulled at 68 °C: the printed row that counts, and its time.',
    route: workOutHold,
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
    route: workOutCurve,
    fields: [{ kind: 'limit', key: 'limit', label: 'Limit', kinds: ['dwell', 'cooling', 'bandTime'] }, unit, readings],
  },
  {
    name: 'arrival-at-target',
    group,
    title: 'When will it be there?',
    about: 'When a core that cools or heats will be at its target, as an honest range.',
    route: workOutArrival,
    fields: [
      { kind: 'choice', key: 'way', label: 'It is', choices: [same('cooling'), same('heating')] },
      { kind: 'number', key: 'target', label: 'Target', belowZero: true },
      { kind: 'number', key: 'medium', label: 'It lies in', hint: 'The air, the water or the smoke around it, as measured.', belowZero: true },
      unit,
      { kind: 'number', key: 'withinMinutes', label: 'Within', unit: 'min from the first reading', optional: true, decimals: 0 },
      readings,
    ],
  },
  {
    name: 'lethality-of-cook',
    group,
    title: 'What a cook killed',
    about: 'By the printed table, and the lethality of its curve as support for a process authority.',
    route: workOutLethality,
    fields: [{ kind: 'limit', key: 'limit', label: 'Table', kinds: ['dwell'] }, unit, readings],
  },
  {
    name: 'growth-while-cooling',
    group,
    title: 'What grew while it cooled',
    about: 'C. perfringens in a slow chill, in coarse classes and with what may be claimed.',
    route: workOutGrowth,
    fields: [
      { kind: 'choice', key: 'species', label: 'Meat', choices: ['mixed or unknown', 'beef', 'pork', 'chicken'].map(same) },
      { kind: 'choice', key: 'cured', label: 'Cured', choices: [same('no'), same('yes')] },
      unit,
      readings,
    ],
  },
];
