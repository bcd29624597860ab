import type { FormField } from './form';

export const unit: FormField = { kind: 'unit', key: 'unit', label: 'Unit' };
export const readings: FormField = {
  kind: 'series',
  key: 'readings',
  label: 'Readings',
  hint: 'One on each line: the time since the first as h:mm or minutes, then the temperature.',
  columns: [
    { key: 'minutes', name: 'time' },
    { key: 'value', name: 'temperature' },
  ],
};
